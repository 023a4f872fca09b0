package org.matraloom.live;

/**
 * Bytes on their way from one thread to another: one thread writes, one reads, neither ever waits
 * and nothing is allocated.
 */
public final class PcmRing {

  private final byte[] bytes;
  private volatile long written;
  private volatile long read;

  /**
   * Makes an empty ring.
   *
   * @param capacityBytes how many bytes it holds
   */
  public PcmRing(int capacityBytes) {
    this.bytes = new byte[capacityBytes];
  }

  /**
   * How many bytes it holds.
   *
   * @return bytes
   */
  public int capacity() {
    return bytes.length;
  }

  /** How many bytes wait to be read. */
  int filled() {
    return (int) (written - read);
  }

  /**
   * Writes as much as there is room for; for the writing thread.
   *
   * @param from where the bytes are
   * @param offset the first of them
   * @param length how many there are
   * @return how many were written, 0 if there is no room
   */
  public int write(byte[] from, int offset, int length) {
    long at = written;
    int count = Math.min(length, bytes.length - (int) (at - read));
    int start = (int) (at % bytes.length);
    int head = Math.min(count, bytes.length - start);
    System.arraycopy(from, offset, bytes, start, head);
    System.arraycopy(from, offset + head, bytes, 0, count - head);
    written = at + count;
    return count;
  }

  /**
   * Reads as much as there is; for the reading thread.
   *
   * @param to where the bytes go
   * @param offset the place of the first
   * @param length how many are wanted
   * @return how many were read, 0 if there are none
   */
  public int read(byte[] to, int offset, int length) {
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
