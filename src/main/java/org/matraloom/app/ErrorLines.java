package org.matraloom.app;

import java.io.IOException;
import java.io.Writer;
import org.matraloom.app.cli.Paragraph;

/**
 * What the program complains of, broken into lines of a terminal's usual 80 columns. A line of the
 * user's own that is shown, and what is printed piece by piece, stays as it is.
 */
final class ErrorLines extends Writer {

  private static final int INDENT = 2;

  private final Writer out;
  private final StringBuilder line = new StringBuilder();
  private boolean begun;

  /** Complaints on their way to a writer. */
  ErrorLines(Writer out) {
    this.out = out;
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    for (int index = from; index < from + length; index++) {
      line.append(text[index]);
      if (text[index] == '\n') {
        end();
      }
    }
  }

  private void end() throws IOException {
    String whole = line.toString();
    line.setLength(0);
    String words = whole.stripTrailing();
    boolean breaks = !begun && isSaid(words);
    out.write(breaks ? Paragraph.hanging(INDENT, words) + whole.substring(words.length()) : whole);
    begun = false;
  }

  /** Whether the program says it, as against a line of a score or a recording shown below. */
  private static boolean isSaid(String words) {
    return words.startsWith("matraloom: ")
        || words.startsWith("help: ")
        || words.contains(": error: ")
        || words.contains(": warning: ");
  }

  @Override
  public void flush() throws IOException {
    if (!line.isEmpty()) {
      out.write(line.toString());
      line.setLength(0);
      begun = true;
    }
    out.flush();
  }

  @Override
  public void close() throws IOException {
    flush();
    out.close();
  }
}
