package org.matraloom.app.cli;

import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.score.Performance;
import picocli.CommandLine.Option;

/** What one person can do on a breath. */
public final class BreathOptions {

  @Option(names = "--concert", description = "Allow stretches of 12 s and not only of 8 s.")
  private boolean concert;

  @Option(
      names = "--longest",
      paramLabel = "SECONDS",
      description = "The longest stretch without a breath, 2 to 60.")
  private ExactNumber longestSeconds;

  @Option(
      names = "--sollus",
      paramLabel = "N",
      description = "The most sollus in a stretch, 8 to 1000 (40 if not given).")
  private Integer longestSollus;

  @Option(
      names = "--shortest",
      paramLabel = "MS",
      description = "The shortest inhalation planned, 250 to 2000 (250 if not given).")
  private Integer shortestMs;

  @Option(
      names = "--whole-karvais",
      description = "Let every sound ring out; breathe only in silences.")
  private boolean wholeKarvais;

  @Option(
      names = "--fewest",
      description = "As few breaths as the limits allow, not as a reciter breathes.")
  private boolean fewest;

  /**
   * Whether any of them is given.
   *
   * @return true if the user has given at least one
   */
  public boolean isGiven() {
    return concert
        || wholeKarvais
        || fewest
        || longestSeconds != null
        || longestSollus != null
        || shortestMs != null;
  }

  /**
   * Refuses settings that change nothing that is heard.
   *
   * @return the error to throw
   */
  public static UserError unheard() {
    return new UserError("how to breathe is said, but breaths are heard only with --breath-cue");
  }

  /**
   * The plan of a run; whatever shows, speaks, sounds or judges breaths takes them from it.
   *
   * @param performance what is said, at its tempo
   * @return the plan, with the settings of the user
   */
  public BreathPlan plan(Performance performance) {
    return BreathPlanner.plan(performance, settings());
  }

  /**
   * What was asked for, on top of the settings for study or for a concert.
   *
   * @return the settings
   * @throws UserError if a number is out of its range
   */
  public BreathSettings settings() {
    BreathSettings usual = concert ? BreathSettings.concert() : BreathSettings.study();
    try {
      BreathSettings shortest = shortestMs == null ? usual : usual.withShortest(shortestMs);
      return shortest
          .withLongest(
              longestSeconds == null ? usual.longestSeconds() : longestSeconds.value(),
              longestSollus == null ? usual.longestSollus() : longestSollus)
          .withCutKarvai(!wholeKarvais)
          .by(fewest ? BreathSettings.Way.FEWEST : BreathSettings.Way.RECITER);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
