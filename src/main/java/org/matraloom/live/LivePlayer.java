package org.matraloom.live;

import java.io.IOException;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioOut;
import org.matraloom.device.DeviceGaps;
import org.matraloom.sound.Mix;
import org.matraloom.time.Tempo;

/**
 * Plays a piece on a device: one thread renders ahead, another hands over.
 *
 * <p>What is asked for is done by the rendering thread in the order in which it was asked. The
 * place that is told is the one that is heard, by the device's own count of frames.
 */
public final class LivePlayer implements AutoCloseable {

  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(2);
  private static final long CLOSE_MS = 1000;

  private final LivePiece piece;
  private final AudioOut out;
  private final AudioPump pump;
  private final RenderAhead render;
  private final Queue<Runnable> wishes = new ConcurrentLinkedQueue<>();
  private final Thread renderThread = new Thread(this::renderAhead, "matraloom-render");
  private final Thread audioThread = new Thread(this::handOver, "matraloom-audio");

  private volatile boolean playing;
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
    PcmRing ring = new PcmRing(RenderAhead.bytes(piece.format(), RenderAhead.MOST_AHEAD_MS));
    this.piece = piece;
    this.out = out;
    this.pump = new AudioPump(ring, out, piece.format());
    this.render = new RenderAhead(piece, fade, ring, pump);
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
  public void start(PieceSection section, Tempo tempo, Mix mix) {
    wish(
        () -> {
          render.start(section, tempo, mix);
          playing = true;
        });
  }

  /**
   * Begins at the beginning, at the tempo of the piece.
   *
   * @param mix how loud each part is
   */
  public void startFromTheBeginning(Mix mix) {
    PieceSection first = PieceSections.of(piece.passages()).first();
    start(first, piece.composition(first).tempo(), mix);
  }

  /** Stops within a moment. */
  public void stop() {
    wish(render::stop);
  }

  /**
   * Takes another tempo from the next beat on.
   *
   * @param tempo the tempo
   */
  public void tempo(Tempo tempo) {
    wish(() -> render.tempo(tempo));
  }

  /**
   * Takes another mix from the next beat on.
   *
   * @param mix how loud each part is
   */
  public void mix(Mix mix) {
    wish(() -> render.mix(mix));
  }

  /**
   * Comes back to a section each time its end is reached, or no longer does.
   *
   * @param section what is looped
   */
  public void loop(Optional<PieceSection> section) {
    wish(() -> render.loop(section));
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
  public Optional<LivePosition> position() {
    return render
        .liveClock()
        .map(
            liveClock -> {
              long frame = Math.max(liveClock.segments().get(0).fromFrame(), out.playedFrames());
              LiveSegment segment = liveClock.at(frame);
              return new LivePosition(segment, segment.beatAt(frame));
            });
  }

  /**
   * The silences that the device put in because it had nothing to play.
   *
   * @return those so far, with their places in frames of the device; the same object each time
   */
  public DeviceGaps gaps() {
    return out.gaps();
  }

  /**
   * The frame of the device at which the last start began.
   *
   * @return frames from the opening of the device
   */
  public long startFrame() {
    return render.startFrame();
  }

  /**
   * How many wishes are not granted yet.
   *
   * @return a number, 0 when all are granted
   */
  public int pendingWishes() {
    return wishes.size();
  }

  int aheadMs() {
    return render.aheadMs();
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

  private void renderAhead() {
    guard(
        () -> {
          render.warmUp();
          while (!closed) {
            if (!grantWish() && !render.fill(out.gaps().count())) {
              playing = playing && (render.isRendering() || !pump.isIdle());
              LockSupport.parkNanos(NAP_NANOS);
            }
          }
        });
  }

  private boolean grantWish() {
    Optional<Runnable> wish = Optional.ofNullable(wishes.peek());
    wish.ifPresent(Runnable::run);
    wish.ifPresent(granted -> wishes.remove());
    return wish.isPresent();
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
}
