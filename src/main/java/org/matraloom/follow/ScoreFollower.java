package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Finds which onset of a take is which sollu of the score.
 *
 * <p>Of all ways to pair them in order, the best is found by dynamic programming: a pair is worth
 * the more the surer the onset, the better its time fits the pulse of the pairs before it, and the
 * more it sounds like its sollu. Sollus may be missing, onsets may be of something else, and the
 * performer may wait, leave out or put in a matra, or break off and begin again at an entry. Only
 * the likeliest places are followed, so that an hour takes seconds. The pulse of each way is
 * followed by an alpha-beta filter (P. R. Kalata, IEEE Trans. Aerosp. Electron. Syst. 20 (1984)
 * 174-182).
 */
final class ScoreFollower {

  /** Between two pairs at most so many onsets are of something else. */
  private static final int MOST_EXTRA = 12;

  /** Until it is clear where the recording begins, more places are followed. */
  private static final int FIRST_ONSETS = 32;

  private static final int FIRST_PLACES = 600;

  /** What is off by more of its length fits in no way but a wait. */
  private static final double MOST_APART = 1.4;

  private static final double APART_SECONDS = 0.16;

  /** No wait is longer. */
  private static final double LONGEST_WAIT_SECONDS = 5;

  private final double[] expected;
  private final double[][] ways;
  private final double[] matraSeconds;
  private final List<Onset> onsets;
  private final PairingPrices prices;
  private final int[] entryPlaces;

  /**
   * Prepares to follow.
   *
   * @param ways when each sollu falls, in seconds at the tempo of the score, in each way to say it;
   *     the first is as written
   * @param matraSeconds the length of each sollu's matra at that tempo; 0 if it is not known
   * @param entries whether a performer may begin again at that sollu
   * @param onsets what was heard, in order of time
   */
  ScoreFollower(double[][] ways, double[] matraSeconds, boolean[] entries, List<Onset> onsets) {
    this.ways = ways;
    this.expected = ways[0];
    this.matraSeconds = matraSeconds;
    entryPlaces = IntStream.range(0, entries.length).filter(k -> entries[k]).toArray();
    this.onsets = List.copyOf(onsets);
    prices = new PairingPrices(this.onsets, expected.length);
  }

  /**
   * A way to pair.
   *
   * @param said which sollu is which onset, in order of time
   * @param score how likely it is, the more the likelier
   */
  record Path(List<Alignment.Said> said, double score) {}

  /**
   * The best way to pair.
   *
   * @param model what is known of the performer
   * @param count of so many onsets, from the first
   * @param most so many places are followed
   */
  Path follow(PairingModel model, int count, int most) {
    return follow(model, count, most, true);
  }

  /**
   * The best way to pair by a performer who begins at the beginning and never goes back.
   *
   * @param model what is known of the performer
   * @param count of so many onsets, from the first
   * @param most so many places are followed
   */
  Path followOnce(PairingModel model, int count, int most) {
    return follow(model, count, most, false);
  }

  private Path follow(PairingModel model, int count, int most, boolean goesBack) {
    Intervals intervals = new Intervals(ways, matraSeconds, model);
    PlaceDraft.Places[] places = new PlaceDraft.Places[count];
    RestartPoint restart =
        new RestartPoint(
            onsets,
            prices.extraCosts(),
            entryPlaces,
            PairingPrices.RESTART_SECONDS,
            PairingPrices.RESTART);
    RestartPoint repeat =
        new RestartPoint(
            onsets,
            prices.extraCosts(),
            entryPlaces,
            PairingPrices.REPEAT_SECONDS,
            PairingPrices.REPEAT);
    PlaceDraft draft = new PlaceDraft(expected.length);
    for (int j = 0; j < count; j++) {
      int onset = j;
      draft.clear();
      repeat.advanceTo(places, j);
      restart.advanceTo(places, j);
      begin(draft, j, goesBack, restart.isOpen(), model.stretch());
      if (goesBack) {
        repeat.offerTo(draft, j);
        restart.offerTo(draft, j);
      }
      for (int from = j - 1; from >= Math.max(0, j - 1 - MOST_EXTRA); from--) {
        goOn(draft, places[from], from, j, model, intervals);
      }
      double pair = PairingPrices.pair(onsets.get(j));
      draft.add(k -> pair + model.sollus().gain(k, onset));
      places[j] =
          draft.best(
              j < FIRST_ONSETS && model.lagDoubt() > 0 ? Math.max(most, FIRST_PLACES) : most);
    }
    return traced(places, count, model.stretch());
  }

  /** The take may begin with any entry, with one of the first sollus, or in the midst of all. */
  private void begin(PlaceDraft draft, int j, boolean anywhere, boolean anew, double stretch) {
    double before = prices.before(j, matraSeconds[0] * stretch);
    for (int k = 0; k <= Math.min(PairingPrices.MOST_MISSED_AT_END, expected.length - 1); k++) {
      draft.offer(k, -before - PairingPrices.missedAtEnd(k), -1, -1);
    }
    for (int k : anew || !anywhere ? new int[0] : entryPlaces) {
      draft.offer(k, -before - PairingPrices.LATE, -1, -1);
    }
    for (int k = 0; anywhere && j < PairingPrices.ANYWHERE_ONSETS && k < expected.length; k++) {
      draft.offer(k, -before - PairingPrices.ANYWHERE, -1, -1);
    }
  }

  private void goOn(
      PlaceDraft draft,
      PlaceDraft.Places places,
      int from,
      int j,
      PairingModel model,
      Intervals intervals) {
    double took = onsets.get(j).seconds() - onsets.get(from).seconds();
    double extra = prices.extra(from, j);
    for (int p = 0; p < places.sollu().length; p++) {
      int k = places.sollu()[p];
      double stretch = model.stretch() * places.rate()[p];
      double late = places.lateSeconds()[p];
      double base = places.score()[p] - extra;
      if (draft.isHopeless(base)) {
        continue;
      }
      int last = Math.min(expected.length - 1, k + 1 + PairingPrices.MOST_MISSED);
      for (int next = k + 1; next <= last; next++) {
        double asked = (expected[next] - expected[k]) * stretch;
        if (asked > took * MOST_APART + APART_SECONDS && next > k + 1) {
          break;
        }
        if (took > asked * MOST_APART + APART_SECONDS
            && (next > k + PairingPrices.MOST_MISSED_IN_WAIT
                || took > asked + LONGEST_WAIT_SECONDS)) {
          continue;
        }
        double value = base - PairingPrices.missed(next - k - 1);
        if (!draft.wants(next, value)) {
          continue;
        }
        double cost = intervals.cost(k, next, took + late, stretch);
        if (cost > Intervals.MOST_COST) {
          continue;
        }
        double newLate = 0;
        double rate = places.rate()[p];
        if (model.tracks() && !intervals.jumped() && asked > 0) {
          newLate = intervals.lateSeconds();
          rate = TempoFilter.rate(rate, intervals.slowerSeconds() / asked);
        }
        draft.offer(next, value - cost - TempoFilter.strain(rate), from, p, newLate, rate);
      }
    }
  }

  private Path traced(PlaceDraft.Places[] places, int count, double stretch) {
    double best = Double.NEGATIVE_INFINITY;
    int j = -1;
    int p = -1;
    double matra = matraSeconds[expected.length - 1] * stretch;
    for (int at = 0; at < count; at++) {
      for (int q = 0; q < places[at].sollu().length; q++) {
        int unsaid = expected.length - 1 - places[at].sollu()[q];
        double score = places[at].score()[q] - prices.after(at, count, unsaid, matra);
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
