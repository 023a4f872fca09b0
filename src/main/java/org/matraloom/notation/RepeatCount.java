package org.matraloom.notation;

import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;

/** How often something is said: {@code x3}. */
final class RepeatCount {

  static final int MOST = 999;

  private RepeatCount() {}

  /** Reads an x, which comes next, and its number; a second x after it is a fault. */
  static Optional<Integer> read(Cursor cursor, Problems problems) {
    Optional<Integer> times = one(cursor, problems);
    while (cursor.is(TokenKind.TIMES)) {
      problems.error(
          cursor.peek(),
          "x is given twice",
          "multiply the two, or bracket the first: ((takita) x2) x3");
      one(cursor, problems);
    }
    return times;
  }

  private static Optional<Integer> one(Cursor cursor, Problems problems) {
    Token times = cursor.next();
    if (!cursor.is(TokenKind.NUMBER)) {
      problems.error(
          times, "expected a number after x, found " + cursor.peek().said(), "write x2 for twice");
      return Optional.empty();
    }
    Token number = cursor.next();
    if (number.value() < 1 || number.value() > MOST) {
      problems.error(number, "something is said 1 to " + MOST + " times, given " + number.brief());
      return Optional.empty();
    }
    return Optional.of(number.value());
  }
}
