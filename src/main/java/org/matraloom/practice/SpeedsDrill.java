package org.matraloom.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * Trikala: a phrase in three speeds over one steady beat, each as often as fills the same time.
 *
 * <p>The order first speed, tisram, second speed, third speed is a common one (forum threads,
 * rasikas.org p=45160 and t=4457): 1, 1 1/2, 2 and 4 times as dense.
 */
public final class SpeedsDrill {

  private static final int MOST_PASSES = 100;

  private SpeedsDrill() {}

  /**
   * Says a phrase in all speeds.
   *
   * @param composition the score
   * @param phrase the phrase
   * @param tisram whether the speed of three for two comes between the first and the second; only
   *     where the nadai times three is even
   * @param backwards whether it goes from the fastest to the slowest
   * @param passes how often, 1 to 100
   * @return the drill, from samam
   * @throws IllegalArgumentException if there is no such phrase or a number is out of range
   */
  public static Composition of(
      Composition composition, String phrase, boolean tisram, boolean backwards, int passes) {
    if (!composition.phrases().containsKey(phrase)) {
      throw new IllegalArgumentException(
          "there is no phrase " + phrase + "; the score has " + composition.phrases().keySet());
    }
    Drill.requireRange("the number of passes", passes, 1, MOST_PASSES);
    Span.Round round = Performance.of(composition).rounds().get(0);
    int nadai = round.nadai();
    List<Step> speeds = new ArrayList<>();
    speeds.add(new Step.Say(phrase, 2, nadai, 1));
    if (tisram) {
      int triple = nadai * 3 / 2;
      if (nadai % 2 != 0 || triple > Composition.HIGHEST_NADAI) {
        throw new IllegalArgumentException(
            "tisram between the speeds needs a nadai of 4 or 6, the score has " + nadai);
      }
      speeds.add(new Step.Say(phrase, 3, triple, 1));
    }
    speeds.add(new Step.Say(phrase, 4, nadai, 2));
    speeds.add(new Step.Say(phrase, 8, nadai, 3));
    if (backwards) {
      Collections.reverse(speeds);
    }
    List<Step> plan = new ArrayList<>();
    for (int pass = 0; pass < passes; pass++) {
      for (Step speed : speeds) {
        plan.add(speed);
        plan.add(new Step.Until(Ratio.ZERO));
      }
    }
    return Drill.of(
        phrase + " in three speeds",
        composition.avartana(),
        composition.tempo(),
        Ratio.ZERO,
        composition.phrases(),
        plan);
  }
}
