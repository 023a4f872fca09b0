package org.matraloom.notation;

import java.util.Optional;
import org.matraloom.notation.Token.Kind;

/** How often something is said: {@code x3}. */
final class Times {

  static final int MOST = 999;

  private Times() {}

  /** Reads an x, which comes next, and its number. */
  static Optional<Integer> read(Cursor cursor, Problems problems) {
    Token times = cursor.next();
    if (!cursor.is(Kind.NUMBER)) {
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
