package org.matraloom.take;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds which onset of a take is which sollu of the score.
 *
 * <p>Of all ways to pair them in order, the best is found by dynamic programming: a pair is worth
 * the more the surer the onset and the better the time since the pair before fits the score at the
 * tempo of the take. Sollus may be missing, onsets may be of something else, and the performer may
 * break off and begin again at an entry. Only the likeliest places are followed, so that an hour
 * takes seconds.
 */
final class ScoreFollower {

  /** The tempo of the take may be this much slower or faster than the score's. */
  static final double SLOWEST = 0.72;

  static final double FASTEST = 1.40;

  private static final double TEMPO_STEP = 1.03;

  /** A passage that may be two at different speeds is the one nearer to the score. */
  private static final double STRETCH_COST = 6;

  /** The tempo is guessed on so many onsets. */
  private static final int GUESS_ONSETS = 160;

  /** So many places in the score are followed at a time. */
  private static final int PLACES = 80;

  /** Between two pairs at most so many onsets are of something else. */
  private static final int MOST_EXTRA = 10;

  /** Between two pairs at most so many sollus are missing. */
  private static final int MOST_MISSED = 5;

  private static final double PAIR_GAIN = 1.0;
  private static final double SURE_GAIN = 0.5;
  private static final double MISSED_COST = 0.8;
  private static final double EXTRA_COST = 0.4;
  private static final double RESTART_COST = 6;

  /** Going back without a pause is far less likely. */
  private static final double REPEAT_COST = 9.5;

  /** The recording may begin with an entry, less likely anywhere; both rather than go on there. */
  private static final double LATE_COST = 5;

  private static final double ANYWHERE_COST = 5.5;

  private static final int ANYWHERE_ONSETS = 16;

  /** Until it is clear where the recording begins, more places are followed. */
  private static final int FIRST_ONSETS = 32;

  private static final int FIRST_PLACES = 600;

  private static final double RESTART_SECONDS = 0.6;
  private static final double REPEAT_SECONDS = 0.05;

  /** An interval this much longer or shorter than asked, and this much more, fits in no way. */
  private static final double MOST_APART = 1.4;

  private static final double APART_SECONDS = 0.16;

  /** An interval that is off by more than so many tolerances is not one interval. */
  private static final double WORST = 4;

  private final double[] expected;
  private final Intervals intervals;
  private final List<Onset> onsets;
  private final double[] extraCost;
  private final int[] entryPlaces;
  private PlacePulse pulse = PlacePulse.NONE;

  /**
   * Prepares to follow.
   *
   * @param expected when each sollu falls in the score, in seconds at its tempo, ascending
   * @param entries whether a performer may begin again at that sollu
   * @param onsets what was heard, in order of time
   */
  ScoreFollower(double[] expected, boolean[] entries, List<Onset> onsets) {
    this(expected, Intervals.plain(expected), entries, onsets);
  }

  /**
   * Prepares to follow a performer who may time the score in other ways than it is written.
   *
   * @param expected when each sollu falls in the score, in seconds at its tempo, ascending
   * @param intervals tells how well two onsets fit two sollus
   * @param entries whether a performer may begin again at that sollu
   * @param onsets what was heard, in order of time
   */
  ScoreFollower(double[] expected, Intervals intervals, boolean[] entries, List<Onset> onsets) {
    this.expected = expected.clone();
    this.intervals = intervals;
    entryPlaces = IntStream.range(0, entries.length).filter(k -> entries[k]).toArray();
    this.onsets = List.copyOf(onsets);
    extraCost = new double[onsets.size() + 1];
    for (int j = 0; j < onsets.size(); j++) {
      extraCost[j + 1] = extraCost[j] + EXTRA_COST * onsets.get(j).confidence();
    }
  }

  /** The best pairing; empty if there is nothing to pair. */
  List<Alignment.Said> follow() {
    if (expected.length == 0 || onsets.isEmpty()) {
      return List.of();
    }
    double best = 1;
    double most = Double.NEGATIVE_INFINITY;
    int guessed = Math.min(onsets.size(), GUESS_ONSETS);
    for (double stretch = 1 / FASTEST; stretch <= 1 / SLOWEST; stretch *= TEMPO_STEP) {
      Path path = path(stretch, guessed);
      double likely = path.score - STRETCH_COST * Math.abs(Math.log(stretch));
      if (likely > most) {
        most = likely;
        best = stretch;
      }
    }
    List<Alignment.Said> first = path(best, onsets.size()).said;
    pulse = PlacePulse.of(first, expected, intervals.matraSeconds(), onsets);
    return path(stretchOf(first, best), onsets.size()).said;
  }

  /** How much slower than the score the take is: the median over neighbouring pairs. */
  private double stretchOf(List<Alignment.Said> said, double guess) {
    double[] ratios = new double[said.size()];
    int count = 0;
    for (int i = 1; i < said.size(); i++) {
      double asked = expected[said.get(i).sollu()] - expected[said.get(i - 1).sollu()];
      double took = seconds(said.get(i).onset()) - seconds(said.get(i - 1).onset());
      if (asked > 0 && Math.abs(took / asked / guess - 1) < 0.2) {
        ratios[count++] = took / asked;
      }
    }
    if (count == 0) {
      return guess;
    }
    Arrays.sort(ratios, 0, count);
    return ratios[count / 2];
  }

  private double seconds(int onset) {
    return onsets.get(onset).seconds();
  }

  private record Path(List<Alignment.Said> said, double score) {}

  private Path path(double stretch, int count) {
    PlaceDraft.Places[] places = new PlaceDraft.Places[count];
    Entrance restart = new Entrance(onsets, extraCost, entryPlaces, RESTART_SECONDS, RESTART_COST);
    Entrance repeat = new Entrance(onsets, extraCost, entryPlaces, REPEAT_SECONDS, REPEAT_COST);
    PlaceDraft draft = new PlaceDraft(expected.length);
    for (int j = 0; j < count; j++) {
      draft.clear();
      repeat.advanceTo(places, j);
      restart.advanceTo(places, j);
      begin(draft, j, restart.isOpen());
      repeat.offerTo(draft, j);
      restart.offerTo(draft, j);
      for (int from = Math.max(0, j - 1 - MOST_EXTRA); from < j; from++) {
        goOn(draft, places[from], from, j, stretch);
      }
      int most = j < FIRST_ONSETS ? FIRST_PLACES : PLACES;
      places[j] = draft.best(most, PAIR_GAIN + SURE_GAIN * onsets.get(j).confidence());
    }
    return traced(places, count);
  }

  /** The take may begin with any entry, with one of the first sollus, or in the midst of all. */
  private void begin(PlaceDraft draft, int j, boolean anew) {
    for (int k = 0; k <= Math.min(MOST_MISSED, expected.length - 1); k++) {
      draft.offer(k, -extraCost[j] - k * MISSED_COST, -1, -1);
    }
    for (int k : anew ? new int[0] : entryPlaces) {
      draft.offer(k, -extraCost[j] - LATE_COST, -1, -1);
    }
    for (int k = 0; j < ANYWHERE_ONSETS && k < expected.length; k++) {
      draft.offer(k, -extraCost[j] - ANYWHERE_COST, -1, -1);
    }
  }

  private void goOn(PlaceDraft draft, PlaceDraft.Places places, int from, int j, double stretch) {
    double took = seconds(j) - seconds(from);
    double extra = extraCost[j] - extraCost[from + 1];
    for (int p = 0; p < places.sollu().length; p++) {
      int k = places.sollu()[p];
      int last = Math.min(expected.length - 1, k + 1 + MOST_MISSED);
      if (took > (expected[last] - expected[k]) * stretch * MOST_APART + APART_SECONDS) {
        continue;
      }
      for (int next = k + 1; next <= last; next++) {
        double asked = (expected[next] - expected[k]) * stretch;
        if (asked > took * MOST_APART + APART_SECONDS) {
          break;
        }
        if (took > asked * MOST_APART + APART_SECONDS) {
          continue;
        }
        double off = intervals.off(k, next, took, stretch);
        if (off <= WORST) {
          double cost =
              off * off / 4 + (next - k - 1) * MISSED_COST + extra + pulse.cost(next, seconds(j));
          draft.offer(next, places.score()[p] - cost, from, p);
        }
      }
    }
  }

  private Path traced(PlaceDraft.Places[] places, int count) {
    double best = Double.NEGATIVE_INFINITY;
    int j = -1;
    int p = -1;
    for (int at = 0; at < count; at++) {
      for (int q = 0; q < places[at].sollu().length; q++) {
        int unsaid = Math.min(MOST_MISSED, expected.length - 1 - places[at].sollu()[q]);
        double after = unsaid == 0 ? 0 : extraCost[count] - extraCost[at + 1];
        double score = places[at].score()[q] - after - unsaid * MISSED_COST;
        if (score > best) {
          best = score;
          j = at;
          p = q;
        }
      }
    }
    List<Alignment.Said> said = new ArrayList<>();
    while (j >= 0) {
      said.add(new Alignment.Said(places[j].sollu()[p], j));
      int from = places[j].fromOnset()[p];
      p = places[j].fromPlace()[p];
      j = from;
    }
    Collections.reverse(said);
    return new Path(said, best);
  }
}
