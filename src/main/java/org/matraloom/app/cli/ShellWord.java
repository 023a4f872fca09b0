package org.matraloom.app.cli;

/** A word of a command that is shown to be typed. */
public final class ShellWord {

  private ShellWord() {}

  /**
   * The word as a shell takes it.
   *
   * @param word any text
   * @return the word, in quotes where it needs them
   */
  public static String quoted(String word) {
    return word.matches("[A-Za-z0-9_./+:=%,@-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
