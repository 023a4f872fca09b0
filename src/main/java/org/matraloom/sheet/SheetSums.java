package org.matraloom.sheet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.matraloom.kanakku.ClosingWords;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** What a piece comes to, and whether it lands, as a sheet says it. */
final class SheetSums {

  private static final int MOST_SUMMANDS = 8;

  private final Performance performance;
  private final Avartana avartana;

  SheetSums(Performance performance) {
    this.performance = performance;
    this.avartana = performance.avartana();
  }

  /** The sum of all rounds and silences, in matras and in beats. */
  String sum() {
    Landing landing = Landing.of(performance);
    return summed(Span::matras, landing.matras(), "matra")
        + "; "
        + summed(Span::beats, landing.beats(), "beat")
        + LengthWords.avartanas(performance).map(" = "::concat).orElse("")
        + ".";
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
        + counted(miss.signum() < 0 ? miss.negate() : miss, "matra")
        + " too "
        + side
        + " for "
        + eduppu
        + ".";
  }

  private String summed(Function<Span, Ratio> part, Ratio total, String unit) {
    List<Span> spans =
        performance.spans().stream().filter(span -> span.beats().signum() > 0).toList();
    if (spans.size() < 2 || spans.size() > MOST_SUMMANDS) {
      return counted(total, unit);
    }
    return spans.stream().map(part).map(Ratio::toMixed).collect(Collectors.joining(" + "))
        + " = "
        + counted(total, unit);
  }

  /** A number with its unit, which has an s behind more than one. */
  static String counted(Ratio number, String unit) {
    return number.toMixed() + " " + (number.compareTo(Ratio.ONE) <= 0 ? unit : unit + "s");
  }
}
