package org.matraloom.app;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Text for a terminal: what would steer the terminal, or turn the text around, becomes a sign that
 * stands for an unknown one. Titles, remarks and names of files come from others.
 *
 * <p>That is the control characters of ISO 6429 (C0 but tabulator and ends of lines, DEL, C1) and
 * the overrides and isolates of the Unicode Bidirectional Algorithm (UAX 9).
 */
final class TerminalWriter extends FilterWriter {

  private static final char UNKNOWN = '\uFFFD';

  TerminalWriter(Writer out) {
    super(out);
  }

  @Override
  public void write(int character) throws IOException {
    out.write(steers((char) character) ? UNKNOWN : character);
  }

  @Override
  public void write(char[] text, int offset, int length) throws IOException {
    write(new String(text, offset, length), 0, length);
  }

  @Override
  public void write(String text, int offset, int length) throws IOException {
    int done = offset;
    for (int at = offset; at < offset + length; at++) {
      if (steers(text.charAt(at))) {
        out.write(text, done, at - done);
        out.write(UNKNOWN);
        done = at + 1;
      }
    }
    out.write(text, done, offset + length - done);
  }

  private static boolean steers(char sign) {
    if (sign >= ' ' && sign < '\u007F') {
      return false;
    }
    return sign < ' ' && sign != '\n' && sign != '\r' && sign != '\t'
        || sign >= '\u007F' && sign <= '\u009F'
        || sign >= '\u202A' && sign <= '\u202E'
        || sign >= '\u2066' && sign <= '\u2069';
  }
}
