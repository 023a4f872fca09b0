package org.matraloom.kanakku;

import java.util.Optional;
import org.matraloom.score.Closing;
import org.matraloom.score.Performance;

/** Words for how a piece ends: with its last matra, or with a stroke on the landing itself. */
public final class ClosingWords {

  private ClosingWords() {}

  /**
   * What it is that falls on the landing.
   *
   * @param performance what is performed
   * @return a clause without its place, such as "the last matra ends"
   */
  public static String ends(Performance performance) {
    Optional<Closing.Stroke> stroke = performance.closing().stroke();
    return stroke.isPresent()
        ? "the last stroke, " + stroke.get().sollu().spelling() + ", falls"
        : "the last matra ends";
  }

  /**
   * How long the tala is shown after the landing.
   *
   * @param performance what is performed
   * @return a sentence that begins with a space; empty if it stops there
   */
  public static String goesOn(Performance performance) {
    int avartanas = performance.closing().avartanas();
    return avartanas == 0
        ? ""
        : " The tala goes on for " + avartanas + (avartanas == 1 ? " avartana." : " avartanas.");
  }
}
