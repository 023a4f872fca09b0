package org.matraloom.live;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.sound.Mix;
import org.matraloom.time.Tempo;
import org.matraloom.wav.PcmCodec;
import org.matraloom.wav.PcmFormat;

/**
 * The rendering thread's work: keeps the ring filled some way ahead of the device.
 *
 * <p>Frames are counted as the device counts them, from when it was opened.
 */
final class RenderAhead {

  private static final int FIRST_AHEAD_MS = 100;

  /** The most that is ever rendered ahead, in milliseconds. */
  static final int MOST_AHEAD_MS = 1000;

  /** Devices may swallow the first few milliseconds, so these are silent. */
  private static final int QUIET_MS = 20;

  private static final int WARM_UP_SECONDS = 2;
  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(1);

  private final LivePiece piece;
  private final Optional<Fade> fade;
  private final PcmRing ring;
  private final AudioPump pump;
  private final PcmCodec codec;
  private final PieceSections sections;
  private final float[] block;
  private final byte[] encoded;
  private final byte[] silence;
  private final int blockFrames;

  private Optional<LiveStream> stream = Optional.empty();
  private Optional<PieceSection> loop = Optional.empty();
  private long nextFrame;
  private int underrunsMet;

  private volatile long startFrame;
  private volatile int aheadBytes;
  private volatile Optional<LiveClock> liveClock = Optional.empty();

  RenderAhead(LivePiece piece, Optional<Fade> fade, PcmRing ring, AudioPump pump) {
    PcmFormat format = piece.format();
    this.piece = piece;
    this.fade = fade;
    this.ring = ring;
    this.pump = pump;
    this.codec = new PcmCodec(format.bits());
    this.sections = PieceSections.of(piece.passages());
    this.blockFrames = format.ratePerSecond() * AudioPump.BLOCK_MS / 1000;
    this.block = new float[blockFrames * format.channels()];
    this.encoded = new byte[blockFrames * format.bytesPerFrame()];
    this.silence = new byte[bytes(format, QUIET_MS)];
    this.aheadBytes = bytes(format, FIRST_AHEAD_MS);
  }

  static int bytes(PcmFormat format, int ms) {
    return format.ratePerSecond() * ms / 1000 * format.bytesPerFrame();
  }

  /** Where the frames of the device lie in the piece; for any thread. */
  Optional<LiveClock> liveClock() {
    return liveClock;
  }

  /** The frame of the device at which the last start began; for any thread. */
  long startFrame() {
    return startFrame;
  }

  /** How far ahead is rendered, in milliseconds; for any thread. */
  int aheadMs() {
    PcmFormat format = piece.format();
    return (int) (1000L * aheadBytes / format.bytesPerFrame() / format.ratePerSecond());
  }

  boolean isRendering() {
    return stream.isPresent();
  }

  /** Renders a while for nobody, for the first run of the code is slow. */
  void warmUp() {
    PieceSection first = sections.first();
    LivePiece atOnce =
        new LivePiece(
            piece.passages(), 0, piece.voice(), piece.drone(), piece.format(), piece.breaths());
    LiveStream unheard =
        new LiveStream(atOnce, first, tempoOf(first), Mix.lesson(), Optional.empty(), 0);
    for (int done = 0; done < WARM_UP_SECONDS * piece.format().ratePerSecond(); ) {
      int frames = unheard.render(block, blockFrames);
      codec.encode(block, frames * piece.format().channels(), encoded);
      done += blockFrames;
    }
  }

  /** Goes to a section in time, or begins with it, at once or after another passage has ended. */
  void start(PieceSection section, Tempo tempo, Mix mix) {
    if (stream.isPresent() && stream.get().plays(section)) {
      stream.get().goTo(section);
      publish();
      return;
    }
    stop();
    while (!pump.isIdle()) {
      LockSupport.parkNanos(NAP_NANOS);
    }
    int quiet = ring.write(silence, 0, silence.length) / piece.format().bytesPerFrame();
    nextFrame = pump.writtenFrames() + quiet;
    startFrame = nextFrame;
    liveClock = Optional.empty();
    take(stream(section, tempo, mix, nextFrame));
    while (fill(underrunsMet)) {
      // A device that is given too little at first runs dry at once.
    }
    pump.play();
  }

  void stop() {
    stream = Optional.empty();
    pump.stop();
  }

  void tempo(Tempo tempo) {
    stream.ifPresent(playing -> playing.tempo(tempo));
    publish();
  }

  void mix(Mix mix) {
    stream.ifPresent(playing -> playing.mix(mix));
    publish();
  }

  void loop(Optional<PieceSection> section) {
    loop = section;
    stream.ifPresent(playing -> playing.loop(section));
  }

  /** Renders a block if there is room for it; the ring holds more after the device ran dry. */
  boolean fill(int underruns) {
    if (underruns > underrunsMet) {
      aheadBytes = Math.min(ring.capacity(), aheadBytes + aheadBytes / 2);
    }
    underrunsMet = underruns;
    if (stream.isEmpty() || ring.filled() + encoded.length > aheadBytes) {
      return false;
    }
    int frames = stream.get().render(block, blockFrames);
    codec.encode(block, frames * piece.format().channels(), encoded);
    ring.write(encoded, 0, frames * piece.format().bytesPerFrame());
    nextFrame += frames;
    publish();
    if (frames == 0) {
      endPassage(stream.get());
    }
    return true;
  }

  private void endPassage(LiveStream ended) {
    int next = ended.liveClock().last().section().passage() + 1;
    if (next < piece.passages().size()) {
      PieceSection first = sections.rounds(next).get(0);
      PieceSection section = sections.at(next, first.startBeat());
      take(stream(section, tempoOf(section), ended.mix(), nextFrame));
    } else {
      stream = Optional.empty();
      pump.end();
    }
  }

  private LiveStream stream(PieceSection section, Tempo tempo, Mix mix, long startFrame) {
    return new LiveStream(piece, section, tempo, mix, fade, startFrame);
  }

  private Tempo tempoOf(PieceSection section) {
    return piece.composition(section).tempo();
  }

  private void take(LiveStream next) {
    next.loop(loop);
    stream = Optional.of(next);
    publish();
  }

  private void publish() {
    stream.ifPresent(
        playing ->
            liveClock =
                Optional.of(
                    liveClock
                        .map(known -> known.joinedBy(playing.liveClock()))
                        .orElse(playing.liveClock())));
  }
}
