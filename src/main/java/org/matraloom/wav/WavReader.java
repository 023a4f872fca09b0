package org.matraloom.wav;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * Reads a WAVE file piece by piece, every channel for itself: up to 64 of them, any rate, every
 * kind of samples that {@link WavLayout} knows.
 */
public final class WavReader implements AutoCloseable {

  private static final int MOST_CHANNELS = 64;

  private final FileChannel channel;
  private final WavLayout layout;
  private final long lengthFrames;
  private long frame;
  private ByteBuffer bytes = ByteBuffer.allocate(0);

  /**
   * Opens a file and reads what lies around its samples.
   *
   * @param file the file
   * @throws IOException if it cannot be read, is no WAVE file, or holds samples of another kind
   */
  public WavReader(Path file) throws IOException {
    this.channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      this.layout = WavLayout.of(channel);
      if (layout.channels() < 1
          || layout.channels() > MOST_CHANNELS
          || layout.ratePerSecond() < 1) {
        throw new WavFault(
            "has "
                + layout.channels()
                + " channels of "
                + layout.ratePerSecond()
                + " frames a second");
      }
      this.lengthFrames = layout.dataBytes() / frameBytes();
    } catch (EOFException brokenOff) {
      close();
      throw new IOException(file + " breaks off inside its header", brokenOff);
    } catch (WavFault wrong) {
      close();
      throw new IOException(file + " " + wrong.getMessage(), wrong);
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
    return (int) layout.ratePerSecond();
  }

  /**
   * The number of channels.
   *
   * @return at least 1
   */
  public int channels() {
    return layout.channels();
  }

  /**
   * The size of a stored sample.
   *
   * @return 8, 16, 24, 32 or 64 bits
   */
  public int bits() {
    return 8 * layout.kind().bytes();
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
    return layout.cues();
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
    int length = wanted * frameBytes();
    if (bytes.capacity() < length) {
      bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
    fill(bytes.clear().limit(length), layout.dataStart() + frame * frameBytes());
    for (int i = 0; i < wanted * channels(); i++) {
      block[i] = layout.kind().take(bytes);
    }
    frame += wanted;
    return wanted;
  }

  private int frameBytes() {
    return layout.channels() * layout.kind().bytes();
  }

  private void fill(ByteBuffer target, long position) throws IOException {
    while (target.hasRemaining()) {
      if (channel.read(target, position + target.position()) < 0) {
        throw new EOFException("the file became shorter while it was read");
      }
    }
    target.flip();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
