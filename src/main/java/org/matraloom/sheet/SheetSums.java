package org.matraloom.sheet;

import org.matraloom.kanakku.ClosingWords;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.SumWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** What a piece comes to, and whether it lands, as a sheet says it. */
final class SheetSums {

  private final Performance performance;
  private final Avartana avartana;

  SheetSums(Performance performance) {
    this.performance = performance;
    this.avartana = performance.avartana();
  }

  /** The sum of all rounds and silences, in matras and in beats. */
  String sum() {
    return SumWords.of(Landing.of(performance));
  }

  /** Whether it lands, in a sentence. */
  String landing() {
    Landing landing = Landing.of(performance);
    String eduppu =
        avartana.goingOnAt(performance.endBeat()).say(performance.composition().eduppuBeat());
    if (landing.lands()) {
      return "Lands: "
          + ClosingWords.ends(performance)
          + " on "
          + eduppu
          + "."
          + ClosingWords.goesOn(performance);
    }
    Ratio miss = landing.missMatras();
    String side = miss.signum() > 0 ? "late" : "early";
    return "Misses: "
        + ClosingWords.ends(performance)
        + " on "
        + avartana.say(performance.endBeat())
        + ", "
        + SumWords.counted(miss.signum() < 0 ? miss.negate() : miss, "matra")
        + " too "
        + side
        + " for "
        + eduppu
        + ".";
  }
}
