package org.matraloom.app.cli;

import java.util.function.Supplier;

/** Something the user can put right; its message says what was given, what is allowed, and how. */
public final class UserError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Makes an error.
   *
   * @param message what was given, what is allowed, and how to put it right
   */
  public UserError(String message) {
    super(message, null, false, false);
  }

  /**
   * What something gives; its refusal of an argument is the user's error.
   *
   * @param asked gives it
   * @return what it gives
   * @param <T> what is given
   * @throws UserError if it throws an IllegalArgumentException, with the same words
   */
  public static <T> T unlessRefused(Supplier<T> asked) {
    try {
      return asked.get();
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  /**
   * An error whose explanation has been printed.
   *
   * @return an error without words
   */
  public static UserError alreadyTold() {
    return new UserError("");
  }
}
