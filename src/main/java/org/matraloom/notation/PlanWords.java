package org.matraloom.notation;

import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Avartana;
import org.matraloom.score.Step;

/**
 * Reads the lines of a plan that take no time: {@code part}, {@code tell}, {@code at}, {@code
 * tala}.
 */
final class PlanWords {

  static final String PART = "part";
  static final String TELL = "tell";
  static final String AT = "at";
  static final String FOR = "for";
  static final String TALA = "tala";

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_TEXT = 200;

  private PlanWords() {}

  /** Whether a line begins with one of these words. */
  static boolean begins(Token first) {
    return first.is(PART) || first.is(TELL) || first.is(AT) || first.is(TALA);
  }

  /** Reads a line whose first word has just been taken; the whole line is taken. */
  static Optional<Step> read(Token first, Cursor cursor, PlanPosition position, Problems problems) {
    Avartana avartana = position.avartana();
    if (first.is(TALA)) {
      return TalaChange.read(first, cursor, position, problems);
    }
    if (first.is(AT)) {
      return BeatPlace.read(cursor, avartana, problems)
          .map(place -> new Step.Stands(avartana.placeOf(place), whose(cursor, problems)));
    } else if (first.is(PART)) {
      return text(first, cursor, LONGEST_NAME, "part Purvanga names what follows", problems)
          .map(Step.Part::new);
    }
    return text(first, cursor, LONGEST_TEXT, "tell Keep the clap soft stands on sheets", problems)
        .map(Step.Tell::new);
  }

  /** Whose place it is, as in {@code at samam for Culvert}. */
  private static String whose(Cursor cursor, Problems problems) {
    if (!cursor.is(TokenKind.WORD) || !cursor.peek().is(FOR)) {
      return "";
    }
    Token word = cursor.next();
    return text(word, cursor, LONGEST_NAME, "at samam for Culvert", problems).orElse("");
  }

  /** The rest of the line, up to a note; signs of a header in front are passed over. */
  private static Optional<String> text(
      Token first, Cursor cursor, int longest, String example, Problems problems) {
    while (cursor.is(TokenKind.COLON) || cursor.is(TokenKind.EQUALS)) {
      cursor.next();
    }
    Token begins = cursor.peek();
    String line = first.line().text();
    while (!cursor.isAtEnd()) {
      cursor.next();
    }
    if (begins.is(TokenKind.END)) {
      problems.error(first, "expected words after " + first.brief(), example);
      return Optional.empty();
    }
    String plain = plain(line.substring(begins.start(), Lexer.noteStart(line)));
    if (plain.length() > longest) {
      problems.error(
          begins,
          "after "
              + first.brief()
              + " stand at most "
              + longest
              + " characters, given "
              + plain.length(),
          "shorten it, or write two lines");
      return Optional.empty();
    }
    return Optional.of(plain);
  }

  /** A text on one line as it is read again: plain spaces, no sign of a header in front. */
  static String plain(String text) {
    return Problem.printable(spaced(text)).replaceFirst("^[:=\\s]+", "").strip();
  }

  /** A text with plain spaces. */
  static String spaced(String text) {
    StringBuilder plain = new StringBuilder();
    text.chars()
        .map(letter -> Lexer.isSpace(letter) ? ' ' : letter)
        .forEach(letter -> plain.append((char) letter));
    return plain.toString();
  }
}
