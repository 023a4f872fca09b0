package org.matraloom.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.live.LivePlayer;
import org.matraloom.live.LivePosition;
import org.matraloom.sound.TakeWriter;

/** Plays a row and records what is said after it, until its end or until a key asks for another. */
public final class RowPass {

  private static final int LOOK_MS = 40;
  private static final long RING_OUT_NANOS = TimeUnit.MILLISECONDS.toNanos(700);

  private final PassSound sound;
  private final int beatsInRow;
  private final RowDesk desk;

  private RowPass(PassSound sound, int beatsInRow, RowDesk desk) {
    this.sound = sound;
    this.beatsInRow = beatsInRow;
    this.desk = desk;
  }

  /**
   * How it went.
   *
   * @param key what ended it; empty if it came to its end
   * @param lost how often frames of the microphone were lost
   */
  public record End(Optional<RowKey> key, int lost) {}

  /**
   * Plays and records.
   *
   * @param sound what is played: the row once, and then the hand alone
   * @param beatsInRow how many beats the row has
   * @param out where it is heard; closed at the end
   * @param in where the recording comes from; closed at the end
   * @param target the file of the recording, which must not exist
   * @param desk where it is shown, and whose keys end it
   * @return how it went
   * @throws IOException if a device, the disk or the terminal has gone; what was recorded is kept
   */
  public static End record(
      PassSound sound, int beatsInRow, AudioOut out, AudioIn in, Path target, RowDesk desk)
      throws IOException {
    try (LivePlayer player = new LivePlayer(sound.piece(), Optional.empty(), out);
        TakeWriter take = new TakeWriter(target, sound.taken(), sound.note());
        TakeRecorder recorder = new TakeRecorder(in, out, sound.taken())) {
      return new RowPass(sound, beatsInRow, desk).run(player, recorder, take);
    }
  }

  private End run(LivePlayer player, TakeRecorder recorder, TakeWriter take) throws IOException {
    long roundTrip = sound.note().roundTripFrames().orElse(0L);
    player.open();
    recorder.begin(take);
    recorder.open();
    player.startFromTheBeginning(sound.mix());
    Optional<RowKey> key = Optional.empty();
    while (key.isEmpty() && player.isPlaying()) {
      player.check();
      recorder.check();
      recorder.follow(player, roundTrip);
      show(player, recorder);
      key = desk.key(LOOK_MS);
    }
    player.stop();
    recorder.follow(player, roundTrip);
    long end = System.nanoTime() + RING_OUT_NANOS;
    while (System.nanoTime() < end) {
      recorder.check();
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(LOOK_MS));
    }
    recorder.close();
    return new End(key, recorder.lost());
  }

  private void show(LivePlayer player, TakeRecorder recorder) {
    Optional<Long> beat = player.position().map(LivePosition::beat);
    desk.show(
        RowView.at(beat.orElse(-1L), beatsInRow),
        beat.map(at -> 1 + (int) Math.floorMod(at, (long) beatsInRow)),
        recorder.level());
  }
}
