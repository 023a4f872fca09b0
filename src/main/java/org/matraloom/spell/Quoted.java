package org.matraloom.spell;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text of others for a message: harmless for a terminal, and not too long. */
public final class Quoted {

  private static final int LONGEST = 40;
  private static final int MOST_MARKS = 24;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200c;
  private static final int ZERO_WIDTH_JOINER = 0x200d;

  /** Made only when somebody is quoted. */
  private static final class Clusters {
    private static final Pattern CLUSTER = Pattern.compile("\\X");
  }

  private Quoted() {}

  /**
   * Text in quotation marks, cut if it is long.
   *
   * @param text any text
   * @return at most 40 characters of it, as a reader counts them, between marks
   */
  public static String quote(String text) {
    return '"' + brief(text) + '"';
  }

  /**
   * Text cut if it is long.
   *
   * @param text any text
   * @return at most 40 characters of it, as a reader counts them
   */
  public static String brief(String text) {
    List<String> clusters = clusters(text);
    boolean cut = clusters.size() > LONGEST;
    List<String> shown = cut ? clusters.subList(0, LONGEST) : clusters;
    return printable(String.join("", shown)) + (cut ? "..." : "");
  }

  /**
   * The characters of a text as a reader counts them; a great pile of marks is cut.
   *
   * @param text any text
   * @return its grapheme clusters in order
   */
  public static List<String> clusters(String text) {
    List<String> clusters = new ArrayList<>();
    Matcher matcher = Clusters.CLUSTER.matcher(text);
    while (matcher.find()) {
      int end = Math.min(matcher.end(), matcher.start() + MOST_MARKS);
      boolean inside = end < text.length() && Character.isLowSurrogate(text.charAt(end));
      clusters.add(text.substring(matcher.start(), inside ? end - 1 : end));
    }
    return clusters;
  }

  /**
   * Makes text harmless for a terminal.
   *
   * @param text any text
   * @return the text with a replacement sign for each character that controls or hides something
   */
  public static String printable(String text) {
    StringBuilder printable = new StringBuilder();
    for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
      int letter = text.codePointAt(at);
      printable.appendCodePoint(isHarmless(letter) ? letter : '\ufffd');
    }
    return printable.toString();
  }

  private static boolean isHarmless(int letter) {
    int type = Character.getType(letter);
    if (letter == ZERO_WIDTH_JOINER || letter == ZERO_WIDTH_NON_JOINER) {
      return true;
    }
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
