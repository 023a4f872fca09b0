package org.matraloom.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.onset.Onset;

/**
 * Which sounds are the sollus of a saying, when it is known where they are due.
 *
 * <p>A reciter is early or late as a whole, and the devices add a delay that may not be known: the
 * shift is taken at which most sounds lie near their places. Then each sollu is the sound that is
 * surest and nearest to its place, after the one before.
 */
final class RowGrid {

  private static final double EARLIEST_SHIFT_SECONDS = -0.30;
  private static final double LATEST_SHIFT_SECONDS = 0.40;
  private static final double STEP_SECONDS = 0.01;
  private static final double NEAR_SECONDS = 0.12;
  private static final double REACH_SECONDS = 0.16;
  private static final double FAR_SHIFT_COSTS = 0.3;

  private final List<AskedRow.DueSollu> places;
  private final List<Onset> onsets;
  private final double beginSeconds;

  /**
   * Prepares the search.
   *
   * @param beginSeconds where the saying is due to begin in the recording
   */
  RowGrid(List<AskedRow.DueSollu> places, List<Onset> onsets, double beginSeconds) {
    this.places = places;
    this.onsets = onsets;
    this.beginSeconds = beginSeconds;
  }

  /** By how much the saying is later than it is due. */
  double shiftSeconds() {
    double best = 0;
    double most = nearness(0);
    int steps = (int) Math.round((LATEST_SHIFT_SECONDS - EARLIEST_SHIFT_SECONDS) / STEP_SECONDS);
    for (int step = 0; step <= steps; step++) {
      double shift = EARLIEST_SHIFT_SECONDS + step * STEP_SECONDS;
      double near = nearness(shift) - FAR_SHIFT_COSTS * Math.abs(shift);
      if (near > most) {
        most = near;
        best = shift;
      }
    }
    return best;
  }

  private double nearness(double shift) {
    double sum = 0;
    for (AskedRow.DueSollu place : places) {
      double due = due(place, shift);
      sum += onsets.stream().mapToDouble(onset -> worth(onset, due, NEAR_SECONDS)).max().orElse(0);
    }
    return sum;
  }

  /** When a sollu is due in the recording, by a shift. */
  double due(AskedRow.DueSollu place, double shift) {
    return beginSeconds + shift + place.seconds();
  }

  private static double worth(Onset onset, double due, double reach) {
    double off = Math.abs(onset.seconds() - due) / reach;
    return Math.max(0, 1 - off) * (0.2 + Math.min(1, onset.confidence()));
  }

  /**
   * The sounds of the sollus.
   *
   * @param shift by how much all is later than it is due
   * @return for each sollu where it begins in the recording; empty where no sound is near its place
   */
  List<Optional<Double>> sounds(double shift) {
    List<Optional<Double>> found = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    for (AskedRow.DueSollu place : places) {
      double due = due(place, shift);
      Optional<Onset> best = Optional.empty();
      for (Onset onset : onsets) {
        double worth = worth(onset, due, REACH_SECONDS);
        if (onset.seconds() > before
            && worth > best.map(other -> worth(other, due, REACH_SECONDS)).orElse(0.0)) {
          best = Optional.of(onset);
        }
      }
      found.add(best.map(Onset::seconds));
      before = best.map(Onset::seconds).orElse(before);
    }
    return found;
  }
}
