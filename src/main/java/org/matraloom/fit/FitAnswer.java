package org.matraloom.fit;

import java.util.List;
import org.matraloom.kanakku.Entrance;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * One way to land, laid out and looked at.
 *
 * @param plan the rounds
 * @param matras the length of the phrase
 * @param waitMatras the length of every open wait, 0 without one
 * @param start where it starts, in beats after samam
 * @param eduppu where it lands, in beats after samam
 * @param performance the rounds laid out in time
 */
public record FitAnswer(
    RoundPlan plan,
    int matras,
    int waitMatras,
    Ratio start,
    Ratio eduppu,
    Performance performance) {

  /**
   * The length from the start to the landing.
   *
   * @return beats
   */
  public Ratio beats() {
    return performance.beats();
  }

  /**
   * The length in cycles.
   *
   * @return avartanas
   */
  public Ratio avartanas() {
    return beats().dividedBy(performance.composition().avartana().beats());
  }

  /**
   * The rounds in which the nadai changes while a kriya is still sounding; hard to say, not wrong.
   *
   * @return where such rounds come in, in order
   */
  public List<Entrance> changesInsideABeat() {
    return Entrance.of(performance).stream()
        .filter(entrance -> entrance.changesNadai() && entrance.insideBeat())
        .toList();
  }
}
