package org.matraloom.recording;

import io.github.jaredmdobson.concentus.OpusDecoder;
import io.github.jaredmdobson.concentus.OpusException;
import java.io.IOException;
import java.nio.file.Path;

/** An Ogg Opus file of one or two channels, decoded at 48 kHz (RFC 7845). */
final class OpusRecording extends CodecRecording {

  private static final int RATE = 48_000;
  private static final int LONGEST_PACKET_FRAMES = 5_760;

  private final OggPackets packets;
  private final OpusDecoder decoder;
  private final int channels;
  private final short[] decoded;

  OpusRecording(Path file) throws IOException {
    super(file);
    packets = new OggPackets(file);
    try {
      byte[] head = packets.header();
      if (head.length < 19) {
        throw fault("breaks off inside its header");
      }
      channels = head[9];
      if (channels < 1 || channels > 2) {
        throw fault("has " + channels + " channels; Opus of 1 or 2 is read");
      }
      packets.header();
      int preSkip = head[10] & 0xFF | (head[11] & 0xFF) << 8;
      long last = packets.lastGranule();
      keep(preSkip, last > preSkip ? last - preSkip : Long.MAX_VALUE);
      decoder = new OpusDecoder(RATE, channels);
      decoded = new short[LONGEST_PACKET_FRAMES * channels];
    } catch (OpusException broken) {
      packets.close();
      throw new RecordingException(file, "is damaged in its Opus header", broken);
    } catch (IOException failure) {
      packets.close();
      throw failure;
    }
  }

  @Override
  public int ratePerSecond() {
    return RATE;
  }

  @Override
  boolean decodePacket() throws IOException {
    byte[] packet = packets.next();
    if (packet.length == 0) {
      return false;
    }
    try {
      int frames =
          decoder.decode(packet, 0, packet.length, decoded, 0, LONGEST_PACKET_FRAMES, false);
      putInterleaved(decoded, frames, channels);
      return true;
    } catch (OpusException broken) {
      throw damage(broken);
    }
  }

  @Override
  public void close() throws IOException {
    packets.close();
  }
}
