package org.matraloom.recording;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;

/**
 * Looks over the index of an MP4 file before it is decoded (ISO/IEC 14496-12, chapter 8).
 *
 * <p>The decoder believes every length and every count, and makes room for it; so what does not fit
 * into the box around it, or claims more than the file can hold, is refused here.
 */
final class Mp4Index {

  private static final int HEAD = 8;
  private static final int FULL_HEAD = 4;
  private static final int MOST_DEPTH = 32;
  private static final int MOST_BOXES = 5_000;
  private static final int LONGEST_TABLE = 64_000_000;

  /** What comes before the boxes inside a box. */
  private static final Map<String, Integer> BEFORE_INNER =
      Map.of(
          "moov", 0, "trak", 0, "mdia", 0, "minf", 0, "stbl", 0, "edts", 0, "dinf", 0, "stsd", 8,
          "mp4a", 28, "wave", 0);

  /** How many bytes an entry of a table takes; before them stand eight, the last four the count. */
  private static final Map<String, Integer> ENTRY_BYTES =
      Map.of("stts", 8, "ctts", 8, "stsc", 12, "stco", 4, "co64", 8, "stss", 4);

  private static final String SIZES = "stsz";
  private static final String EDITS = "elst";
  private static final String DECODER = "esds";

  /** Boxes of the index that hold numbers which are looped over or added up. */
  private static final Set<String> COUNTS = Set.of("stts", "ctts", "stsc", "stco", SIZES);

  private final Path file;
  private final RandomAccessFile in;
  private int boxes;

  Mp4Index(Path file, RandomAccessFile in) {
    this.file = file;
    this.in = in;
  }

  /** Checks the boxes between two places of the file, and those inside them. */
  void require(long from, long to, int depth) throws IOException {
    if (depth > MOST_DEPTH) {
      throw broken("boxes lie in one another more than " + MOST_DEPTH + " deep");
    }
    for (long at = from; at + HEAD <= to; ) {
      in.seek(at);
      long size = Integer.toUnsignedLong(in.readInt());
      byte[] type = new byte[4];
      in.readFully(type);
      String name = new String(type, StandardCharsets.ISO_8859_1);
      if (++boxes > MOST_BOXES) {
        throw broken("it has more than " + MOST_BOXES + " boxes");
      }
      if (size == 0 && at + HEAD == to) {
        return;
      }
      if (size < HEAD || size > to - at) {
        throw broken("the box " + name.replaceAll("[^ -~]", "?") + " does not fit where it lies");
      }
      requireBox(name, at + HEAD, at + size, depth);
      at += size;
    }
  }

  private void requireBox(String name, long from, long to, int depth) throws IOException {
    Integer before = BEFORE_INNER.get(name);
    if (before != null) {
      require(Math.min(to, from + before + versionBytes(name, from, to)), to, depth + 1);
    } else if (ENTRY_BYTES.containsKey(name) || name.equals(SIZES) || name.equals(EDITS)) {
      requireTable(name, contents(name, from, to));
    } else if (name.equals(DECODER)) {
      ByteBuffer descriptors = contents(name, from, to);
      descriptors.position(Math.min(descriptors.limit(), FULL_HEAD));
      requireDescriptor(descriptors);
    }
  }

  /** A sound that a later version of QuickTime describes has more numbers before its boxes. */
  private int versionBytes(String name, long from, long to) throws IOException {
    if (!name.equals("mp4a") || to - from < 10) {
      return 0;
    }
    in.seek(from + 8);
    int version = in.readUnsignedShort();
    return version == 1 ? 16 : version == 2 ? 36 : 0;
  }

  private ByteBuffer contents(String name, long from, long to) throws IOException {
    if (to - from > LONGEST_TABLE) {
      throw broken("the table " + name + " is longer than a day of sound needs");
    }
    byte[] bytes = new byte[(int) (to - from)];
    in.seek(from);
    in.readFully(bytes);
    return ByteBuffer.wrap(bytes);
  }

  private void requireTable(String name, ByteBuffer table) throws IOException {
    boolean sizes = name.equals(SIZES);
    int head = FULL_HEAD + (sizes ? 8 : 4);
    if (table.limit() < head) {
      throw broken("the table " + name + " has no count");
    }
    long each = sizes ? Integer.toUnsignedLong(table.getInt(FULL_HEAD)) : 0;
    long count = Integer.toUnsignedLong(table.getInt(head - 4));
    int bytes = entryBytes(name, table, each);
    long claimed = bytes == 0 ? count * each : count * bytes;
    if (claimed > (bytes == 0 ? in.length() : table.limit() - head)) {
      throw broken("the table " + name + " claims " + count + " entries");
    }
    if (COUNTS.contains(name) && bytes > 0) {
      requireNumbers(name, table, head, bytes, (int) count);
    }
  }

  private static int entryBytes(String name, ByteBuffer table, long each) {
    return switch (name) {
      case SIZES -> each == 0 ? 4 : 0;
      case EDITS -> table.get(0) == 1 ? 20 : 12;
      default -> ENTRY_BYTES.get(name);
    };
  }

  /** Every sample and every chunk takes a byte or more, and none lies beyond the end. */
  private void requireNumbers(String name, ByteBuffer table, int head, int bytes, int count)
      throws IOException {
    boolean spans = !name.equals("stsc") && !name.equals("stco");
    long sum = 0;
    for (int entry = 0; entry < count; entry++) {
      long first = Integer.toUnsignedLong(table.getInt(head + entry * bytes));
      long second =
          name.equals("stsc") ? Integer.toUnsignedLong(table.getInt(head + entry * bytes + 4)) : 0;
      sum = spans ? sum + first : Math.max(first, second);
      if (sum > in.length()) {
        throw broken("the table " + name + " claims more than the file holds");
      }
    }
  }

  /** Descriptors lie in one another, each with its length (ISO/IEC 14496-1, 8.3.3). */
  private void requireDescriptor(ByteBuffer bytes) throws IOException {
    while (bytes.remaining() >= 2) {
      int tag = bytes.get() & 0xFF;
      int size = 0;
      int part = 0x80;
      for (int i = 0; i < 4 && (part & 0x80) != 0 && bytes.hasRemaining(); i++) {
        part = bytes.get() & 0xFF;
        size = size << 7 | part & 0x7F;
      }
      if (size > bytes.remaining()) {
        throw broken("what describes its decoder does not fit");
      }
      int skipped = tag == 3 ? 3 : tag == 4 ? 13 : size;
      bytes.position(bytes.position() + Math.min(skipped, size));
    }
  }

  private RecordingException broken(String what) {
    return new RecordingException(
        file, "is damaged: " + what + "; save it anew as M4A, WAV or FLAC");
  }
}
