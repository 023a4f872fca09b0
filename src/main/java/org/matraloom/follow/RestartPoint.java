package org.matraloom.follow;

import java.util.List;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;

/** The best that could be broken off for a new beginning, at an entry of the score. */
final class RestartPoint {

  private final List<Onset> onsets;
  private final double[] extraCost;
  private final int[] entryPlaces;
  private final double pauseSeconds;
  private final double cost;
  private double best = Double.NEGATIVE_INFINITY;
  private int onset = -1;
  private int place = -1;
  private int sollu = -1;
  private int seen;

  /**
   * Nothing has been said yet.
   *
   * @param onsets what was heard
   * @param extraCost what the onsets before each cost if they are no sollus
   * @param entryPlaces where one may begin
   * @param pauseSeconds how long nothing is said before
   * @param cost what a new beginning costs
   */
  RestartPoint(
      List<Onset> onsets, double[] extraCost, int[] entryPlaces, double pauseSeconds, double cost) {
    this.onsets = onsets;
    this.extraCost = extraCost;
    this.entryPlaces = entryPlaces;
    this.pauseSeconds = pauseSeconds;
    this.cost = cost;
  }

  /** Takes in what may have been said long enough before an onset. */
  void advanceTo(PlaceDraft.Places[] places, int j) {
    double until = onsets.get(j).seconds() - pauseSeconds;
    while (seen < j && onsets.get(seen).seconds() <= until) {
      for (int p = 0; p < places[seen].sollu().length; p++) {
        double score = places[seen].score()[p] + extraCost[seen + 1];
        if (score > best) {
          best = score;
          onset = seen;
          place = p;
          sollu = places[seen].sollu()[p];
        }
      }
      seen++;
    }
  }

  /** Whether breaking off is better than not having begun. */
  boolean isOpen() {
    return best > 0;
  }

  /**
   * Offers all entries that were passed to an onset, if nothing sure was heard in the pause before
   * it.
   */
  void offerTo(PlaceDraft draft, int j) {
    int before = j - 1;
    while (before >= 0 && onsets.get(before).confidence() < OnsetCurve.SURE_CONFIDENCE) {
      before--;
    }
    double pause =
        before < 0 ? pauseSeconds : onsets.get(j).seconds() - onsets.get(before).seconds();
    if (onset >= 0 && pause >= pauseSeconds) {
      for (int k : entryPlaces) {
        if (k > sollu) {
          break;
        }
        draft.offer(k, best - extraCost[j] - cost, onset, place);
      }
    }
  }
}
