package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/** A line of a list of sollus: what is said in it, and what is said about it. */
final class LexiconLine {

  private static final int LONGEST_MESSAGE = 200;
  private static final String SPACES = " \t\n\u000b\f\r";

  private LexiconLine() {}

  static String withoutNote(String line) {
    int note = line.indexOf('#');
    return (note < 0 ? line : line.substring(0, note)).strip();
  }

  static List<String> tokens(String text) {
    List<String> tokens = new ArrayList<>();
    StringTokenizer words = new StringTokenizer(text.strip(), SPACES);
    while (words.hasMoreTokens()) {
      tokens.add(words.nextToken());
    }
    return tokens;
  }

  /** A message about the user's text, harmless for a terminal and not too long. */
  static String printable(String message) {
    String harmless = message.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}]", "\ufffd");
    return harmless.length() > LONGEST_MESSAGE
        ? harmless.substring(0, LONGEST_MESSAGE) + "..."
        : harmless;
  }
}
