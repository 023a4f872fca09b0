package org.matraloom.kanakku;

import java.util.Optional;
import org.matraloom.score.Performance;
import org.matraloom.score.TwoReciters;
import org.matraloom.score.TwoReciters.SideBySide;

/**
 * Where each of two reciters ends, and whether they end together where they stand side by side.
 *
 * @param reciters what each of them says
 * @param first where the first one ends
 * @param second where the second one ends, whether that is judged or not
 */
public record BothLandings(TwoReciters reciters, Landing first, Landing second) {

  /**
   * Proves or refutes what two reciters do.
   *
   * @param reciters what each of them says, at least one round each
   * @return the proof
   */
  public static BothLandings of(TwoReciters reciters) {
    return new BothLandings(
        reciters,
        Landing.of(Performance.of(reciters.first())),
        Landing.of(Performance.of(reciters.second())));
  }

  /**
   * Where the second reciter lands; one that is silent beside the last line lands nowhere.
   *
   * @return the landing, if it is judged
   */
  public Optional<Landing> judgedSecond() {
    return reciters.endsThePiece() ? Optional.of(second) : Optional.empty();
  }

  /**
   * Whether all is as it should be.
   *
   * @return true if both land, every bar and place of both is true, and they end together wherever
   *     they stand side by side
   */
  public boolean holds() {
    return first.lands()
        && judgedSecond().map(Landing::lands).orElse(true)
        && reciters.stretches().stream().allMatch(SideBySide::isEven)
        && claimsHold(first.performance())
        && claimsHold(second.performance());
  }

  private static boolean claimsHold(Performance performance) {
    return FalseClaim.in(performance).isEmpty() && ScoreFindings.placesHold(performance);
  }
}
