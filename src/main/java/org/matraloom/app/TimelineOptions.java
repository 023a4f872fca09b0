package org.matraloom.app;

import org.matraloom.breath.BreathPlanner;
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
final class TimelineOptions {

  @Option(
      names = "--count-in",
      paramLabel = "N",
      defaultValue = "1",
      description = "Avartanas counted before the start, 0 to 16 (default ${DEFAULT-VALUE}).")
  private int countIn;

  @Mixin private RoundsOption rounds;

  @Option(
      names = "--lead-in",
      description = "Speak plain words from samam up to a start off samam.")
  private boolean leadIn;

  @Option(
      names = "--lead-in-avartanas",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "With --lead-in: whole avartanas of words before that, as far as is counted in.")
  private int leadInAvartanas;

  @Option(
      names = "--breath-cue",
      description = "Plan the breaths and cue each with the sound of an inhalation.")
  private boolean breathCue;

  Timeline timeline(Composition composition) {
    if (countIn < 0 || countIn > ScoreTimeline.MOST_COUNT_IN) {
      throw new UserError(
          "--count-in takes 0 to " + ScoreTimeline.MOST_COUNT_IN + " avartanas, given " + countIn);
    }
    Performance performance = rounds.of(Performance.of(composition));
    Timeline counted = ScoreTimeline.of(performance, countIn);
    Timeline timeline =
        leadIn ? SpokenLeadIn.before(counted, Math.max(0, leadInAvartanas)) : counted;
    return breathCue
        ? new BreathTimeline(timeline, BreathPlanner.plan(performance, BreathSettings.study()))
        : timeline;
  }

  int countInAvartanas() {
    return countIn;
  }

  FrameClock clock(Timeline timeline, int rate) {
    if (rate < 8_000 || rate > 192_000) {
      throw new UserError("--rate takes 8000 to 192000 frames a second, given " + rate);
    }
    return timeline.clock(rate);
  }
}
