package org.matraloom.app;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.FrameClock;
import picocli.CommandLine.Option;

/** Which rounds of a score are laid out, and the count-in before them. */
final class TimelineOptions {

  private static final Pattern ROUNDS = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");

  @Option(
      names = "--count-in",
      paramLabel = "N",
      defaultValue = "1",
      description = "Avartanas counted before the start, 0 to 16 (default ${DEFAULT-VALUE}).")
  private int countIn;

  @Option(
      names = "--rounds",
      paramLabel = "N[-M]",
      description = "Only these rounds, such as 3 or 2-3; each stays at its place in the tala.")
  private String rounds;

  @Option(
      names = "--breath-cue",
      description = "Plan the breaths and cue each with the sound of an inhalation.")
  private boolean breathCue;

  Timeline timeline(Composition composition) {
    if (countIn < 0 || countIn > ScoreTimeline.MOST_COUNT_IN) {
      throw new UserError(
          "--count-in takes 0 to " + ScoreTimeline.MOST_COUNT_IN + " avartanas, given " + countIn);
    }
    Performance performance = chosen(Performance.of(composition));
    Timeline timeline = ScoreTimeline.of(performance, countIn);
    return breathCue
        ? new BreathTimeline(timeline, BreathPlanner.plan(performance, BreathSettings.study()))
        : timeline;
  }

  FrameClock clock(Timeline timeline, int rate) {
    if (rate < 8_000 || rate > 192_000) {
      throw new UserError("--rate takes 8000 to 192000 frames a second, given " + rate);
    }
    return timeline.clock(rate);
  }

  private Performance chosen(Performance whole) {
    if (rounds == null) {
      return whole;
    }
    int last = whole.rounds().size();
    Matcher matcher = ROUNDS.matcher(rounds.strip());
    if (matcher.matches()) {
      int from = Integer.parseInt(matcher.group(1));
      int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
      if (from >= 1 && from <= to && to <= last) {
        return whole.onlyRounds(from, to);
      }
    }
    throw new UserError(
        "--rounds takes a round or a range from 1 to " + last + ", such as 2-3; given " + rounds);
  }
}
