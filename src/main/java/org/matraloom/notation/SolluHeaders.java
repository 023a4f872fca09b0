package org.matraloom.notation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Closing;
import org.matraloom.score.DrumStroke;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.Wording;
import org.matraloom.spell.StrokeLine;

/**
 * Reads the headers that speak of sollus: {@code stroke tom , ,} and {@code after 2} for what
 * follows the last matra, {@code words mora} and {@code 7 = ta , di , gi na tom} for groups, {@code
 * drum dhim = din + thom} for the strokes of a drum.
 */
final class SolluHeaders {

  private static final String EXAMPLE = "write stroke tom, or stroke tom ; to have it ring longer";

  private final Lexicon lexicon;
  private final Problems problems;
  private final Map<Integer, GroupWords> own = new LinkedHashMap<>();
  private final Map<Sollu, List<DrumStroke>> strokes = new LinkedHashMap<>();
  private Optional<Wording> wording = Optional.empty();

  SolluHeaders(Lexicon lexicon, Problems problems) {
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** One sollu, with its karvai if that is not left open. */
  Optional<Closing.Stroke> stroke(Cursor cursor) {
    Token word = cursor.next();
    if (!word.is(TokenKind.WORD)) {
      problems.error(word, "the last stroke is a sollu, found " + word.said(), EXAMPLE);
      return Optional.empty();
    }
    Optional<List<Sollu>> sollus = lexicon.split(word.text());
    if (sollus.isEmpty()) {
      PhraseMistakes.unknownWord(word, lexicon, problems);
      return Optional.empty();
    } else if (sollus.get().size() > 1) {
      problems.error(
          word,
          "the last stroke is one sollu, found " + sollus.get().size() + " in " + word.said(),
          "what is said before it belongs to the phrase");
      return Optional.empty();
    }
    return karvai(cursor).map(karvai -> new Closing.Stroke(sollus.get().get(0), karvai));
  }

  private Optional<Integer> karvai(Cursor cursor) {
    Token first = cursor.peek();
    int matras = 0;
    while (cursor.is(TokenKind.COMMA) || cursor.is(TokenKind.SEMICOLON)) {
      matras += cursor.next().is(TokenKind.COMMA) ? 1 : 2;
    }
    if (matras > Closing.Stroke.LONGEST) {
      problems.error(
          first,
          "the last stroke rings at most " + Closing.Stroke.LONGEST + " matras, given " + matras,
          "without commas it rings for a beat");
      return Optional.empty();
    }
    return Optional.of(matras);
  }

  /** Takes the words for a group. */
  void add(List<Token> tokens) {
    Optional<GroupWords> words = words(tokens);
    if (words.isPresent() && own.putIfAbsent(words.get().size(), words.get()) != null) {
      problems.error(
          tokens.get(0),
          "words for " + words.get().size() + " are given twice",
          "take one of the two lines out");
    }
  }

  /** Takes the strokes of a sollu, written after a token. */
  void addStrokes(Token first, String written) {
    try {
      StrokeLine said = StrokeLine.read(written, lexicon);
      String sound = said.sollu().sound();
      if (strokes.keySet().stream().anyMatch(sollu -> sollu.sound().equals(sound))) {
        problems.error(
            first,
            "strokes for " + first.brief() + " are given twice",
            "take one of the two lines out");
      }
      strokes.putIfAbsent(said.sollu(), said.strokes());
    } catch (IllegalArgumentException faulty) {
      problems.error(first, faulty.getMessage(), "write a line such as drum dhim = din + thom");
    }
  }

  /** Whether the kind of words is known; it is read once, so that a fault is told once. */
  boolean isWorded() {
    return wording.isPresent();
  }

  /** Takes the kind of words, none for the usual ones. */
  void word(Optional<Wording.Kind> kind) {
    wording = Optional.of(new Wording(kind.orElse(Wording.Kind.USUAL), own, strokes));
  }

  /** All that is said of words, once their kind is known. */
  Wording wording() {
    return wording.orElseThrow();
  }

  /** Which of the usual words groups are spoken with. */
  Optional<Wording.Kind> kind(Cursor cursor) {
    Token token = cursor.next();
    for (Wording.Kind kind : Wording.Kind.values()) {
      if (token.is(kind.name())) {
        return Optional.of(kind);
      }
    }
    problems.error(
        token,
        "words are usual, plain or mora, found " + token.said(),
        "usual: those of a mora in endings such as 9(1)9(1)9; words of your own: 7 = ta , di , gi"
            + " na tom");
    return Optional.empty();
  }

  /** Words of the piece's own for a group: a number, =, sollus with their karvais. */
  private Optional<GroupWords> words(List<Token> tokens) {
    Token size = tokens.get(0);
    List<Sollu> sollus = new ArrayList<>();
    List<Integer> matras = new ArrayList<>();
    for (Token token : tokens.subList(2, tokens.size() - 1)) {
      int karvai = token.is(TokenKind.COMMA) ? 1 : token.is(TokenKind.SEMICOLON) ? 2 : 0;
      if (karvai > 0 && !sollus.isEmpty()) {
        matras.set(matras.size() - 1, matras.get(matras.size() - 1) + karvai);
        continue;
      }
      Optional<List<Sollu>> said =
          token.is(TokenKind.WORD) ? lexicon.split(token.text()) : Optional.empty();
      if (said.isEmpty()) {
        problems.error(
            token,
            "words for a group are sollus with , and ; after them, found " + token.said(),
            "write a line such as 7 = ta , di , gi na tom");
        return Optional.empty();
      }
      for (Sollu sollu : said.get()) {
        boolean apart = sollus.isEmpty() || matras.get(matras.size() - 1) > 1;
        sollus.add(apart ? sollu : lexicon.inCompany(sollus.get(sollus.size() - 1), sollu));
        matras.add(1);
      }
    }
    int sum = matras.stream().mapToInt(Integer::intValue).sum();
    if (size.value() < 1 || size.value() > Lexicon.LARGEST_GROUP || sum != size.value()) {
      problems.error(
          size,
          "words for " + size.brief() + " must be " + size.brief() + " matras, given " + sum,
          "a sollu is a matra, and so is a comma; groups have 1 to " + Lexicon.LARGEST_GROUP);
      return Optional.empty();
    }
    return Optional.of(new GroupWords(sollus, matras));
  }

  /** A number of avartanas. */
  Optional<Integer> after(Cursor cursor) {
    Token number = cursor.next();
    if (!number.is(TokenKind.NUMBER) || number.value() > Closing.MOST) {
      problems.error(
          number,
          "the tala goes on for 0 to "
              + Closing.MOST
              + " avartanas after the landing, found "
              + number.said(),
          "write after 1");
      return Optional.empty();
    }
    if (cursor.peek().is("avartana") || cursor.peek().is("avartanas")) {
      cursor.next();
    }
    return Optional.of(number.value());
  }
}
