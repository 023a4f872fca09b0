package org.matraloom.log;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** The lines of a log, one after another, as bytes; a line of any length costs little memory. */
final class LogLines {

  /** A record is shorter than this; of a longer line only the beginning is kept. */
  static final int LONGEST = 1 << 20;

  private static final int BLOCK = 1 << 16;

  private final InputStream in;
  private final byte[] block = new byte[BLOCK];
  private int position;
  private int filled;

  private byte[] line = new byte[512];
  private int length;
  private long bytes;
  private long start;
  private long read;
  private boolean endsInside;

  LogLines(InputStream in) {
    this.in = in;
  }

  /** Goes to the next line; false if there is none. */
  boolean next() throws IOException {
    length = 0;
    bytes = 0;
    start = read;
    while (more()) {
      int from = position;
      while (position < filled && block[position] != '\n') {
        position++;
      }
      keep(from, position - from);
      if (position < filled) {
        position++;
        read = start + bytes + 1;
        return true;
      }
    }
    endsInside = bytes > 0;
    read = start + bytes;
    return endsInside;
  }

  private boolean more() throws IOException {
    if (position == filled) {
      position = 0;
      filled = Math.max(0, in.read(block));
    }
    return position < filled;
  }

  private void keep(int from, int count) {
    bytes += count;
    int kept = Math.min(count, LONGEST - length);
    if (length + kept > line.length) {
      line = Arrays.copyOf(line, Math.max(2 * line.length, length + kept));
    }
    System.arraycopy(block, from, line, length, kept);
    length += kept;
  }

  /**
   * The record of the line.
   *
   * @throws IllegalArgumentException if it is none; the message says why, in a few words
   */
  LogRecord record() {
    if (bytes > length) {
      throw new IllegalArgumentException("it is far too long for a record");
    }
    return EntryReader.read(line, length);
  }

  boolean isBlank() {
    return bytes == 0 || bytes == 1 && line[0] == '\r';
  }

  /** How long the line is in the file, without its end. */
  long bytes() {
    return bytes;
  }

  /** Where the line begins in the file. */
  long start() {
    return start;
  }

  /** Whether the last line read has no end. */
  boolean endsInside() {
    return endsInside;
  }
}
