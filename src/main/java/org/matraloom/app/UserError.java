package org.matraloom.app;

/** Something the user can put right; its message says what was given, what is allowed, and how. */
final class UserError extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UserError(String message) {
    super(message, null, false, false);
  }

  /** An error whose explanation has been printed. */
  static UserError alreadyTold() {
    return new UserError("");
  }
}
