package org.matraloom.recording;

import com.jcraft.jogg.Packet;
import com.jcraft.jorbis.Block;
import com.jcraft.jorbis.Comment;
import com.jcraft.jorbis.DspState;
import com.jcraft.jorbis.Info;
import java.io.IOException;
import java.nio.file.Path;

/** An Ogg Vorbis file (Xiph.Org, "Vorbis I specification"). */
final class VorbisRecording extends CodecRecording {

  private static final int HEADER_PACKETS = 3;

  private final OggPackets packets;
  private final Info info = new Info();
  private final DspState state = new DspState();
  private final Block block = new Block(state);
  private long packetNumber;

  VorbisRecording(Path file) throws IOException {
    super(file);
    packets = new OggPackets(file);
    try {
      readHeader();
      requireRate(info.rate);
      state.synthesis_init(info);
      block.init(state);
      long last = packets.lastGranule();
      keep(0, last > 0 ? last : Long.MAX_VALUE);
    } catch (RecordingException known) {
      packets.close();
      throw known;
    } catch (IOException | RuntimeException broken) {
      packets.close();
      throw new RecordingException(file, "is damaged in its Vorbis header", broken);
    }
  }

  private void readHeader() throws IOException {
    info.init();
    Comment comment = new Comment();
    comment.init();
    for (int i = 0; i < HEADER_PACKETS; i++) {
      if (info.synthesis_headerin(comment, packet(packets.header())) < 0) {
        throw fault("is damaged in its Vorbis header");
      }
    }
  }

  private Packet packet(byte[] bytes) {
    Packet packet = new Packet();
    packet.packet_base = bytes;
    packet.bytes = bytes.length;
    packet.b_o_s = packetNumber == 0 ? 1 : 0;
    packet.granulepos = -1;
    packet.packetno = packetNumber++;
    return packet;
  }

  @Override
  public int ratePerSecond() {
    return info.rate;
  }

  @Override
  boolean decodePacket() throws IOException {
    byte[] bytes = packets.next();
    if (bytes.length == 0) {
      return false;
    }
    if (block.synthesis(packet(bytes)) == 0) {
      state.synthesis_blockin(block);
    }
    float[][][] pcm = new float[1][][];
    int[] starts = new int[info.channels];
    int frames = state.synthesis_pcmout(pcm, starts);
    while (frames > 0) {
      putPlanar(pcm[0], starts, frames, 1);
      state.synthesis_read(frames);
      frames = state.synthesis_pcmout(pcm, starts);
    }
    return true;
  }

  @Override
  public void close() throws IOException {
    packets.close();
  }
}
