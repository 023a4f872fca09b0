package org.matraloom.recording;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javazoom.jl.decoder.Bitstream;
import javazoom.jl.decoder.BitstreamException;
import javazoom.jl.decoder.Decoder;
import javazoom.jl.decoder.Header;
import javazoom.jl.decoder.JavaLayerException;
import javazoom.jl.decoder.SampleBuffer;

/** An MP3 file, with the delay of its encoder and of the decoder taken off. */
final class Mp3Recording extends CodecRecording {

  private static final int LAYER = 3;

  private final InputStream in;
  private final Bitstream stream;
  private final Decoder decoder = new Decoder();
  private final int ratePerSecond;
  private Header header;

  Mp3Recording(Path file) throws IOException {
    super(file);
    in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    stream = new Bitstream(in);
    try {
      Mp3Delay delay = Mp3Delay.of(file);
      header = stream.readFrame();
      if (header == null || header.layer() != LAYER) {
        throw fault("has no MPEG layer III frame in it");
      }
      ratePerSecond = header.frequency();
      requireRate(ratePerSecond);
      if (delay.tagFrame()) {
        stream.closeFrame();
        header = stream.readFrame();
      }
      keep(delay.skipFrames(), delay.lengthFrames());
    } catch (BitstreamException broken) {
      in.close();
      throw new RecordingException(file, "has no whole MPEG layer III frame in it", broken);
    } catch (IOException failure) {
      in.close();
      throw failure;
    }
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  boolean decodePacket() throws IOException {
    try {
      if (header == null) {
        return false;
      }
      SampleBuffer decoded = (SampleBuffer) decoder.decodeFrame(header, stream);
      int channels = decoded.getChannelCount();
      putInterleaved(decoded.getBuffer(), decoded.getBufferLength() / channels, channels);
      stream.closeFrame();
      header = stream.readFrame();
      return true;
    } catch (JavaLayerException broken) {
      throw damage(broken);
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
