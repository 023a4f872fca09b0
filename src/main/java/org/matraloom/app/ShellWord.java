package org.matraloom.app;

/** A word of a command that is shown to be typed. */
final class ShellWord {

  private ShellWord() {}

  /** The word as a shell takes it. */
  static String quoted(String word) {
    return word.matches("[A-Za-z0-9_./+:=%,@-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
