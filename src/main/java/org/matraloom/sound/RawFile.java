package org.matraloom.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Samples kept on disk between two passes over them; gone when it is closed. */
final class RawFile implements AutoCloseable {

  private static final int BYTES = Float.BYTES;

  private final Path file;
  private final FileChannel channel;
  private ByteBuffer bytes = ByteBuffer.allocate(0);

  /** Opens it beside the file for which it is made, under a name that a later run may delete. */
  RawFile(Path target) throws IOException {
    String name = "." + target.getFileName() + "." + Long.toHexString(System.nanoTime());
    file = target.resolveSibling(name + ".raw.part");
    channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  void append(float[] samples, int count) throws IOException {
    ByteBuffer buffer = buffer(count);
    buffer.asFloatBuffer().put(samples, 0, count);
    while (buffer.hasRemaining()) {
      channel.write(buffer);
    }
  }

  /** Begins to read from the first sample. */
  void rewind() throws IOException {
    channel.position(0);
  }

  /** Reads the next samples; fewer than wanted only at the end. */
  int read(float[] samples, int wanted) throws IOException {
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
