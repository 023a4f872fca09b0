package org.matraloom.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.live.LivePlayer;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.TakeWriter;

/**
 * Plays one pass and records it, from beginning to end, without a key being pressed, and listens
 * meanwhile.
 */
public final class RecordedPass {

  /** Keys and onsets are looked for so often; a mark that comes is shown at once. */
  private static final int LOOK_MS = 8;

  private static final long SHOW_NANOS = TimeUnit.MILLISECONDS.toNanos(40);

  /** What was said is recorded to its end for so long. */
  private static final long RING_OUT_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  /** Who is behind the guide is waited for as long as sounds come no farther apart than this. */
  private static final long BEHIND_NANOS = TimeUnit.MILLISECONDS.toNanos(1_300);

  private static final long LONGEST_BEHIND_NANOS = TimeUnit.SECONDS.toNanos(20);

  private final PassSound sound;
  private final PracticeDesk desk;
  private final AudioIn in;
  private final LiveEar ear;
  private final SaidMarks marks;
  private final GuideWatch guide;
  private final TreeMap<Integer, LivePass.Shown> shown = new TreeMap<>();
  private final List<SaidMark> unseen = new ArrayList<>();

  private long lastHeardNanos = Long.MIN_VALUE / 2;
  private long lastShownNanos = Long.MIN_VALUE / 2;

  private RecordedPass(PassSound sound, AudioIn in, LiveEar ear, PracticeDesk desk) {
    this.sound = sound;
    this.in = in;
    this.ear = ear;
    this.desk = desk;
    this.marks =
        new SaidMarks(
            timeline(),
            sound.lexicon(),
            sound.note().roundTripFrames().isPresent(),
            sound.taken().ratePerSecond());
    this.guide = new GuideWatch(ear.peaks(), timeline(), sound.taken().ratePerSecond());
  }

  private Timeline timeline() {
    return sound.note().timeline();
  }

  /**
   * Plays and records.
   *
   * @param sound what is played
   * @param out where it is heard; closed at the end
   * @param in where the take comes from; closed at the end
   * @param target the file of the take, which must not exist
   * @param desk where it is shown; its key for the end stops the pass
   * @return how it went
   * @throws IOException if a device, the disk or the terminal has gone; what was recorded is kept
   */
  public static LivePass record(
      PassSound sound, AudioOut out, AudioIn in, Path target, PracticeDesk desk)
      throws IOException {
    LiveEar ear = new LiveEar(sound.taken());
    try (LivePlayer player = new LivePlayer(sound.piece(), Optional.empty(), out);
        TakeWriter take = new TakeWriter(target, sound.taken(), sound.note());
        TakeRecorder recorder = new TakeRecorder(in, out, sound.taken(), Optional.of(ear));
        ear) {
      ear.open();
      return new RecordedPass(sound, in, ear, desk).run(player, recorder, take);
    }
  }

  private LivePass run(LivePlayer player, TakeRecorder recorder, TakeWriter take)
      throws IOException {
    long roundTrip = sound.note().roundTripFrames().orElse(0L);
    PlayControls controls = new PlayControls(sound.piece(), sound.mix(), player);
    player.open();
    recorder.begin(take);
    recorder.open();
    controls.start();
    boolean goesOn = true;
    while (goesOn && player.isPlaying()) {
      player.check();
      recorder.check();
      recorder.follow(player, roundTrip);
      listen(recorder);
      show(controls, recorder);
      goesOn = !desk.isEndAsked(LOOK_MS);
    }
    player.stop();
    recorder.follow(player, roundTrip);
    ringOut(recorder, controls, goesOn);
    // Nothing more is captured, so that the ear has heard all that is in the take.
    recorder.close();
    ear.close();
    listen(recorder);
    recorder.check();
    int broken = player.gaps().count() + recorder.lost();
    return new LivePass(
        goesOn, new ArrayList<>(shown.values()), marks.count(), guide.db(), broken, ear.whole());
  }

  private void listen(TakeRecorder recorder) {
    Optional<Long> start = recorder.startFrame();
    if (start.isPresent()) {
      guide.look(start.get()).ifPresent(desk::notice);
      for (Optional<Onset> onset = ear.next(); onset.isPresent(); onset = ear.next()) {
        lastHeardNanos = System.nanoTime();
        marks.hear(onset.get(), start.get()).ifPresent(unseen::add);
      }
    }
  }

  private void show(PlayControls controls, TakeRecorder recorder) {
    long now = System.nanoTime();
    if (!unseen.isEmpty() || now - lastShownNanos >= SHOW_NANOS) {
      lastShownNanos = now;
      desk.show(controls.state(), recorder.level(), marks);
      long seen = in.capturedFrames();
      unseen.forEach(mark -> shown.put(mark.place(), new LivePass.Shown(mark, seen)));
      unseen.clear();
    }
  }

  private void ringOut(TakeRecorder recorder, PlayControls controls, boolean waits)
      throws IOException {
    long begun = System.nanoTime();
    lastHeardNanos = Math.max(lastHeardNanos, begun - BEHIND_NANOS + RING_OUT_NANOS);
    long now = begun;
    while (now - begun < RING_OUT_NANOS
        || waits
            && !marks.endWithTheGuide()
            && now - lastHeardNanos < BEHIND_NANOS
            && now - begun < LONGEST_BEHIND_NANOS) {
      recorder.check();
      listen(recorder);
      show(controls, recorder);
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(LOOK_MS));
      now = System.nanoTime();
    }
  }
}
