package org.matraloom.measure;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.pulse.BentFit;

/**
 * The beats at which sollus fell, where each slip on the way is one of whole matras: who leaves a
 * matra out or puts one in keeps the pulse, and only counts otherwise.
 *
 * @param beat where each sollu fell, in beats of the pulse that was kept
 */
record WholeSlips(double[] beat) {

  /** A slip of more is a wait, however long. */
  private static final long MOST_MATRAS = 2;

  /**
   * Takes the slips between runs for whole matras.
   *
   * @param beat where each sollu stands in the score, in beats
   * @param run the run of each, from 1
   * @param matrasPerBeat the matras of each
   * @param even a straight line through them, with a beginning for each run
   * @return empty if there is no slip, or one that is not of one or two matras
   */
  static Optional<WholeSlips> of(double[] beat, int[] run, int[] matrasPerBeat, BentFit even) {
    double beatSeconds = even.secondsAt(1, 1, 1) - even.secondsAt(0, 0, 1);
    double[] moved = beat.clone();
    double by = 0;
    for (int i = 0; i < moved.length; i++) {
      if (i > 0 && run[i] != run[i - 1]) {
        double later = even.secondsAt(0, 0, run[i]) - even.secondsAt(0, 0, run[i - 1]);
        long matras = Math.round(later / beatSeconds * matrasPerBeat[i]);
        if (beatSeconds <= 0 || matras == 0 || Math.abs(matras) > MOST_MATRAS) {
          return Optional.empty();
        }
        by += matras / (double) matrasPerBeat[i];
      }
      moved[i] += by;
    }
    return Arrays.equals(moved, beat) ? Optional.empty() : Optional.of(new WholeSlips(moved));
  }

  /**
   * Where beats of the score fell.
   *
   * @param asked where the sollus stand in the score, in beats
   * @param beats some beats of the score
   * @return each as late as the first sollu from there on
   */
  double[] moved(double[] asked, double[] beats) {
    return Arrays.stream(beats)
        .map(
            at ->
                at
                    + IntStream.range(0, asked.length)
                        .filter(i -> asked[i] >= at)
                        .mapToDouble(i -> beat[i] - asked[i])
                        .findFirst()
                        .orElse(0))
        .toArray();
  }
}
