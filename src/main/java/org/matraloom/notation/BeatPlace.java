package org.matraloom.notation;

import java.util.List;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Avartana;
import org.matraloom.spell.MeantWord;
import org.matraloom.time.Ratio;

/**
 * Reads a place in the cycle: {@code samam}, {@code beat 5}, {@code beat 4 1/5}, {@code +1/2},
 * {@code -1/4}.
 *
 * <p>A beat is a counted beat, the first being samam. A place with a sign is counted in aksharas
 * from samam; matras to it are aksharas times gati times kalai.
 */
final class BeatPlace {

  private static final String EXPECTED = "a place is samam, beat 5, beat 4 1/5, +1/2 or -1/4";

  private BeatPlace() {}

  /** Reads a place that comes next; beats after samam, negative before it. */
  static Optional<Ratio> read(Cursor cursor, Avartana avartana, Problems problems) {
    Token first = cursor.peek();
    if (first.is("sam") || first.is("samam") || first.is("sama")) {
      cursor.next();
      return Optional.of(Ratio.ZERO);
    } else if (first.is("beat")) {
      cursor.next();
      return Quantity.readBeats(cursor, "the number of a beat", problems)
          .flatMap(beat -> counted(beat, first, cursor, avartana, problems));
    } else if (first.is(TokenKind.PLUS) || first.is(TokenKind.DASH)) {
      cursor.next();
      return Quantity.readBeats(cursor, "how many aksharas from samam", problems)
          .flatMap(aksharas -> signed(aksharas, first, cursor, avartana, problems));
    }
    problems.error(first, EXPECTED + "; found " + first.said(), advice(cursor));
    return Optional.empty();
  }

  private static String advice(Cursor cursor) {
    Token first = cursor.peek();
    boolean isFraction = cursor.peek(1).is(TokenKind.SLASH) || cursor.peek(1).is(TokenKind.DOT);
    if (first.is(TokenKind.NUMBER) && isFraction) {
      return "write + in front of a part of a beat after samam, - before samam, as in +1/2";
    }
    return first.is(TokenKind.NUMBER)
        ? "write beat "
            + first.brief()
            + " to count from 1, +"
            + first.brief()
            + " to count from samam"
        : MeantWord.of(first.text(), List.of("samam", "beat"))
            .map(near -> "the nearest is " + near)
            .orElse("a phrase that begins half a beat after samam starts at +1/2");
  }

  private static Optional<Ratio> counted(
      Ratio beat, Token first, Cursor cursor, Avartana avartana, Problems problems) {
    int beats = avartana.beats();
    if (beat.compareTo(Ratio.ONE) >= 0 && beat.compareTo(Ratio.of(beats + 1L)) < 0) {
      return Optional.of(beat.minus(Ratio.ONE));
    }
    return outside(
        first,
        cursor,
        "beats are counted from 1 to " + beats + " here, given " + beat.toMixed(),
        avartana.kalai() > 1
            ? "in kalai " + avartana.kalai() + " every akshara has " + avartana.kalai() + " beats"
            : "samam is beat 1",
        problems);
  }

  private static Optional<Ratio> signed(
      Ratio aksharas, Token sign, Cursor cursor, Avartana avartana, Problems problems) {
    int most = avartana.tala().aksharas();
    if (aksharas.compareTo(Ratio.of(most)) < 0) {
      Ratio beats = aksharas.times(avartana.kalai());
      return Optional.of(sign.is(TokenKind.PLUS) ? beats : beats.negate());
    }
    return outside(
        sign,
        cursor,
        "a place is less than one avartana of "
            + most
            + " aksharas from samam, given "
            + aksharas.toMixed(),
        "take whole avartanas away",
        problems);
  }

  private static Optional<Ratio> outside(
      Token first, Cursor cursor, String message, String help, Problems problems) {
    problems.error(
        first.line(), first.start(), cursor.previous().end(), message, () -> Optional.of(help));
    return Optional.empty();
  }
}
