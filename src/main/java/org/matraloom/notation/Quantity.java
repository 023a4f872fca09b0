package org.matraloom.notation;

import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Reads a number that need not be whole: {@code 5}, {@code 37.5}, {@code 1/2}, {@code 1 1/2}. */
final class Quantity {

  private static final int MOST = 1_000_000;
  private static final int MOST_DECIMALS = 3;
  private static final int FINEST = 1_000;

  /** Every fraction that a nadai from 1 to 9 has in the third kalam divides this. */
  private static final int GRID = 10_080;

  private static final Set<String> ORDINALS = Set.of("st", "nd", "rd", "th");

  private Quantity() {}

  /** Reads a number that comes next, with a fraction of at most a thousandth. */
  static Optional<Ratio> read(Cursor cursor, String what, Problems problems) {
    if (!cursor.is(TokenKind.NUMBER)) {
      problems.error(
          cursor.peek(),
          "expected " + what + ", found " + cursor.peek().said(),
          "a number is written as 2, 1/2, 1 1/2 or 1.5");
      return Optional.empty();
    }
    Token first = cursor.next();
    if (first.value() > MOST) {
      problems.error(first, "the largest number here is " + MOST + ", given " + first.brief());
      return Optional.empty();
    }
    if (cursor.is(TokenKind.SLASH)) {
      return fraction(Ratio.ZERO, first, cursor, problems);
    } else if (cursor.is(TokenKind.NUMBER)) {
      return fraction(Ratio.of(first.value()), cursor.next(), cursor, problems);
    } else if (cursor.is(TokenKind.DOT) && cursor.peek(1).is(TokenKind.NUMBER)) {
      return decimal(first, cursor, problems);
    }
    return Optional.of(Ratio.of(first.value()));
  }

  /** Reads a place or a length in beats; its fraction must be one that some nadai has. */
  static Optional<Ratio> readBeats(Cursor cursor, String what, Problems problems) {
    Token first = cursor.peek();
    Optional<Ratio> number = read(cursor, what, problems);
    if (number.isPresent() && GRID % number.get().den() != 0) {
      problems.error(
          first.line(),
          first.start(),
          cursor.previous().end(),
          "no nadai has " + Ratio.of(1, number.get().den()) + " of a beat",
          () ->
              Optional.of("fractions of a beat are 1/2, 1/3, 1/4, 1/5 and so on, as far as 1/36"));
      return Optional.empty();
    }
    return number;
  }

  private static Optional<Ratio> fraction(
      Ratio whole, Token above, Cursor cursor, Problems problems) {
    if (!cursor.took(TokenKind.SLASH) || !cursor.is(TokenKind.NUMBER)) {
      problems.error(
          cursor.peek(),
          "expected a fraction such as 1/2, found " + cursor.peek().said(),
          ORDINALS.contains(cursor.peek().text())
              ? "a place inside a beat is a fraction: beat 4 1/2 is its 3rd matra of four"
              : "one and a half is written 1 1/2");
      return Optional.empty();
    }
    Token below = cursor.next();
    if (below.value() < 1 || below.value() > FINEST || above.value() > MOST) {
      problems.error(
          below,
          "a fraction has 1 to " + FINEST + " below the line, and at most " + MOST + " above it");
      return Optional.empty();
    }
    return Optional.of(whole.plus(Ratio.of(above.value(), below.value())));
  }

  private static Optional<Ratio> decimal(Token whole, Cursor cursor, Problems problems) {
    cursor.next();
    Token decimals = cursor.next();
    String digits = decimals.text();
    if (digits.length() > MOST_DECIMALS) {
      problems.error(
          decimals,
          "a number has at most " + MOST_DECIMALS + " decimals, given " + digits.length(),
          "a third is exact when written 1/3");
      return Optional.empty();
    }
    long scale = 1;
    for (int digit = 0; digit < digits.length(); digit++) {
      scale *= 10;
    }
    return Optional.of(Ratio.of(whole.value()).plus(Ratio.of(decimals.value(), scale)));
  }

  /** How often the gestures of a tala are shown. */
  static Optional<Integer> kalai(Cursor cursor, Problems problems) {
    Token token = cursor.next();
    if (token.is(TokenKind.NUMBER)
        && (token.value() == 1 || token.value() == 2 || token.value() == 4)) {
      return Optional.of(token.value());
    }
    problems.error(
        token, "kalai is 1, 2 or 4, found " + token.said(), "write kalai 2 for two kalai");
    return Optional.empty();
  }

  /** A tempo that can be performed. */
  static Optional<Tempo> tempo(Cursor cursor, Problems problems) {
    Token first = cursor.peek();
    Optional<Ratio> beatsPerMinute = read(cursor, "a number of beats a minute", problems);
    if (beatsPerMinute.isPresent() && !Tempo.inRange(beatsPerMinute.get())) {
      problems.error(
          first.line(),
          first.start(),
          cursor.previous().end(),
          "a tempo is "
              + Tempo.SLOWEST
              + " to "
              + Tempo.FASTEST
              + " beats a minute, given "
              + beatsPerMinute.get().toMixed(),
          () -> Optional.of("count the claps, not the sollus"));
      return Optional.empty();
    }
    return beatsPerMinute.isPresent()
        ? Optional.of(new Tempo(beatsPerMinute.get()))
        : Optional.empty();
  }
}
