package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Place;

/**
 * One line of the text, without its end.
 *
 * @param number from 1
 * @param text the line as written
 */
record SourceLine(int number, String text) {

  /** The most characters a line may have. */
  static final int LONGEST = 10_000;

  private static final Pattern CLUSTER = Pattern.compile("\\X");
  private static final char FIRST_COMBINING = '\u0300';

  /** The characters of a text as a reader counts them. */
  static List<String> clusters(String text) {
    List<String> clusters = new ArrayList<>();
    Matcher matcher = CLUSTER.matcher(text);
    while (matcher.find()) {
      clusters.add(matcher.group());
    }
    return clusters;
  }

  /** The end of the character, as a reader counts them, that begins at an index. */
  static int clusterEnd(String text, int start, int end) {
    Matcher matcher = CLUSTER.matcher(text).region(start, end);
    return matcher.lookingAt() ? matcher.end() : end;
  }

  /** How many characters a reader counts in a part of the line. */
  int width(int start, int end) {
    String part = text.substring(start, end);
    boolean plain = part.chars().allMatch(letter -> letter < FIRST_COMBINING && letter != '\r');
    return plain ? part.length() : (int) CLUSTER.matcher(part).results().count();
  }

  /** The place of an index into the text. */
  Place place(int index) {
    return new Place(number, width(0, index) + 1);
  }
}
