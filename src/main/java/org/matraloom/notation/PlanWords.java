package org.matraloom.notation;

import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Avartana;
import org.matraloom.score.Step;
import org.matraloom.spell.PlanLine;
import org.matraloom.spell.Quoted;

/**
 * Reads the lines of a plan that take no time: {@code part}, {@code tell}, {@code at}, {@code
 * tala}.
 */
final class PlanWords {

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_TEXT = 200;

  private PlanWords() {}

  /** Whether a line begins with one of these words. */
  static boolean begins(Token first) {
    return first.is(PlanLine.PART)
        || first.is(PlanLine.TELL)
        || first.is(PlanLine.AT)
        || first.is(PlanLine.TALA);
  }

  /** Whether a line begins with one of the words that stand under perform only. */
  static boolean isWord(Token first) {
    return first.is(PlanLine.PART)
        || first.is(PlanLine.TELL)
        || first.is(FillIn.FILL)
        || first.is(PlanLine.WITH)
        || first.is(UsedPiece.USE);
  }

  /** Reads a line whose first word has just been taken; the whole line is taken. */
  static Optional<Step> read(Token first, Cursor cursor, PlanPosition position, Problems problems) {
    Avartana avartana = position.avartana();
    if (first.is(PlanLine.TALA)) {
      return TalaChange.read(first, cursor, position, problems);
    }
    if (first.is(PlanLine.AT)) {
      return BeatPlace.read(cursor, avartana, problems)
          .map(place -> new Step.Stands(avartana.placeOf(place), whose(cursor, problems)));
    } else if (first.is(PlanLine.PART)) {
      return text(first, cursor, LONGEST_NAME, "part Purvanga names what follows", problems)
          .map(Step.Part::new);
    }
    return text(first, cursor, LONGEST_TEXT, "tell Keep the clap soft stands on sheets", problems)
        .map(Step.Tell::new);
  }

  /** Whose place it is, as in {@code at samam for Culvert}. */
  private static String whose(Cursor cursor, Problems problems) {
    if (!cursor.is(TokenKind.WORD) || !cursor.peek().is(PlanLine.FOR)) {
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
    return Quoted.printable(Lexer.spaced(text)).replaceFirst("^[:=\\s]+", "").strip();
  }
}
