package org.matraloom.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.live.LivePlayer;
import org.matraloom.sound.TakeWriter;

/** Plays one pass and records it, from beginning to end, without a key being pressed. */
public final class RecordedPass {

  private static final int LOOK_MS = 40;
  private static final long RING_OUT_NANOS = TimeUnit.MILLISECONDS.toNanos(600);

  private RecordedPass() {}

  /**
   * Plays and records.
   *
   * @param sound what is played
   * @param out where it is heard; closed at the end
   * @param in where the take comes from; closed at the end
   * @param target the file of the take, which must not exist
   * @param desk where it is shown; its key for the end stops the pass
   * @return whether the pass came to its end
   * @throws IOException if a device, the disk or the terminal has gone; what was recorded is kept
   */
  public static boolean record(
      PassSound sound, AudioOut out, AudioIn in, Path target, PracticeDesk desk)
      throws IOException {
    long roundTrip = sound.note().roundTripFrames().orElse(0L);
    try (LivePlayer player = new LivePlayer(sound.piece(), Optional.empty(), out);
        TakeWriter take = new TakeWriter(target, sound.taken(), sound.note());
        TakeRecorder recorder = new TakeRecorder(in, out, sound.taken())) {
      PlayControls controls = new PlayControls(sound.piece(), sound.mix(), player);
      player.open();
      recorder.open();
      recorder.begin(take);
      controls.start();
      boolean goesOn = true;
      while (goesOn && player.isPlaying()) {
        player.check();
        recorder.check();
        recorder.follow(player, roundTrip);
        desk.show(controls.state(), recorder.level());
        goesOn = !desk.isEndAsked(LOOK_MS);
      }
      player.stop();
      recorder.follow(player, roundTrip);
      ringOut(recorder);
      return goesOn;
    }
  }

  private static void ringOut(TakeRecorder recorder) throws IOException {
    long end = System.nanoTime() + RING_OUT_NANOS;
    while (System.nanoTime() < end) {
      recorder.check();
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(LOOK_MS));
    }
  }
}
