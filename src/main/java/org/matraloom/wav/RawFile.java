package org.matraloom.wav;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Samples kept on disk between two passes over them; gone when it is closed. */
public final class RawFile implements AutoCloseable {

  private static final int BYTES = Float.BYTES;

  private final Path file;
  private final FileChannel channel;
  private ByteBuffer bytes = ByteBuffer.allocate(0);

  /**
   * Opens it beside the file for which it is made, under a name that a later run may delete.
   *
   * @param target the file for which it is made
   * @throws IOException if it cannot be made
   */
  public RawFile(Path target) throws IOException {
    String name = "." + target.getFileName() + "." + Long.toHexString(System.nanoTime());
    file = target.resolveSibling(name + ".raw.part");
    LeftOvers.removeBeside(target);
    channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
    file.toFile().deleteOnExit();
  }

  /**
   * Writes samples after those that are there.
   *
   * @param samples full scale at 1.0
   * @param count how many of them
   * @throws IOException if it cannot be written
   */
  public void append(float[] samples, int count) throws IOException {
    ByteBuffer buffer = buffer(count);
    buffer.asFloatBuffer().put(samples, 0, count);
    while (buffer.hasRemaining()) {
      channel.write(buffer);
    }
  }

  /** Begins to read from the first sample. */
  public void rewind() throws IOException {
    channel.position(0);
  }

  /**
   * Reads the next samples; fewer than wanted only at the end.
   *
   * @param samples where they go
   * @param wanted how many are wanted
   * @return how many were read
   * @throws IOException if it cannot be read
   */
  public int read(float[] samples, int wanted) throws IOException {
    ByteBuffer buffer = buffer(wanted);
    while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
      continue;
    }
    int count = buffer.position() / BYTES;
    buffer.flip();
    buffer.asFloatBuffer().get(samples, 0, count);
    return count;
  }

  private ByteBuffer buffer(int samples) {
    if (bytes.capacity() < samples * BYTES) {
      bytes = ByteBuffer.allocate(samples * BYTES).order(ByteOrder.LITTLE_ENDIAN);
    }
    return bytes.clear().limit(samples * BYTES);
  }

  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(file);
  }
}
