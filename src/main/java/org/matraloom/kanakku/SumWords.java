package org.matraloom.kanakku;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
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
    return summed(landing, Span::matras, landing.matras(), "matra")
        + "; "
        + summed(landing, Span::beats, landing.beats(), "beat")
        + LengthWords.avartanas(landing.performance()).map(" = "::concat).orElse("")
        + ".";
  }

  private static String summed(
      Landing landing, Function<Span, Ratio> part, Ratio total, String unit) {
    List<Span> spans =
        landing.performance().spans().stream().filter(span -> span.beats().signum() > 0).toList();
    if (spans.size() < 2 || spans.size() > MOST_SUMMANDS) {
      return counted(total, unit);
    }
    return spans.stream().map(part).map(Ratio::toMixed).collect(Collectors.joining(" + "))
        + " = "
        + counted(total, unit);
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
