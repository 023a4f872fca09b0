package org.matraloom.take;

import java.util.List;
import java.util.Optional;

/** Measures how a take lands: {@link Landing}. */
final class LandingMeasure {

  private LandingMeasure() {}

  /**
   * The landing: how far the last sollu of the score is from where the pulse puts it that the take
   * had when it began, or began again. A matra left out on the way is a matra too early here.
   *
   * @param alignment what was heard
   * @param sollus what was said, in order of time
   * @param line the pulse
   * @return nothing if the last sollu was not heard
   */
  static Optional<Landing> of(Alignment alignment, List<SaidSollu> sollus, PulseLine line) {
    List<ExpectedSollu> expected = alignment.expected();
    int last = expected.size() - 1;
    Optional<SaidSollu> heard =
        sollus.stream().filter(said -> said.place() == last).reduce((a, b) -> b);
    return heard.map(
        said -> {
          ExpectedSollu asked = expected.get(last);
          double matra = line.beatSeconds(asked.beat().toDouble()) / asked.matrasPerBeat();
          double error =
              said.feltSeconds()
                  - line.secondsAt(asked.beat().toDouble(), firstRun(alignment, sollus, said));
          boolean lands = Math.abs(error) <= Tolerance.landingSeconds(matra);
          return new Landing(last, error, error / matra, lands);
        });
  }

  /** The run in which the performer last began. */
  private static int firstRun(Alignment alignment, List<SaidSollu> sollus, SaidSollu last) {
    int run = sollus.get(0).run();
    int end = sollus.indexOf(last);
    for (int i = 1; i <= end; i++) {
      if (alignment.isRestart(sollus.get(i - 1), sollus.get(i))) {
        run = sollus.get(i).run();
      }
    }
    return run;
  }
}
