package org.matraloom.host;

/**
 * Bytes on their way from one thread to another: one thread writes, one reads, neither ever waits
 * and nothing is allocated.
 */
final class PcmRing {

  private final byte[] bytes;
  private volatile long written;
  private volatile long read;

  PcmRing(int capacityBytes) {
    this.bytes = new byte[capacityBytes];
  }

  int capacity() {
    return bytes.length;
  }

  /** How many bytes wait to be read. */
  int filled() {
    return (int) (written - read);
  }

  /** Writes as much as there is room for; for the writing thread. */
  int write(byte[] from, int offset, int length) {
    long at = written;
    int count = Math.min(length, bytes.length - (int) (at - read));
    int start = (int) (at % bytes.length);
    int head = Math.min(count, bytes.length - start);
    System.arraycopy(from, offset, bytes, start, head);
    System.arraycopy(from, offset + head, bytes, 0, count - head);
    written = at + count;
    return count;
  }

  /** Reads as much as there is; for the reading thread. */
  int read(byte[] to, int offset, int length) {
    long at = read;
    int count = Math.min(length, (int) (written - at));
    int start = (int) (at % bytes.length);
    int head = Math.min(count, bytes.length - start);
    System.arraycopy(bytes, start, to, offset, head);
    System.arraycopy(bytes, 0, to, offset + head, count - head);
    read = at + count;
    return count;
  }

  /** Throws away what waits; for the reading thread. */
  void clear() {
    read = written;
  }
}
