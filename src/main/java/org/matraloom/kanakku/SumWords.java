package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Says what a piece comes to, as it is added up on paper. */
public final class SumWords {

  /** A longer sum is told by its total. */
  private static final int MOST_SUMMANDS = 8;

  private SumWords() {}

  /**
   * The sum of all rounds and silences.
   *
   * @param landing of the piece
   * @return such as "16 + 16 = 32 matras; 4 + 4 = 8 beats = 1 avartana."
   */
  public static String of(Landing landing) {
    Optional<String> avartanas = LengthWords.avartanas(landing.performance());
    return summed(landing, true, landing.matras())
        + "; "
        + summed(landing, false, landing.beats())
        + (avartanas.isPresent() ? " = " + avartanas.get() : "")
        + ".";
  }

  private static String summed(Landing landing, boolean inMatras, Ratio total) {
    String unit = inMatras ? "matra" : "beat";
    List<String> summands = new ArrayList<>();
    for (Span span : landing.performance().spans()) {
      if (span.beats().signum() > 0) {
        if (summands.size() == MOST_SUMMANDS) {
          return counted(total, unit);
        }
        summands.add((inMatras ? span.matras() : span.beats()).toMixed());
      }
    }
    return summands.size() < 2
        ? counted(total, unit)
        : String.join(" + ", summands) + " = " + counted(total, unit);
  }

  /**
   * A number with its unit, which has an s behind more than one.
   *
   * @param number beats or matras, not negative
   * @param unit in the singular
   * @return such as "3 1/5 beats" or "1/2 matra"
   */
  public static String counted(Ratio number, String unit) {
    boolean one = number.signum() > 0 && number.compareTo(Ratio.ONE) <= 0;
    return number.toMixed() + " " + (one ? unit : unit + "s");
  }
}
