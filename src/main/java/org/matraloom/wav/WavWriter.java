package org.matraloom.wav;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.Channels;
import java.nio.file.Path;
import java.util.Map;

/**
 * Writes a WAVE file piece by piece, with named places at its end.
 *
 * <p>Use in a try statement: the file appears under its name only when {@link #finish()} has run;
 * closed before that, nothing is left behind and an older file of that name stays as it was.
 */
public final class WavWriter implements AutoCloseable {

  /** The most bytes a RIFF file can hold: its size field has 32 bits and leaves out 8 bytes. */
  public static final long MOST_BYTES = 0xFFFF_FFFFL + 8;

  private final PcmFormat format;
  private final PcmCodec codec;
  private final long mostFrames;
  private final CueChunks cues;
  private final InfoChunk info;
  private final PartFile file;
  private byte[] encoded = new byte[0];
  private short[] shorts = new short[0];
  private ByteBuffer bytes = ByteBuffer.allocate(0);
  private long frames;

  /**
   * Opens a file.
   *
   * @param target where it will be; its folder must exist
   * @param format how samples are written
   * @param mostFrames how many frames will be written at most
   * @param cues named places in order, read several times
   * @throws IOException if so many frames do not fit a WAVE file, or the folder cannot be written
   */
  public WavWriter(Path target, PcmFormat format, long mostFrames, Iterable<CuePoint> cues)
      throws IOException {
    this(target, format, mostFrames, cues, Map.of());
  }

  /**
   * Opens a file that says what it holds.
   *
   * @param target where it will be; its folder must exist
   * @param format how samples are written
   * @param mostFrames how many frames will be written at most
   * @param cues named places in order, read several times
   * @param info texts by RIFF name, in order, such as INAM for the title
   * @throws IOException if so many frames do not fit a WAVE file, or the folder cannot be written
   */
  public WavWriter(
      Path target,
      PcmFormat format,
      long mostFrames,
      Iterable<CuePoint> cues,
      Map<String, String> info)
      throws IOException {
    this.info = new InfoChunk(info);
    this.format = format;
    this.codec = new PcmCodec(format.bits());
    this.mostFrames = mostFrames;
    this.cues = new CueChunks(cues);
    requireFits(target);
    this.file = new PartFile(target);
    try {
      writeAll(WavHeader.of(format, 0, 0));
    } catch (IOException failure) {
      close();
      throw failure;
    }
  }

  private void requireFits(Path target) throws IOException {
    long room = MOST_BYTES - WavHeader.length(format) - endLength() - 1;
    long fit = room / format.bytesPerFrame();
    if (mostFrames > fit) {
      throw new IOException(
          target
              + " would be too long: a WAVE file holds 4 GB, which is "
              + fit / format.ratePerSecond() / 60
              + " minutes at this rate and sample size, and this is "
              + mostFrames / format.ratePerSecond() / 60
              + " minutes; render fewer rounds, or take mono, 16 bits or a lower rate");
    }
  }

  /**
   * Writes frames.
   *
   * @param samples interleaved, full scale at 1; what lies beyond is clipped
   * @param count how many frames
   * @throws IOException if the disk fails
   * @throws IllegalStateException if there are more frames than were announced
   */
  public void write(float[] samples, int count) throws IOException {
    if (frames + count > mostFrames) {
      throw new IllegalStateException("more than the " + mostFrames + " frames announced");
    }
    int length = count * format.bytesPerFrame();
    if (bytes.capacity() < length) {
      bytes = ByteBuffer.allocateDirect(length).order(ByteOrder.LITTLE_ENDIAN);
      encoded = new byte[length];
      shorts = new short[length / Short.BYTES];
    }
    bytes.clear().limit(length);
    if (format.bits() == Short.SIZE) {
      codec.encode(samples, count * format.channels(), shorts);
      bytes.asShortBuffer().put(shorts, 0, count * format.channels());
    } else {
      codec.encode(samples, count * format.channels(), encoded);
      bytes.put(encoded, 0, length).flip();
    }
    writeAll(bytes);
    frames += count;
  }

  /**
   * Completes the file and gives it its name.
   *
   * @throws IOException if the disk fails
   */
  public void finish() throws IOException {
    long dataBytes = frames * format.bytesPerFrame();
    writeAll(ByteBuffer.allocate((int) (dataBytes & 1)));
    OutputStream end = new BufferedOutputStream(Channels.newOutputStream(file.channel()));
    cues.writeTo(end);
    info.writeTo(end);
    end.flush();
    file.channel().position(0);
    writeAll(WavHeader.of(format, dataBytes, endLength()));
    file.finish();
  }

  /** What comes after the samples. */
  private long endLength() {
    return cues.length() + info.length();
  }

  private void writeAll(ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      file.channel().write(bytes);
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
