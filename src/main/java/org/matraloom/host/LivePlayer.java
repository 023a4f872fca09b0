package org.matraloom.host;

import java.io.IOException;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.sound.AudioOut;
import org.matraloom.sound.Mix;
import org.matraloom.sound.PcmCodec;
import org.matraloom.sound.PcmFormat;
import org.matraloom.time.Tempo;

/**
 * Plays a piece on a device: one thread renders ahead, another hands over.
 *
 * <p>What is asked for is done by the rendering thread in the order in which it was asked. The
 * place that is told is the one that is heard, by the device's own count of frames.
 */
public final class LivePlayer implements AutoCloseable {

  private static final int FIRST_AHEAD_MS = 100;
  private static final int MOST_AHEAD_MS = 1000;

  /** Devices may swallow the first few milliseconds, so these are silent. */
  private static final int QUIET_MS = 20;

  private static final int WARM_UP_SECONDS = 2;
  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(2);
  private static final long CLOSE_MS = 1000;

  private final LivePiece piece;
  private final Optional<Fade> fade;
  private final AudioOut out;
  private final AudioPump pump;
  private final PcmRing ring;
  private final PcmCodec codec;
  private final Queue<Runnable> wishes = new ConcurrentLinkedQueue<>();
  private final float[] block;
  private final byte[] encoded;
  private final byte[] silence;
  private final int blockFrames;
  private final Thread renderThread = new Thread(this::renderAhead, "matraloom-render");
  private final Thread audioThread = new Thread(this::handOver, "matraloom-audio");

  private Optional<LiveStream> stream = Optional.empty();
  private Optional<Section> loop = Optional.empty();

  private int underrunsMet;

  /** Empty before the first start. */
  private volatile Optional<Course> course = Optional.empty();

  private volatile long startFrame;
  private volatile boolean playing;
  private volatile int aheadBytes;
  private volatile boolean closed;
  private volatile Optional<Throwable> failure = Optional.empty();

  /**
   * Prepares to play; nothing is heard before {@link #start}.
   *
   * @param piece what is played
   * @param fade whether voice and ticks go away
   * @param out where it is heard; closed with this player
   */
  public LivePlayer(LivePiece piece, Optional<Fade> fade, AudioOut out) {
    PcmFormat format = piece.format();
    this.piece = piece;
    this.fade = fade;
    this.out = out;
    this.ring = new PcmRing(bytes(format, MOST_AHEAD_MS));
    this.pump = new AudioPump(ring, out, format);
    this.codec = new PcmCodec(format.bits());
    this.blockFrames = format.ratePerSecond() * AudioPump.BLOCK_MS / 1000;
    this.block = new float[blockFrames * format.channels()];
    this.encoded = new byte[blockFrames * format.bytesPerFrame()];
    this.silence = new byte[bytes(format, QUIET_MS)];
    this.aheadBytes = bytes(format, FIRST_AHEAD_MS);
    audioThread.setPriority(Thread.MAX_PRIORITY);
    renderThread.setDaemon(true);
    audioThread.setDaemon(true);
  }

  /** Starts the threads; the first of them makes the sounds ready meanwhile. */
  public void open() {
    renderThread.start();
    audioThread.start();
  }

  /**
   * Begins at a section, after its count-in, or goes to it in time if something is playing.
   *
   * @param section where the mouth begins
   * @param tempo the tempo
   * @param mix how loud each part is
   */
  public void start(Section section, Tempo tempo, Mix mix) {
    wish(() -> stream.ifPresentOrElse(s -> s.goTo(section), () -> begin(section, tempo, mix)));
  }

  /** Stops within a moment. */
  public void stop() {
    wish(
        () -> {
          stream = Optional.empty();
          pump.stop();
        });
  }

  /**
   * Takes another tempo from the next beat on.
   *
   * @param tempo the tempo
   */
  public void tempo(Tempo tempo) {
    wish(() -> stream.ifPresent(s -> s.tempo(tempo)));
  }

  /**
   * Takes another mix from the next beat on.
   *
   * @param mix how loud each part is
   */
  public void mix(Mix mix) {
    wish(() -> stream.ifPresent(s -> s.mix(mix)));
  }

  /**
   * Comes back to a section each time its end is reached, or no longer does.
   *
   * @param section what is looped
   */
  public void loop(Optional<Section> section) {
    wish(
        () -> {
          loop = section;
          stream.ifPresent(s -> s.loop(section));
        });
  }

  /**
   * Whether something is playing or about to.
   *
   * @return true from the start to the last sound
   */
  public boolean isPlaying() {
    // In this order: a wish leaves the queue only after what it does is done.
    return !wishes.isEmpty() || playing;
  }

  /**
   * What is heard at this moment, or was heard last.
   *
   * @return empty before the first start
   */
  Optional<Spot> spot() {
    return course.map(
        known -> {
          long frame = Math.max(0, out.playedFrames() - startFrame);
          Lap lap = known.at(frame);
          return new Spot(lap, lap.beatAt(frame));
        });
  }

  /**
   * How often the device ran dry.
   *
   * @return underruns so far
   */
  public int underruns() {
    return out.underruns();
  }

  /** How many wishes are not granted yet. */
  int pendingWishes() {
    return wishes.size();
  }

  /** How much is rendered ahead of the device, in milliseconds. */
  int aheadMs() {
    PcmFormat format = piece.format();
    return (int) (1000L * aheadBytes / format.bytesPerFrame() / format.ratePerSecond());
  }

  /**
   * Tells what went wrong in a thread, once it has.
   *
   * @throws IOException if the device has gone
   */
  public void check() throws IOException {
    if (failure.isEmpty()) {
      return;
    }
    Throwable cause = failure.get();
    if (cause instanceof IOException device) {
      throw device;
    }
    throw new IllegalStateException("the sound has broken off: " + cause, cause);
  }

  @Override
  public void close() {
    stop();
    long limit = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(CLOSE_MS);
    while (isPlaying() && failure.isEmpty() && System.nanoTime() < limit) {
      LockSupport.parkNanos(NAP_NANOS);
    }
    closed = true;
    out.close();
  }

  private void wish(Runnable wish) {
    wishes.add(wish);
    LockSupport.unpark(renderThread);
  }

  private void begin(Section section, Tempo tempo, Mix mix) {
    while (!pump.isIdle() && !closed) {
      LockSupport.parkNanos(NAP_NANOS);
    }
    LiveStream begun = new LiveStream(piece, section, tempo, mix, fade);
    begun.loop(loop);
    int quiet = ring.write(silence, 0, silence.length) / piece.format().bytesPerFrame();
    startFrame = pump.writtenFrames() + quiet;
    course = Optional.of(begun.course());
    stream = Optional.of(begun);
    playing = true;
    pump.play();
  }

  private void renderAhead() {
    guard(
        () -> {
          warmUp();
          while (!closed) {
            boolean busy = grantWish() || stream.isPresent() && fill();
            if (!busy) {
              playing = playing && !(stream.isEmpty() && pump.isIdle());
              LockSupport.parkNanos(NAP_NANOS);
            }
          }
        });
  }

  /** The first run of the code is slow; nobody waits for this one. */
  private void warmUp() {
    Section first = Sections.of(piece.timeline()).first();
    Tempo tempo = piece.timeline().performance().composition().tempo();
    LiveStream unheard = new LiveStream(piece, first, tempo, Mix.lesson(), fade);
    for (int done = 0; done < WARM_UP_SECONDS * piece.format().ratePerSecond(); ) {
      int frames = unheard.render(block, blockFrames);
      codec.encode(block, frames * piece.format().channels(), encoded);
      done += blockFrames;
    }
  }

  private boolean grantWish() {
    Runnable wish = wishes.peek();
    if (wish == null) {
      return false;
    }
    wish.run();
    stream.ifPresent(s -> course = Optional.of(s.course()));
    wishes.remove();
    return true;
  }

  private boolean fill() {
    if (out.underruns() > underrunsMet) {
      underrunsMet = out.underruns();
      aheadBytes = Math.min(ring.capacity(), aheadBytes + aheadBytes / 2);
    }
    if (ring.filled() + encoded.length > aheadBytes) {
      return false;
    }
    LiveStream playingNow = stream.get();
    int frames = playingNow.render(block, blockFrames);
    course = Optional.of(playingNow.course());
    codec.encode(block, frames * piece.format().channels(), encoded);
    ring.write(encoded, 0, frames * piece.format().bytesPerFrame());
    if (frames == 0) {
      stream = Optional.empty();
      pump.end();
    }
    return true;
  }

  private void handOver() {
    guard(
        () -> {
          while (!closed) {
            pump.step();
          }
        });
  }

  private interface Work {
    void run() throws IOException;
  }

  /** Keeps what goes wrong in a thread for the one that asks. */
  private void guard(Work work) {
    try {
      work.run();
    } catch (IOException | RuntimeException | Error problem) {
      failure = closed ? failure : Optional.of(problem);
      closed = true;
    }
  }

  private static int bytes(PcmFormat format, int ms) {
    return format.ratePerSecond() * ms / 1000 * format.bytesPerFrame();
  }
}
