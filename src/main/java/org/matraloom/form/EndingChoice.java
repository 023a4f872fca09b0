package org.matraloom.form;

import java.util.Comparator;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * An ending judged for one tempo and nadai: whether its karvais let one breathe, and how easily it
 * is said. It ranks; it forbids nothing.
 *
 * @param ending the ending
 * @param karvaiSeconds how long the shorter karvai lasts
 * @param longestRunSeconds the longest stretch without a karvai in which one can breathe
 * @param cost how much speaks against it, 0 or more; lower is listed first
 */
public record EndingChoice(
    Ending ending, double karvaiSeconds, double longestRunSeconds, int cost) {

  /** Below this a karvai is too short to breathe in, in seconds (common practice). */
  public static final double CATCH_BREATH_SECONDS = 0.25;

  /** From here on a karvai is long enough for a full breath, in seconds (common practice). */
  public static final double FULL_BREATH_SECONDS = 0.6;

  /** A comfortable stretch without a breath, in seconds (common practice). */
  public static final double COMFORTABLE_RUN_SECONDS = 8;

  private static final int SHORTEST_PHRASE = 3;
  private static final int TRIVIAL = 4;

  /** What a karvai is good for. */
  public enum KarvaiBreath {
    /** No time to breathe. */
    NONE("no breath"),
    /** A quick, planned breath. */
    CATCH("catch breath"),
    /** A full breath. */
    FULL("full breath");

    private final String words;

    KarvaiBreath(String words) {
      this.words = words;
    }

    /**
     * The class in words.
     *
     * @return for example "catch breath"
     */
    public String words() {
      return words;
    }
  }

  /**
   * Judges all endings of a length.
   *
   * @param matras the length to fill
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   * @param tempo the tempo of the beat
   * @return the endings, the ones that are easiest to breathe and to say first
   */
  public static List<EndingChoice> rank(int matras, int nadai, int kalam, Tempo tempo) {
    Ratio matraSeconds = tempo.secondsOf(Ratio.of(1, (long) nadai * Composition.density(kalam)));
    return Endings.all(matras).stream()
        .map(ending -> judge(ending, matraSeconds.toDouble()))
        .sorted(Comparator.comparingInt(EndingChoice::cost))
        .toList();
  }

  /**
   * What the shorter karvai is good for.
   *
   * @return the class of breath
   */
  public KarvaiBreath breath() {
    return breath(karvaiSeconds);
  }

  private static KarvaiBreath breath(double seconds) {
    if (seconds < CATCH_BREATH_SECONDS) {
      return KarvaiBreath.NONE;
    }
    return seconds < FULL_BREATH_SECONDS ? KarvaiBreath.CATCH : KarvaiBreath.FULL;
  }

  private static EndingChoice judge(Ending ending, double matraSeconds) {
    double karvai = ending.shortestKarvai() * matraSeconds;
    double run = longestRun(ending, matraSeconds);
    int cost = breath(karvai) == KarvaiBreath.NONE ? 1 : 0;
    cost += run > COMFORTABLE_RUN_SECONDS ? 2 : 0;
    cost += ending.form() == Ending.Form.EQUAL ? 0 : 1;
    cost += ending.borrowed() == 0 ? 0 : 1;
    int timesAsLong = ending.longestKarvai() / ending.longestStatement();
    cost += ending.longestKarvai() > ending.longestStatement() ? timesAsLong : 0;
    cost += ending.longestStatement() > Lexicon.LARGEST_OWN_GROUP ? 1 : 0;
    int shortest = ending.statements().stream().mapToInt(Integer::intValue).min().orElse(0);
    cost += shortest < SHORTEST_PHRASE ? TRIVIAL + SHORTEST_PHRASE - shortest : 0;
    return new EndingChoice(ending, karvai, run, cost);
  }

  private static double longestRun(Ending ending, double matraSeconds) {
    double longest = 0;
    double run = 0;
    for (int i = 0; i < ending.statements().size(); i++) {
      run += ending.statements().get(i) * matraSeconds;
      longest = Math.max(longest, run);
      double karvai = i < ending.karvais().size() ? ending.karvais().get(i) * matraSeconds : 0;
      run = breath(karvai) == KarvaiBreath.NONE ? run + karvai : 0;
    }
    return longest;
  }
}
