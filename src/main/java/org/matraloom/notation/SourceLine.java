package org.matraloom.notation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Place;

/** One line of the text, without its end; it knows which character a reader counts where. */
final class SourceLine {

  /** The most characters a line may have. */
  static final int LONGEST = 10_000;

  private static final char FIRST_COMBINING = '\u0300';

  /** Made only for a line that is not plain. */
  private static final class Clusters {
    private static final Pattern CLUSTER = Pattern.compile("\\X");
  }

  private final int number;
  private final String text;
  private final boolean plain;
  private int[] begun = {};

  /**
   * A line.
   *
   * @param number from 1
   * @param text the line as written
   */
  SourceLine(int number, String text) {
    this.number = number;
    this.text = text;
    this.plain = isPlain(text);
  }

  private static boolean isPlain(String text) {
    for (int index = 0; index < text.length(); index++) {
      if (text.charAt(index) >= FIRST_COMBINING || text.charAt(index) == '\r') {
        return false;
      }
    }
    return true;
  }

  int number() {
    return number;
  }

  String text() {
    return text;
  }

  /** The end of the character, as a reader counts them, that begins at an index. */
  static int clusterEnd(String text, int start, int end) {
    Matcher matcher = Clusters.CLUSTER.matcher(text).region(start, end);
    return matcher.lookingAt() ? matcher.end() : end;
  }

  /** How many characters a reader counts in a part of the line. */
  int width(int start, int end) {
    return begunBefore(end) - begunBefore(start);
  }

  /** The place of an index into the text. */
  Place place(int index) {
    return new Place(number, begunBefore(index) + 1);
  }

  /** How many characters, as a reader counts them, begin before an index. */
  private int begunBefore(int index) {
    if (plain) {
      return index;
    }
    if (begun.length == 0) {
      begun = count();
    }
    return begun[index];
  }

  private int[] count() {
    int[] counts = new int[text.length() + 1];
    Matcher matcher = Clusters.CLUSTER.matcher(text);
    int clusters = 0;
    while (matcher.find()) {
      clusters++;
      for (int index = matcher.start() + 1; index <= matcher.end(); index++) {
        counts[index] = clusters;
      }
    }
    return counts;
  }
}
