package org.matraloom.take;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.kc7bfi.jflac.ChannelData;
import org.kc7bfi.jflac.FLACDecoder;
import org.kc7bfi.jflac.frame.Frame;
import org.kc7bfi.jflac.metadata.StreamInfo;

/** A FLAC file: lossless, no delay. */
final class FlacRecording extends CodecRecording {

  private final InputStream in;
  private final FLACDecoder decoder;
  private final StreamInfo info;

  FlacRecording(Path file) throws IOException {
    super(file);
    in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    decoder = new FLACDecoder(in);
    try {
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
