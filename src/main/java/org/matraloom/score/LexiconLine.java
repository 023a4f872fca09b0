package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringTokenizer;
import java.util.regex.Pattern;

/** A line of a list of sollus: what is said in it, and what is said about it. */
final class LexiconLine {

  /** More sollus a second than anybody says. */
  static final int MOST_PER_SECOND = 20;

  private static final Pattern SIZE = Pattern.compile("[1-9][0-9]?");
  private static final String FASTEST = "fastest";

  /** What a line that gives a sound must look like. */
  static final String SOUND_EXPECTED =
      "expected \"name : spellings : phones\", as in \"dhim : dhim dheem : dh i m\"";

  /** What a line that gives words for a group must look like. */
  static final String WORDS_EXPECTED =
      "expected \"size = words\" with a size of 1 to "
          + LexiconText.LARGEST_GROUP
          + ", as in \"5 = ta di gi na tom\"";

  /** What a line that says how fast a mouth is must look like. */
  static final String FASTEST_EXPECTED =
      "expected \"fastest = 9.5\", sollus a second from 1 to " + MOST_PER_SECOND;

  private static final Pattern RATE = Pattern.compile("[0-9]{1,2}([.][0-9]{1,3})?");
  private static final int LONGEST_MESSAGE = 200;
  private static final String SPACES = " \t\n\u000b\f\r";

  private LexiconLine() {}

  /** The lines of a list, whatever ends them. */
  static String[] lines(String text) {
    return (text.startsWith("\ufeff") ? text.substring(1) : text).split("\r\n|\r|\n", -1);
  }

  /** Whether this is the size of a group. */
  static boolean isSize(String word) {
    return SIZE.matcher(word).matches();
  }

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

  /** The three names of {@code ki + ta = ṭa}; none if the line is not one of these. */
  static List<String> company(String line) {
    String[] sides = line.split("=", -1);
    String[] pair = sides[0].split("\\+", -1);
    return sides.length == 2 && pair.length == 2
        ? List.of(pair[0].strip(), pair[1].strip(), sides[1].strip())
        : List.of();
  }

  /** Whether a line says how fast its mouth is. */
  static boolean isFastest(String line) {
    return line.split("=", 2)[0].strip().equals(FASTEST);
  }

  /** The rate that such a line gives, in sollus a second; empty if it is none. */
  static OptionalDouble fastest(String line) {
    String given = line.split("=", 2)[1].strip();
    double rate = RATE.matcher(given).matches() ? Double.parseDouble(given) : 0;
    return rate >= 1 && rate <= MOST_PER_SECOND ? OptionalDouble.of(rate) : OptionalDouble.empty();
  }
}
