package org.matraloom.recording;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import net.sourceforge.jaad.mp4.MP4InputStream;

/**
 * An MP4 file as the decoder reads it. To skip past the end is an end, as to read there is: the
 * decoder goes on skipping until it has skipped as much as a box claims, and would never be done.
 */
final class Mp4Bytes extends MP4InputStream {

  private final RandomAccessFile in;

  Mp4Bytes(RandomAccessFile in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    return in.read();
  }

  @Override
  public int read(byte[] bytes, int from, int count) throws IOException {
    return in.read(bytes, from, count);
  }

  /**
   * Two gigabytes and more too, which the decoder's own way of skipping takes for less than none.
   */
  @Override
  public void skipBytes(long count) throws IOException {
    skip(count);
  }

  @Override
  public long skip(long count) throws IOException {
    if (count <= 0) {
      return 0;
    }
    if (count > in.length() - in.getFilePointer()) {
      throw new EOFException("skipped past the end");
    }
    in.seek(in.getFilePointer() + count);
    return count;
  }

  @Override
  public int available() throws IOException {
    return (int) Math.min(Integer.MAX_VALUE, in.length() - in.getFilePointer());
  }

  @Override
  public long getOffset() throws IOException {
    return in.getFilePointer();
  }

  @Override
  public void seek(long place) throws IOException {
    in.seek(place);
  }

  @Override
  public boolean seekSupported() {
    return true;
  }

  @Override
  public boolean hasLeft() throws IOException {
    return in.getFilePointer() < in.length() - 1;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
