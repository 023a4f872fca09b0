package org.matraloom.recording;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.matraloom.wav.SampleKind;

/** Uncompressed samples behind a header: what WAVE and AIFF files share. */
abstract class PcmRecording implements Recording {

  private static final int MOST_CHANNELS = 64;

  private final Path file;
  private final FileChannel channel;
  private final ByteOrder headerOrder;
  private ByteOrder sampleOrder;
  private SampleKind kind;
  private int channels;
  private int ratePerSecond;
  private long dataStart = -1;
  private long bytesLeft;
  private ByteBuffer bytes = ByteBuffer.allocate(0);

  PcmRecording(Path file, ByteOrder headerOrder) throws IOException {
    this.file = file;
    this.headerOrder = headerOrder;
    this.channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      readHeader();
      if (kind == null || dataStart < 0) {
        throw fault("has no " + (kind == null ? "format" : "samples") + " in it; is it cut short?");
      }
      channel.position(dataStart);
    } catch (EOFException brokenOff) {
      channel.close();
      throw fault("breaks off inside its header");
    } catch (IOException failure) {
      channel.close();
      throw failure;
    }
  }

  /** Reads the chunks of the file; calls {@link #format} and {@link #data}. */
  abstract void readHeader() throws IOException;

  final void format(SampleKind storedAs, ByteOrder order, int channelCount, double rate)
      throws RecordingException {
    if (channelCount < 1 || channelCount > MOST_CHANNELS) {
      throw fault("has " + channelCount + " channels; 1 to " + MOST_CHANNELS + " are read");
    }
    if (!(rate >= SampleRates.LOWEST && rate <= SampleRates.HIGHEST)) {
      throw fault(SampleRates.refusal(rate));
    }
    kind = storedAs;
    sampleOrder = order;
    channels = channelCount;
    ratePerSecond = (int) Math.round(rate);
  }

  final void data(long start, long lengthBytes) {
    if (dataStart < 0) {
      dataStart = start;
      bytesLeft = lengthBytes;
    }
  }

  final FileChannel channel() {
    return channel;
  }

  final long sizeBytes() throws IOException {
    return channel.size();
  }

  final RecordingException fault(String fault) {
    return new RecordingException(file, fault);
  }

  /** Bytes of the header, in its byte order. */
  final ByteBuffer take(long position, int length) throws IOException {
    ByteBuffer taken = ByteBuffer.allocate(length).order(headerOrder);
    while (taken.hasRemaining()) {
      if (channel.read(taken, position + taken.position()) < 0) {
        throw new EOFException();
      }
    }
    return taken.flip();
  }

  /** The next four bytes as a chunk's name. */
  static String name(ByteBuffer from) {
    byte[] name = new byte[4];
    from.get(name);
    return new String(name, StandardCharsets.ISO_8859_1);
  }

  @Override
  public final int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public final int read(float[] block) throws IOException {
    int frameBytes = kind.bytes() * channels;
    int wanted = (int) Math.min(block.length, bytesLeft / frameBytes) * frameBytes;
    if (bytes.capacity() < wanted) {
      bytes = ByteBuffer.allocate(block.length * frameBytes);
    }
    bytes.clear().limit(wanted);
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
      continue;
    }
    bytes.flip().order(sampleOrder);
    int frames = bytes.limit() / frameBytes;
    for (int i = 0; i < frames; i++) {
      float sum = 0;
      for (int c = 0; c < channels; c++) {
        sum += kind.take(bytes);
      }
      block[i] = sum / channels;
    }
    bytesLeft -= (long) frames * frameBytes;
    return frames;
  }

  @Override
  public final void close() throws IOException {
    channel.close();
  }
}
