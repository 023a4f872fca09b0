package org.matraloom.session;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Notices the guide in the microphone as soon as the count-in has been heard. */
final class GuideWatch {

  private final InputPeaks peaks;
  private final Timeline timeline;
  private final int ratePerSecond;
  private Optional<OptionalDouble> found = Optional.empty();

  GuideWatch(InputPeaks peaks, Timeline timeline, int ratePerSecond) {
    this.peaks = peaks;
    this.timeline = timeline;
    this.ratePerSecond = ratePerSecond;
  }

  /**
   * Looks whether it can be told by now. Nobody speaks while it is counted in; what is heard on its
   * beats then is the guide.
   *
   * @param startFrame the captured frame at which the guide begins
   * @return a sentence, once, if the guide is heard
   */
  Optional<String> look(long startFrame) {
    Ratio begin = timeline.performance().startBeat();
    int end = peaks.place(startFrame + timeline.clock(ratePerSecond).frameAt(begin));
    if (found.isPresent() || peaks.count() < end) {
      return Optional.empty();
    }
    Tempo tempo = timeline.performance().composition().tempo();
    OptionalDouble counted =
        GuideHeard.countedDb(
            peaks.first(end),
            peaks.place(Math.max(0, startFrame)),
            tempo.unitsOf(Ratio.ONE, InputPeaks.PER_SECOND),
            InputPeaks.PER_SECOND);
    found = Optional.of(counted);
    return counted.isPresent() ? Optional.of(headphones(counted.getAsDouble())) : Optional.empty();
  }

  /** How loud it is, in dB below full scale; empty if it is not heard, or that is not known yet. */
  OptionalDouble db() {
    return found.orElse(OptionalDouble.empty());
  }

  private static String headphones(double db) {
    return String.format(
        Locale.ROOT, "The guide is in the microphone, at %.0f dB: put on headphones.", db);
  }
}
