package org.matraloom.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavHeader;
import org.matraloom.wav.WavWriter;

/**
 * Writes a take while it is recorded, under its own name and always readable: the sizes in the
 * header are put right after every write, so that a program that is killed leaves all it had
 * written.
 *
 * <p>A take is never overwritten; a file of that name is an error. One thread writes; the length
 * may be asked from any.
 */
public final class TakeWriter implements AutoCloseable {

  /** Where the size of the whole file stands. */
  private static final long RIFF_SIZE = 4;

  private final PcmFormat format;
  private final FileChannel channel;
  private TakeNote note;
  private int headerBytes;
  private volatile long dataBytes;

  /**
   * Begins a take.
   *
   * @param target its file, which must not exist
   * @param format how samples are written
   * @param note what it belongs to
   * @throws IOException if there is such a file already, or it cannot be written
   */
  public TakeWriter(Path target, PcmFormat format, TakeNote note) throws IOException {
    this.format = format;
    this.note = note;
    try {
      this.channel =
          FileChannel.open(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException exists) {
      throw new IOException(
          target + " exists already, and a take is never overwritten; give another name", exists);
    }
    writeHeader();
  }

  /**
   * Writes frames.
   *
   * @param pcm whole frames, encoded in the format of the take
   * @param length how many bytes
   * @throws IOException if the disk fails or the take has reached the 4 GB that a WAVE file holds
   */
  public void write(byte[] pcm, int length) throws IOException {
    if (channel.size() + length > WavWriter.MOST_BYTES) {
      throw new IOException("the take has reached the 4 GB that a WAVE file holds; it is kept");
    }
    writeAll(ByteBuffer.wrap(pcm, 0, length), headerBytes + dataBytes);
    dataBytes += length;
    writeSize(headerBytes - 8 + dataBytes, RIFF_SIZE);
    writeSize(dataBytes, headerBytes - 4L);
  }

  private void writeSize(long bytes, long position) throws IOException {
    ByteBuffer size = ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN);
    writeAll(size.putInt((int) bytes).flip(), position);
  }

  /**
   * Puts the place of the guide into the file.
   *
   * @param startFrame the frame of the take at which the timeline's origin is heard
   * @throws IOException if the disk fails
   */
  public void startsAt(long startFrame) throws IOException {
    note = note.startingAt(startFrame);
    writeHeader();
  }

  /**
   * Puts the silences of the guide into the file.
   *
   * @param gaps those that the device has put in so far
   * @throws IOException if the disk fails
   */
  public void interruptedBy(List<GuideGap> gaps) throws IOException {
    note = note.interrupted(gaps);
    writeHeader();
  }

  /**
   * How long the take is so far.
   *
   * @return frames
   */
  public long frames() {
    return dataBytes / format.bytesPerFrame();
  }

  private void writeHeader() throws IOException {
    byte[] chunks = TakeChunks.of(note, format.ratePerSecond());
    ByteBuffer header = WavHeader.of(format, chunks, dataBytes, 0);
    headerBytes = header.remaining();
    writeAll(header, 0);
  }

  private void writeAll(ByteBuffer bytes, long position) throws IOException {
    long at = position;
    while (bytes.hasRemaining()) {
      at += channel.write(bytes, at);
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      writeAll(ByteBuffer.allocate((int) (dataBytes & 1)), headerBytes + dataBytes);
      channel.force(true);
    }
  }
}
