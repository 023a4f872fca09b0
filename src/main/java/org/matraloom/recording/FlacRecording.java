package org.matraloom.recording;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.kc7bfi.jflac.ChannelData;
import org.kc7bfi.jflac.FLACDecoder;
import org.kc7bfi.jflac.frame.Frame;
import org.kc7bfi.jflac.metadata.StreamInfo;

/** A FLAC file: lossless, no delay. */
final class FlacRecording extends CodecRecording {

  private static final int MARK_BYTES = 4;
  private static final int BLOCK_HEAD_BYTES = 4;
  private static final int STREAM_INFO_BYTES = 34;
  private static final int LAST_BLOCK = 0x80;

  private final InputStream in;
  private final FLACDecoder decoder;
  private final StreamInfo info;

  FlacRecording(Path file) throws IOException {
    super(file);
    in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    try {
      InputStream start = new ByteArrayInputStream(streamInfo());
      decoder = new FLACDecoder(new SequenceInputStream(start, in));
      decoder.readMetadata();
      info = decoder.getStreamInfo();
      if (info == null) {
        throw fault("has no FLAC stream header");
      }
      requireRate(info.getSampleRate());
    } catch (RecordingException known) {
      in.close();
      throw known;
    } catch (IOException | RuntimeException broken) {
      in.close();
      throw new RecordingException(file, "breaks off or is damaged in its FLAC header", broken);
    }
  }

  /**
   * Passes over the tags, pictures and seek tables, which may be large or damaged, and gives back a
   * header with nothing in it but the description of the stream (RFC 9639, section 8).
   */
  private byte[] streamInfo() throws IOException {
    ByteBuffer header = ByteBuffer.allocate(MARK_BYTES + BLOCK_HEAD_BYTES + STREAM_INFO_BYTES);
    header.put(in.readNBytes(MARK_BYTES));
    boolean last = false;
    while (!last) {
      byte[] head = in.readNBytes(BLOCK_HEAD_BYTES);
      if (head.length < BLOCK_HEAD_BYTES) {
        throw new EOFException();
      }
      last = (head[0] & LAST_BLOCK) != 0;
      int length = (head[1] & 0xFF) << 16 | (head[2] & 0xFF) << 8 | head[3] & 0xFF;
      if (header.position() == MARK_BYTES) {
        head[0] |= (byte) LAST_BLOCK;
        header.put(head).put(in.readNBytes(Math.min(length, STREAM_INFO_BYTES)));
      } else {
        in.skipNBytes(length);
      }
    }
    return header.array();
  }

  @Override
  public int ratePerSecond() {
    return info.getSampleRate();
  }

  @Override
  boolean decodePacket() throws IOException {
    Frame frame;
    try {
      frame = decoder.readNextFrame();
    } catch (EOFException brokenOff) {
      return false;
    } catch (IOException broken) {
      throw damage(broken);
    }
    if (frame == null) {
      return false;
    }
    ChannelData[] data = decoder.getChannelData();
    float[][] channels = new float[frame.header.channels][frame.header.blockSize];
    for (int c = 0; c < channels.length; c++) {
      int[] whole = data[c].getOutput();
      for (int i = 0; i < channels[c].length; i++) {
        channels[c][i] = whole[i];
      }
    }
    float scale = 1f / (1L << frame.header.bitsPerSample - 1);
    putPlanar(channels, new int[channels.length], frame.header.blockSize, scale);
    return true;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
