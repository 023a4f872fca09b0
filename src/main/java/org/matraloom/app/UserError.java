package org.matraloom.app;

import java.util.function.Supplier;

/** Something the user can put right; its message says what was given, what is allowed, and how. */
final class UserError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UserError(String message) {
    super(message, null, false, false);
  }

  /** What something gives; its refusal of an argument is the user's error. */
  static <T> T unlessRefused(Supplier<T> asked) {
    try {
      return asked.get();
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  /** An error whose explanation has been printed. */
  static UserError alreadyTold() {
    return new UserError("");
  }
}
