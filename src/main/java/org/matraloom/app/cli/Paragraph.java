package org.matraloom.app.cli;

/** Text broken into lines of at most 80 columns. */
public final class Paragraph {

  private static final int COLUMNS = 80;

  private Paragraph() {}

  /**
   * The text with line feeds in place of some of its spaces; a longer word stays whole.
   *
   * @param text words with single spaces between them
   * @return the text in lines
   */
  public static String of(String text) {
    return of(text, COLUMNS);
  }

  /**
   * The same in a narrower column, each line after some spaces.
   *
   * @param spaces how many before each line
   * @param text words with single spaces between them
   * @return the text in lines
   */
  public static String indented(int spaces, String text) {
    String before = " ".repeat(spaces);
    return before + of(text, COLUMNS - spaces).replace("\n", "\n" + before);
  }

  /**
   * A line, broken if it is too long; what follows the first break starts after some spaces.
   *
   * <p>The columns within the first line stay as they are, so a row of a table can be given.
   *
   * @param spaces how many before what follows the break
   * @param line a line
   * @return the text in lines
   */
  public static String hanging(int spaces, String line) {
    if (line.length() <= COLUMNS) {
      return line;
    }
    int end = line.lastIndexOf(' ', COLUMNS);
    if (end < 0 || line.substring(0, end).isBlank()) {
      return line;
    }
    return line.substring(0, end).stripTrailing()
        + "\n"
        + indented(spaces, line.substring(end + 1));
  }

  /**
   * The same; after the first break it starts two columns further in than an indented line did.
   *
   * @param line a line, its own indent included
   * @return the text in lines
   */
  public static String folded(String line) {
    int before = line.length() - line.stripLeading().length();
    return hanging(before == 0 ? 0 : before + 2, line);
  }

  private static String of(String text, int columns) {
    StringBuilder lines = new StringBuilder();
    int column = 0;
    for (String word : text.split(" ", -1)) {
      if (column > 0 && column + 1 + word.length() > columns) {
        lines.append('\n');
        column = 0;
      } else if (column > 0) {
        lines.append(' ');
        column++;
      }
      lines.append(word);
      column += word.length();
    }
    return lines.toString();
  }
}
