package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;

/**
 * A line of a score without errors, with what it is for.
 *
 * @param use what stands on it
 * @param name the keyword of a header, or the phrase that is said on it; otherwise empty
 * @param tokens its tokens, the last of them an END
 * @param ending what ends the line: a line feed, a carriage return, both, or nothing
 */
record ScoreLine(Use use, String name, List<Token> tokens, String ending) {

  /** What a line is for. */
  enum Use {
    /** A keyword and its value. */
    HEADER,
    /** The name of a phrase and its beginning. */
    PHRASE,
    /** More of the phrase that began before. */
    MORE_OF_PHRASE,
    /** The word perform. */
    PERFORM,
    /** A step of the plan. */
    STEP,
    /** Nothing, or a note. */
    EMPTY
  }

  /** The lines of a text that was read without errors. */
  static List<ScoreLine> of(String text) {
    List<ScoreLine> lines = new ArrayList<>();
    Set<String> phrases = new HashSet<>();
    boolean performing = false;
    String phrase = "";
    int start = 0;
    while (start < text.length()) {
      int end = start;
      while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
        end++;
      }
      int next = Math.min(text.length(), text.startsWith("\r\n", end) ? end + 2 : end + 1);
      SourceLine line = new SourceLine(lines.size() + 1, text.substring(start, end));
      List<Token> tokens = Lexer.tokens(line);
      Use use = use(tokens, phrases, performing);
      String name = phrase;
      if (use == Use.PHRASE) {
        phrase = tokens.get(0).name();
        phrases.add(phrase);
        name = phrase;
      } else if (use == Use.HEADER) {
        name = Headers.keyword(tokens.get(0)).orElse("");
      }
      performing |= use == Use.PERFORM;
      boolean named = use == Use.HEADER || use == Use.PHRASE || use == Use.MORE_OF_PHRASE;
      lines.add(new ScoreLine(use, named ? name : "", tokens, text.substring(end, next)));
      start = next;
    }
    return lines;
  }

  /** What {@link ScoreParser} takes a line for; a phrase may be called Perform. */
  private static Use use(List<Token> tokens, Set<String> phrases, boolean performing) {
    Token first = tokens.get(0);
    boolean isPhrase = first.is(TokenKind.NAME) && phrases.contains(first.name());
    Optional<String> keyword = Headers.keyword(first);
    if (first.is(TokenKind.END)) {
      return Use.EMPTY;
    } else if (first.is(TokenKind.NAME) && tokens.get(1).is(TokenKind.EQUALS)) {
      return Use.PHRASE;
    } else if (first.is(ScoreParser.PERFORM) && tokens.get(1).is(TokenKind.END) && !isPhrase) {
      return Use.PERFORM;
    } else if (keyword.isPresent() && phrases.isEmpty() && !performing) {
      return Use.HEADER;
    }
    return performing ? Use.STEP : Use.MORE_OF_PHRASE;
  }

  /** The text of the line, without its ending. */
  String text() {
    return tokens.get(0).line().text();
  }

  /** The index at which the last token ends, before spaces and a note. */
  int lastEnd() {
    return tokens.get(tokens.size() - 1).end();
  }
}
