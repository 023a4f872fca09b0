package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;

/**
 * Where in the text of a score each sollu of its performance is written.
 *
 * <p>Words, groups and names stand in a phrase in the order in which they are read, so the nth of
 * them is the nth token of such a kind; brackets and repeats only say how often.
 */
public final class SolluPlaces {

  /**
   * A part of a text.
   *
   * @param from its first index
   * @param to the index after it
   */
  public record Range(int from, int to) {}

  private final Composition composition;
  private final Map<String, List<Range>> words = new HashMap<>();
  private final List<Range> said = new ArrayList<>();
  private final String text;

  private SolluPlaces(String text, Composition composition) {
    this.text = text;
    this.composition = composition;
  }

  /**
   * Finds the places of a performance.
   *
   * @param text the score, read without errors
   * @param performance what is performed of it
   * @return a part of the text for each sollu, in the order in which they are said; empty for a
   *     text whose phrases have no names
   */
  public static List<Range> of(String text, Performance performance) {
    SolluPlaces places = new SolluPlaces(text, performance.composition());
    places.findWords();
    for (Span.Round round : performance.rounds()) {
      if (!places.words.containsKey(round.phrase())) {
        return List.of();
      }
      places.walk(round.phrase());
    }
    return List.copyOf(places.said);
  }

  private void findWords() {
    String start = text.startsWith("\ufeff") ? "\ufeff" : "";
    int at = start.length();
    for (ScoreLine line : ScoreLine.of(text.substring(start.length()))) {
      boolean begins = line.use() == ScoreLine.Use.PHRASE;
      if (begins || line.use() == ScoreLine.Use.MORE_OF_PHRASE) {
        List<Range> found = words.computeIfAbsent(line.name(), name -> new ArrayList<>());
        addWords(line.tokens(), begins ? 2 : 0, at, found);
      }
      at += line.text().length() + line.ending().length();
    }
  }

  private static void addWords(List<Token> tokens, int first, int lineStart, List<Range> found) {
    int at = first;
    while (at < tokens.size()) {
      Token token = tokens.get(at++);
      boolean group = token.is(TokenKind.NUMBER);
      if (token.is(TokenKind.CURLY_OPEN)) {
        at = afterNadai(tokens, at);
      } else if (token.is(TokenKind.TIMES)) {
        at++;
      } else if (group || token.is(TokenKind.WORD) || token.is(TokenKind.NAME)) {
        at += group && is(tokens, at, TokenKind.STAR) ? 2 : 0;
        boolean rings = group && is(tokens, at, TokenKind.ROUND_OPEN) && tokens.get(at).tight();
        at += rings ? 3 : 0;
        int end = group ? tokens.get(at - 1).end() : token.end();
        found.add(new Range(lineStart + token.start(), lineStart + end));
      }
    }
  }

  /** The index after the head of a passage in a nadai of its own. */
  private static int afterNadai(List<Token> tokens, int at) {
    int colon = at;
    while (colon < tokens.size() && !tokens.get(colon).is(TokenKind.COLON)) {
      colon++;
    }
    return colon < tokens.size() ? colon + 1 : at;
  }

  private static boolean is(List<Token> tokens, int at, TokenKind kind) {
    return at < tokens.size() && tokens.get(at).is(kind);
  }

  private void walk(String phrase) {
    walk(composition.phrases().get(phrase), words.getOrDefault(phrase, List.of()), 0);
  }

  /** Says elements; gives the number of the next word after them. */
  private int walk(Sequence sequence, List<Range> written, int first) {
    int word = first;
    for (Element element : sequence.elements()) {
      word = walk(element, written, word);
    }
    return word;
  }

  private int walk(Element element, List<Range> written, int word) {
    if (element instanceof Element.Repeat repeat) {
      int end = word;
      for (int time = 0; time < repeat.times(); time++) {
        end = walk(repeat.body(), written, word);
      }
      return end;
    } else if (element instanceof Element.Bracket bracket) {
      return walk(bracket.body(), written, word);
    } else if (element instanceof Element.Reference reference) {
      walk(reference.name());
      return word + 1;
    } else if (element instanceof Element.Word spoken) {
      say(spoken, written.get(word));
      return word + 1;
    } else if (element instanceof Element.Group group) {
      group.sollus().forEach(sollu -> said.add(written.get(word)));
      return word + 1;
    }
    return word;
  }

  /** Each sollu has its own letters where the word is nothing but them. */
  private void say(Element.Word word, Range range) {
    int letters = word.sollus().stream().map(Sollu::spelling).mapToInt(String::length).sum();
    int at = range.from();
    for (Sollu sollu : word.sollus()) {
      boolean own = letters == range.to() - range.from();
      int end = own ? at + sollu.spelling().length() : range.to();
      said.add(new Range(own ? at : range.from(), end));
      at = end;
    }
  }
}
