package org.matraloom.wav;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * Reads a WAVE file piece by piece: PCM of 8, 16, 24 or 32 bits or 32-bit float, any rate, up to 64
 * channels, plain or extensible.
 *
 * <p>A file whose samples break off early, or whose length was never filled in, is read as far as
 * it goes. Source of the layout: as in {@link WavWriter}'s header.
 */
public final class WavReader implements AutoCloseable {

  private static final int CHUNK_HEAD = 8;
  private static final int LONGEST_FORMAT = 40;
  private static final int MOST_CHANNELS = 64;

  /** Longer lists of named places are passed over. */
  private static final int LONGEST_CUES = 16 << 20;

  private final Path file;
  private final FileChannel channel;
  private final CueList cues = new CueList();
  private int tag;
  private int channels;
  private int ratePerSecond;
  private int bits;
  private long dataStart = -1;
  private long lengthFrames;
  private long frame;
  private ByteBuffer bytes = ByteBuffer.allocate(0);

  /**
   * Opens a file and reads what lies around its samples.
   *
   * @param file the file
   * @throws IOException if it cannot be read, is no WAVE file, or holds samples of another kind
   */
  public WavReader(Path file) throws IOException {
    this.file = file;
    this.channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      scan();
    } catch (EOFException brokenOff) {
      close();
      throw new IOException(file + " breaks off inside its header", brokenOff);
    } catch (IOException failure) {
      close();
      throw failure;
    }
  }

  /**
   * The sample rate.
   *
   * @return frames a second
   */
  public int ratePerSecond() {
    return ratePerSecond;
  }

  /**
   * The number of channels.
   *
   * @return at least 1
   */
  public int channels() {
    return channels;
  }

  /**
   * The size of a stored sample.
   *
   * @return 8, 16, 24 or 32 bits
   */
  public int bits() {
    return bits;
  }

  /**
   * The length of the file.
   *
   * @return frames
   */
  public long lengthFrames() {
    return lengthFrames;
  }

  /**
   * The named places of the file.
   *
   * @return in the order in which they are stored; an unnamed one has an empty label
   */
  public List<CuePoint> cues() {
    return cues.points();
  }

  /**
   * Reads the next frames.
   *
   * @param block where samples go, interleaved, full scale at 1
   * @param frames how many frames are wanted
   * @return how many were read; fewer than wanted only at the end, 0 after it
   * @throws IOException if the disk fails
   */
  public int read(float[] block, int frames) throws IOException {
    int wanted = (int) Math.min(frames, lengthFrames - frame);
    int length = wanted * channels * bits / 8;
    if (bytes.capacity() < length) {
      bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
    fill(bytes.clear().limit(length), dataStart + frame * channels * bits / 8);
    PcmCodec codec = new PcmCodec(bits);
    for (int i = 0; i < wanted * channels; i++) {
      block[i] = tag == WavHeader.FLOAT ? bytes.getFloat() : codec.decode(nextWhole());
    }
    frame += wanted;
    return wanted;
  }

  private int nextWhole() {
    return switch (bits) {
      case 8 -> (bytes.get() & 0xFF) - 128;
      case 16 -> bytes.getShort();
      case 24 -> (bytes.get() & 0xFF) | (bytes.get() & 0xFF) << 8 | bytes.get() << 16;
      default -> bytes.getInt();
    };
  }

  private void scan() throws IOException {
    ByteBuffer head = take(0, 12);
    if (!id(head).equals("RIFF") || !id(head.position(8)).equals("WAVE")) {
      throw new IOException(file + " is not a WAVE file; give a .wav file");
    }
    long size = channel.size();
    long position = 12;
    while (position + CHUNK_HEAD <= size) {
      ByteBuffer chunk = take(position, CHUNK_HEAD);
      String id = id(chunk);
      long length = Integer.toUnsignedLong(chunk.getInt());
      long start = position + CHUNK_HEAD;
      readChunk(id, start, Math.min(length, size - start));
      position = start + length + (length & 1);
    }
    if (channels == 0 || dataStart < 0) {
      throw new IOException(file + " has no " + (channels == 0 ? "format" : "samples"));
    }
  }

  private void readChunk(String id, long start, long length) throws IOException {
    if (id.equals("fmt ")) {
      readFormat(take(start, (int) Math.min(length, LONGEST_FORMAT)));
    } else if (id.equals("data") && dataStart < 0) {
      if (channels == 0) {
        throw new IOException(file + " has samples before their format");
      }
      dataStart = start;
      lengthFrames = length / (channels * bits / 8);
    } else if (id.equals("cue ") && length <= LONGEST_CUES) {
      cues.readPoints(take(start, (int) length));
    } else if (id.equals("LIST") && length <= LONGEST_CUES) {
      cues.readLabels(take(start, (int) length));
    }
  }

  private void readFormat(ByteBuffer format) throws IOException {
    if (format.remaining() < 16) {
      throw new EOFException("format chunk");
    }
    tag = Short.toUnsignedInt(format.getShort());
    channels = Short.toUnsignedInt(format.getShort());
    ratePerSecond = format.getInt();
    int bytesPerFrame = Short.toUnsignedInt(format.getShort(12));
    if (tag == WavHeader.EXTENSIBLE && format.limit() >= LONGEST_FORMAT) {
      tag = Short.toUnsignedInt(format.getShort(24));
    }
    bits = channels == 0 ? 0 : 8 * bytesPerFrame / channels;
    boolean whole = tag == WavHeader.PCM && bits >= 8 && bits <= 32 && bits % 8 == 0;
    boolean floating = tag == WavHeader.FLOAT && bits == 32;
    boolean sized = bytesPerFrame == channels * bits / 8 && channels <= MOST_CHANNELS;
    if (!(whole || floating) || !sized || ratePerSecond <= 0) {
      throw new IOException(
          file
              + " holds samples of a kind that is not read here (format "
              + tag
              + ", "
              + format.getShort(14)
              + " bits, "
              + channels
              + " channels); save it as 16- or 24-bit PCM");
    }
  }

  private ByteBuffer take(long position, int length) throws IOException {
    ByteBuffer taken = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    fill(taken, position);
    return taken;
  }

  private void fill(ByteBuffer target, long position) throws IOException {
    long at = position;
    while (target.hasRemaining()) {
      int count = channel.read(target, at);
      if (count < 0) {
        throw new EOFException(file + " ended early");
      }
      at += count;
    }
    target.flip();
  }

  private static String id(ByteBuffer bytes) {
    byte[] id = new byte[4];
    bytes.get(id);
    return new String(id, StandardCharsets.ISO_8859_1);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
