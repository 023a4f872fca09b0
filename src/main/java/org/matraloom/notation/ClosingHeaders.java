package org.matraloom.notation;

import java.util.List;
import java.util.Optional;
import org.matraloom.notation.Token.Kind;
import org.matraloom.score.Closing;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.Stroke;

/** Reads the headers of what follows the last matra: {@code stroke tom , ,} and {@code after 2}. */
final class ClosingHeaders {

  private static final String EXAMPLE = "write stroke tom, or stroke tom ; to have it ring longer";

  private final Lexicon lexicon;
  private final Problems problems;

  ClosingHeaders(Lexicon lexicon, Problems problems) {
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** One sollu, with its karvai if that is not left open. */
  Optional<Stroke> stroke(Cursor cursor) {
    Token word = cursor.next();
    if (!word.is(Kind.WORD)) {
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
    return karvai(cursor).map(karvai -> new Stroke(sollus.get().get(0), karvai));
  }

  private Optional<Integer> karvai(Cursor cursor) {
    Token first = cursor.peek();
    int matras = 0;
    while (cursor.is(Kind.COMMA) || cursor.is(Kind.SEMICOLON)) {
      matras += cursor.next().is(Kind.COMMA) ? 1 : 2;
    }
    if (matras > Stroke.LONGEST) {
      problems.error(
          first,
          "the last stroke rings at most " + Stroke.LONGEST + " matras, given " + matras,
          "without commas it rings for a beat");
      return Optional.empty();
    }
    return Optional.of(matras);
  }

  /** A number of avartanas. */
  Optional<Integer> after(Cursor cursor) {
    Token number = cursor.next();
    if (!number.is(Kind.NUMBER) || number.value() > Closing.MOST) {
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
