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
 * @param grade how far it is from what a performer would do: 0 for a start and a landing on whole
 *     beats and changes of nadai on samam, more for half beats, other changes and other matras, far
 *     more where no matra of a round falls together with a clap
 * @param performance the rounds laid out in time
 */
public record FitAnswer(
    RoundPlan plan,
    int matras,
    int waitMatras,
    Ratio start,
    Ratio eduppu,
    int grade,
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
    return beats().dividedBy(performance.avartana().beats());
  }

  /**
   * Whether it can be counted on paper and hardly be said: a round never meets a clap.
   *
   * @return true if so
   */
  public boolean isHardlyPlayable() {
    return grade >= CountedPlan.HARDLY_PLAYABLE;
  }

  /**
   * The rounds of which no matra falls together with a clap.
   *
   * @return where such rounds come in, in order
   */
  public List<Entrance> roundsOffTheClaps() {
    return Entrance.of(performance).stream().filter(entrance -> !entrance.meetsClaps()).toList();
  }

  /**
   * The rounds in which the nadai changes while a kriya is still sounding; hard to say, not wrong.
   * Rounds that never meet a clap are told apart.
   *
   * @return where such rounds come in, in order
   */
  public List<Entrance> changesInsideABeat() {
    return Entrance.of(performance).stream()
        .filter(entrance -> entrance.changesNadai() && entrance.insideBeat())
        .filter(Entrance::meetsClaps)
        .toList();
  }
}
