package org.matraloom.take;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** The packets of the first stream of an Ogg file, in order (layout: RFC 3533, section 6). */
final class OggPackets implements Closeable {

  private static final int PAGE_HEAD = 27;
  private static final int LONGEST_PAGE = 65_307;
  private static final int PAGE_MARK = 0x5367674F;
  private static final int CHECKSUM_AT = 22;
  private static final int CHECKSUM_POLYNOMIAL = 0x04C11DB7;
  private static final int WHOLE_SEGMENT = 255;

  /** Where a packet of one stream is longer than this, the file is not sound. */
  private static final int LONGEST_PACKET = 1 << 24;

  private final Path file;
  private final InputStream in;
  private final Deque<byte[]> ready = new ArrayDeque<>();
  private final ByteArrayOutputStream unfinished = new ByteArrayOutputStream();
  private boolean started;
  private int stream;

  OggPackets(Path file) throws IOException {
    this.file = file;
    in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
  }

  /** The next packet's bytes, or an empty array at the end, even one that comes too early. */
  byte[] next() throws IOException {
    while (ready.isEmpty()) {
      if (!readPage()) {
        return new byte[0];
      }
    }
    return ready.remove();
  }

  /** A packet of the header, which must be there. */
  byte[] header() throws IOException {
    byte[] packet = next();
    if (packet.length == 0) {
      throw new RecordingException(file, "breaks off inside its header");
    }
    return packet;
  }

  private boolean readPage() throws IOException {
    byte[] bytes = in.readNBytes(PAGE_HEAD);
    if (bytes.length < PAGE_HEAD) {
      return false;
    }
    ByteBuffer head = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    byte[] segments = in.readNBytes(bytes[PAGE_HEAD - 1] & 0xFF);
    if (head.getInt(0) != PAGE_MARK || segments.length < (bytes[PAGE_HEAD - 1] & 0xFF)) {
      return false;
    }
    byte[] body = in.readNBytes(bodyLength(segments));
    if (body.length < bodyLength(segments)) {
      return false;
    }
    int claimed = head.getInt(CHECKSUM_AT);
    head.putInt(CHECKSUM_AT, 0);
    if (claimed != checksum(checksum(checksum(0, bytes), segments), body)) {
      throw new RecordingException(file, "is damaged: one of its Ogg pages has changed");
    }
    int serial = head.getInt(14);
    if (!started) {
      started = true;
      stream = serial;
    }
    int at = 0;
    for (byte segment : segments) {
      int length = segment & 0xFF;
      if (serial == stream) {
        add(body, at, length);
      }
      at += length;
    }
    return true;
  }

  private static int bodyLength(byte[] segments) {
    int length = 0;
    for (byte segment : segments) {
      length += segment & 0xFF;
    }
    return length;
  }

  /** Goes on with the checksum of RFC 3533 over more bytes. */
  static int checksum(int start, byte[] bytes) {
    int sum = start;
    for (byte value : bytes) {
      sum ^= value << 24;
      for (int bit = 0; bit < 8; bit++) {
        sum = sum << 1 ^ (sum < 0 ? CHECKSUM_POLYNOMIAL : 0);
      }
    }
    return sum;
  }

  private void add(byte[] body, int at, int length) throws IOException {
    unfinished.write(body, at, length);
    if (unfinished.size() > LONGEST_PACKET) {
      throw new RecordingException(file, "is damaged: one of its packets does not end");
    }
    if (length < WHOLE_SEGMENT) {
      if (unfinished.size() > 0) {
        ready.add(unfinished.toByteArray());
      }
      unfinished.reset();
    }
  }

  /** The position that the last page claims for its end, in frames; -1 if there is none. */
  long lastGranule() throws IOException {
    try (RandomAccessFile end = new RandomAccessFile(file.toFile(), "r")) {
      long start = Math.max(0, end.length() - LONGEST_PAGE);
      byte[] bytes = new byte[(int) (end.length() - start)];
      end.seek(start);
      end.readFully(bytes);
      ByteBuffer tail = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
      for (int at = bytes.length - PAGE_HEAD; at >= 0; at--) {
        if (tail.getInt(at) == PAGE_MARK) {
          return tail.getLong(at + 6);
        }
      }
      return -1;
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
