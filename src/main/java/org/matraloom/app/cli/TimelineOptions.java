package org.matraloom.app.cli;

import java.util.function.Supplier;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathSettings;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.FrameClock;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which rounds of a score are laid out, and the count-in before them. */
public final class TimelineOptions {

  /**
   * A timeline and the breath plan that goes with it.
   *
   * @param timeline what is heard
   * @param plan where to breathe, the same for all that is shown and heard
   */
  public record Shown(Timeline timeline, Supplier<BreathPlan> plan) {}

  @Option(
      names = "--count-in",
      paramLabel = "N",
      defaultValue = "1",
      description = "Avartanas counted before the start, 0 to 16 (default ${DEFAULT-VALUE}).")
  private int countIn;

  @Mixin private RoundsOption rounds;

  @Mixin private LeadInOptions leadIn;

  @Option(
      names = "--breath-cue",
      description = "Plan the breaths and cue each with the sound of an inhalation.")
  private boolean breathCue;

  @Mixin private BreathOptions breaths;

  /**
   * Lays out the rounds that were chosen, with the count-in, the lead-in and the breaths asked for.
   *
   * @param composition the piece at its tempo
   * @return the timeline
   * @throws UserError if there are no such rounds, or the count-in is too long
   */
  public Timeline timeline(Composition composition) {
    if (breaths.isGiven() && !breathCue) {
      throw BreathOptions.unheard();
    }
    return shown(composition).timeline();
  }

  /**
   * What a second reciter says beside it.
   *
   * @param composition what the second one says, from the same start on
   * @return its timeline, with the same count-in
   * @throws UserError if only some rounds are asked for
   */
  public Timeline beside(Composition composition) {
    if (rounds.isGiven()) {
      throw new UserError(
          "--rounds takes one reciter, and the score has two; add --reciter 1 or --reciter 2");
    }
    return ScoreTimeline.of(Performance.of(composition), countIn);
  }

  /**
   * What is heard, with the plan for what is shown beside it.
   *
   * @param composition what is said
   * @return its timeline and its breaths
   */
  public Shown shown(Composition composition) {
    if (countIn < 0 || countIn > ScoreTimeline.MOST_COUNT_IN) {
      throw new UserError(
          "--count-in takes 0 to " + ScoreTimeline.MOST_COUNT_IN + " avartanas, given " + countIn);
    }
    Performance performance = rounds.of(Performance.of(composition));
    Timeline timeline = leadIn.before(ScoreTimeline.of(performance, countIn));
    if (!breathCue) {
      return new Shown(timeline, () -> breaths.plan(performance));
    }
    BreathPlan plan = breaths.plan(performance);
    return new Shown(new BreathTimeline(timeline, plan), () -> plan);
  }

  /**
   * The settings of the breath plan.
   *
   * @return as the user has given them, or the usual ones
   */
  public BreathSettings breaths() {
    return breaths.settings();
  }

  /**
   * How much is counted in.
   *
   * @return avartanas, 0 to 16
   */
  public int countInAvartanas() {
    return countIn;
  }

  /**
   * Turns the beats of a timeline into frames.
   *
   * @param timeline the timeline
   * @param rate frames a second
   * @return the clock
   * @throws UserError if the rate is not from 8,000 to 192,000
   */
  public FrameClock clock(Timeline timeline, int rate) {
    if (rate < 8_000 || rate > 192_000) {
      throw new UserError("--rate takes 8000 to 192000 frames a second, given " + rate);
    }
    return timeline.clock(rate);
  }
}
