package org.matraloom.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.wav.PcmFormat;

/**
 * Listens to one pass whose sound is handed to it in blocks, as a page does: the same ear and the
 * same marks as those of a pass that is recorded here.
 */
public final class FedEar implements AutoCloseable {

  /** What was handed on is heard within this, or the next block tells of it. */
  private static final long MOST_WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(25);

  private static final long NAP_NANOS = TimeUnit.MICROSECONDS.toNanos(500);

  private final LiveEar ear;
  private final SaidMarks marks;
  private final GuideWatch guide;

  /**
   * Begins to listen.
   *
   * @param format of the sound: one channel, 16 bits
   * @param timeline what is to be said
   * @param lexicon how it is said
   * @param knowsDelay whether the delay of the devices was measured
   */
  public FedEar(PcmFormat format, Timeline timeline, Lexicon lexicon, boolean knowsDelay) {
    ear = new LiveEar(format);
    marks = new SaidMarks(timeline, lexicon, knowsDelay, format.ratePerSecond());
    guide = new GuideWatch(ear.peaks(), timeline, format.ratePerSecond());
    ear.open();
  }

  /**
   * What a block told.
   *
   * @param marks the sollus that were heard, in the order of their sounds
   * @param notice what is to be said at once; empty if nothing is
   */
  public record Heard(List<SaidMark> marks, Optional<String> notice) {

    /** Copies the list. */
    public Heard {
      marks = List.copyOf(marks);
    }
  }

  /**
   * Takes the next block of the sound and tells what is heard in it, and in those before of which
   * it was not told.
   *
   * @param pcm samples, the lower byte first
   * @param startFrame the frame of the sound at which the guide begins, with the delay of the
   *     devices if it is known; empty as long as that is not known: then nothing is told yet
   * @return what was heard
   */
  public synchronized Heard hear(byte[] pcm, Optional<Long> startFrame) {
    ear.hear(pcm, pcm.length);
    long begun = System.nanoTime();
    while (!ear.isIdle() && System.nanoTime() - begun < MOST_WAIT_NANOS) {
      LockSupport.parkNanos(NAP_NANOS);
    }
    List<SaidMark> heard = new ArrayList<>();
    if (startFrame.isEmpty()) {
      return new Heard(heard, Optional.empty());
    }
    for (Optional<Onset> onset = ear.next(); onset.isPresent(); onset = ear.next()) {
      marks.hear(onset.get(), startFrame.get()).ifPresent(heard::add);
    }
    return new Heard(heard, guide.look(startFrame.get()));
  }

  /**
   * What was looked at of the whole sound; ends the listening.
   *
   * @return empty if some of it was not heard
   */
  public Optional<BandEnergies> whole() {
    ear.close();
    return ear.whole();
  }

  @Override
  public void close() {
    ear.close();
  }
}
