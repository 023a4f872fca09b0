package org.matraloom.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePlayer;
import org.matraloom.sound.Mix;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.time.FrameClock;
import org.matraloom.wav.PcmFormat;

/** Plays the guide and records what is said to it. */
public final class RecordSession {

  private static final int LOOK_MS = 40;
  private static final long LISTEN_NANOS = TimeUnit.SECONDS.toNanos(2);
  private static final long RING_OUT_NANOS = TimeUnit.MILLISECONDS.toNanos(600);
  private static final String BEFORE = "say a line to try the level   space start   q quit";
  private static final String MEANWHILE = "space or q stop and keep the take";

  private final LivePiece piece;
  private final Mix mix;
  private final AudioOut out;
  private final AudioIn in;
  private final PcmFormat format;
  private final TakeNote note;
  private final Path target;

  private Optional<TakeWriter> take = Optional.empty();

  /**
   * Prepares a recording.
   *
   * @param piece the guide
   * @param mix how loud each part of it is
   * @param out where it is heard; closed at the end
   * @param in where the take comes from; closed at the end
   * @param format the format of the take, 16 bits
   * @param note what the take belongs to, with the round trip of the devices if it is known
   * @param target the file of the take, which must not exist
   */
  public RecordSession(
      LivePiece piece,
      Mix mix,
      AudioOut out,
      AudioIn in,
      PcmFormat format,
      TakeNote note,
      Path target) {
    this.piece = piece;
    this.mix = mix;
    this.out = out;
    this.in = in;
    this.format = format;
    this.note = note;
    this.target = target;
  }

  /**
   * Shows the level, begins with a key, and shows the place while it records.
   *
   * @return how long the take is in frames; 0 if none was begun; empty, with nothing done, if the
   *     program does not run in a terminal
   * @throws IOException if a device, the disk or the terminal has gone; what was recorded is kept
   */
  public Optional<Long> onScreen() throws IOException {
    Optional<Screen> taken = Screen.open();
    if (taken.isEmpty()) {
      return Optional.empty();
    }
    try (Screen screen = taken.get();
        LivePlayer player = new LivePlayer(piece, Optional.empty(), out);
        TakeRecorder recorder = new TakeRecorder(in, out, format)) {
      PlayControls desk = new PlayControls(piece, mix, player);
      KeyDecoder keys = new KeyDecoder(screen);
      player.open();
      recorder.open();
      boolean goesOn = true;
      while (goesOn) {
        player.check();
        recorder.check();
        screen.show(LiveView.lines(shown(desk.state(), recorder), screen.columns(), screen.rows()));
        Optional<KeyAction> action = keys.next(LOOK_MS).map(KeyPress::action);
        goesOn = goesOn(action, desk, player, recorder);
      }
      return Optional.of(end(player, recorder));
    } finally {
      closeTake();
    }
  }

  private PlayState shown(PlayState state, TakeRecorder recorder) {
    InputLevel level = recorder.level();
    String lost = recorder.lost() == 0 ? "" : ", lost " + recorder.lost() + " times";
    String words =
        take.isPresent()
            ? String.format(
                Locale.ROOT,
                "recording, %.0f s%s",
                FrameClock.seconds(take.get().frames(), format.ratePerSecond()),
                lost)
            : level.advice();
    return state.recording(
        words, level.bar(), take.isPresent() ? MEANWHILE : BEFORE, Optional.empty());
  }

  private boolean goesOn(
      Optional<KeyAction> action, PlayControls desk, LivePlayer player, TakeRecorder recorder)
      throws IOException {
    if (take.isEmpty()) {
      if (action.equals(Optional.of(KeyAction.START_STOP))) {
        begin(desk, recorder);
      }
      return !action.equals(Optional.of(KeyAction.QUIT));
    }
    recorder.follow(player, note.roundTripFrames().orElse(0L));
    boolean isStopped =
        action.equals(Optional.of(KeyAction.START_STOP))
            || action.equals(Optional.of(KeyAction.QUIT));
    return player.isPlaying() && !isStopped;
  }

  /**
   * Records from the beginning to the end of the guide and tells what goes on in lines.
   *
   * @param lines where the lines go
   * @param keysIn where keys come from; its end asks for nothing
   * @return how long the take is in frames
   * @throws IOException if a device or the disk has gone; what was recorded is kept
   */
  public long inLines(PrintWriter lines, InputStream keysIn) throws IOException {
    PlainLines plain = new PlainLines(lines);
    try (LivePlayer player = new LivePlayer(piece, Optional.empty(), out);
        TakeRecorder recorder = new TakeRecorder(in, out, format)) {
      PlayControls desk = new PlayControls(piece, mix, player);
      KeyDecoder keys = new KeyDecoder(new InputKeys(keysIn));
      player.open();
      recorder.open();
      pause(LISTEN_NANOS, recorder);
      lines.println("input " + recorder.level().bar() + ": " + recorder.level().advice());
      begin(desk, recorder);
      boolean goesOn = true;
      while (goesOn) {
        player.check();
        recorder.check();
        plain.show(desk.state());
        goesOn = goesOn(keys.next(LOOK_MS).map(KeyPress::action), desk, player, recorder);
      }
      long frames = end(player, recorder);
      InputLevel level = recorder.level();
      lines.println("highest level " + Math.round(level.highestDbfs()) + " dB: " + level.advice());
      lines.println("lost " + recorder.lost() + " times; underruns " + gaps(player).words());
      return frames;
    } finally {
      closeTake();
    }
  }

  private GapTally gaps(LivePlayer player) {
    return GapTally.of(player.gaps(), piece.format().ratePerSecond());
  }

  private static void pause(long nanos, TakeRecorder recorder) throws IOException {
    long end = System.nanoTime() + nanos;
    while (System.nanoTime() < end) {
      recorder.check();
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(LOOK_MS));
    }
  }

  private void begin(PlayControls desk, TakeRecorder recorder) throws IOException {
    TakeWriter begun = new TakeWriter(target, format, note);
    take = Optional.of(begun);
    recorder.begin(begun);
    desk.start();
  }

  /** Lets the last sounds come in and brings all that was captured to the disk. */
  private long end(LivePlayer player, TakeRecorder recorder) throws IOException {
    player.stop();
    if (take.isEmpty()) {
      return 0;
    }
    pause(RING_OUT_NANOS, recorder);
    recorder.follow(player, note.roundTripFrames().orElse(0L));
    recorder.close();
    return take.get().frames();
  }

  private void closeTake() throws IOException {
    if (take.isPresent()) {
      take.get().close();
    }
  }
}
