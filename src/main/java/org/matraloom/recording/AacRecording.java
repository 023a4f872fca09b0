package org.matraloom.recording;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import net.sourceforge.jaad.aac.Decoder;
import net.sourceforge.jaad.mp4.MP4Container;
import net.sourceforge.jaad.mp4.api.AudioTrack;
import net.sourceforge.jaad.mp4.api.Frame;
import net.sourceforge.jaad.mp4.api.Track;
import net.sourceforge.jaad.mp4.api.Type;

/** AAC in an MP4 file (m4a, mp4, 3gp), with what its edit list leaves out taken off. */
final class AacRecording extends CodecRecording {

  /**
   * One packet in so many may fail and is then replaced by the one before it: the decoder fails on
   * the loudest values that the format allows.
   */
  private static final int MOST_CONCEALED = 20;

  /** The decoder logs every fault with its trace; here a fault is a message of our own. */
  private static final Logger LOG = Logger.getLogger("jaad.aac.Decoder");

  /**
   * Its parts log under one of two roots, some at a level of their own; kept here, for a logger
   * that nobody keeps is made anew.
   */
  private static final List<Logger> LOGS =
      List.of(Logger.getLogger("net.sourceforge.jaad"), Logger.getLogger("jaad"));

  static {
    LOG.setFilter(message -> false);
    LOGS.forEach(log -> log.setLevel(Level.OFF));
    LOGS.forEach(log -> log.setUseParentHandlers(false));
  }

  private final RandomAccessFile in;
  private final Track track;
  private final Decoder decoder;
  private final int ratePerSecond;
  private List<float[]> last = List.of();
  private int packets;
  private int concealed;
  private long heardPackets;
  private Exception lastFault = new IOException("a packet without sound");

  AacRecording(Path file) throws IOException {
    super(file);
    in = new RandomAccessFile(file.toFile(), "r");
    try {
      Mp4Boxes.require(file, in);
      MP4Container container = new MP4Container(new Mp4Bytes(in));
      if (container.getMovie() == null) {
        throw fault("has no sound track in it; is it cut short?");
      }
      List<Track> tracks = container.getMovie().getTracks(Type.AUDIO);
      if (tracks.isEmpty()) {
        throw fault("has no sound track in it");
      }
      track = tracks.get(0);
      if (track.getCodec() != AudioTrack.AudioCodec.AAC) {
        throw fault(
            "holds sound of another codec than AAC ("
                + track.getCodec()
                + "; Apple Lossless is one); save it as WAV or FLAC");
      }
      if (!track.hasMoreFrames()) {
        throw fault("is a fragmented MP4 file, which is not read here; save it as WAV or FLAC");
      }
      decoder = Decoder.create(track.getDecoderSpecificInfo().getData());
      ratePerSecond = Math.round(decoder.getAudioFormat().getSampleRate());
      requireRate(ratePerSecond);
      EditList edits = EditList.of(container.getBoxes(), ratePerSecond);
      keep(edits.skipFrames(), edits.lengthFrames());
    } catch (RecordingException known) {
      in.close();
      throw known;
    } catch (IOException | RuntimeException broken) {
      in.close();
      throw new RecordingException(
          file, "is damaged, or an MP4 file of a kind that is not read here", broken);
    }
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  boolean decodePacket() throws IOException {
    Frame frame;
    try {
      frame = track.readNextFrame();
    } catch (EOFException brokenOff) {
      return false;
    }
    if (frame == null) {
      return false;
    }
    packets++;
    long before = heardPackets;
    try {
      decoder.decodeFrame(frame.getData(), (channels, frames, rate) -> put(channels, frames));
    } catch (RuntimeException broken) {
      lastFault = broken;
    }
    if (heardPackets == before) {
      conceal();
    }
    return true;
  }

  private void conceal() throws IOException {
    if (++concealed > 1 + packets / MOST_CONCEALED) {
      throw damage(lastFault);
    }
    put(last, last.isEmpty() ? 0 : last.get(0).length);
  }

  private void put(List<float[]> channels, int frames) {
    last = List.copyOf(channels);
    heardPackets++;
    putPlanar(channels.toArray(new float[0][]), new int[channels.size()], frames, 1f / 32_768);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
