package org.matraloom.kanakku;

import org.matraloom.form.Structure;
import org.matraloom.form.Yati;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.TwoReciters;

/**
 * What is to be known of a score at a glance.
 *
 * @param landing where it ends
 * @param barsHold whether every bar stands where an anga or an avartana ends
 * @param placesHold whether every line such as {@code at samam} is true, and a second reciter, if
 *     there is one, lands and goes together with the first
 * @param yati the shape of the purvanga of its first round
 */
public record ScoreFindings(Landing landing, boolean barsHold, boolean placesHold, Yati yati) {

  /**
   * Looks at a score.
   *
   * @param composition the score
   * @return what was found
   */
  public static ScoreFindings of(Composition composition) {
    Performance performance = Performance.of(composition);
    Span.Round round = performance.rounds().get(0);
    Yati yati = Structure.of(composition, round.phrase(), round.nadai()).yati();
    boolean barsHold = FalseClaim.in(performance).isEmpty();
    boolean placesHold = placesHold(performance) && othersHold(composition);
    return new ScoreFindings(Landing.of(performance), barsHold, placesHold, yati);
  }

  /** Whether a second reciter does what it should, if there is one. */
  private static boolean othersHold(Composition composition) {
    return !TwoReciters.in(composition) || BothLandings.of(TwoReciters.of(composition)).holds();
  }

  /**
   * Whether every place that is claimed is so.
   *
   * @param performance what is performed
   * @return true if there is no false claim
   */
  public static boolean placesHold(Performance performance) {
    for (PlaceClaim claim : PlaceClaim.in(performance)) {
      if (!claim.holds()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether it passes its check.
   *
   * @return true if it lands and no bar claims what is not so
   */
  public boolean passes() {
    return barsHold && placesHold && landing.lands();
  }
}
