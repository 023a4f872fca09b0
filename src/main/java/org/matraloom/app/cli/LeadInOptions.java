package org.matraloom.app.cli;

import java.util.Optional;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.schedule.Timeline;
import picocli.CommandLine.Option;

/** Whether plain words lead in, and how many avartanas of them. */
public final class LeadInOptions {

  @Option(names = "--lead-in", description = "Plain words from samam up to a start off samam.")
  private boolean leadIn;

  @Option(
      names = "--lead-in-avartanas",
      paramLabel = "N",
      description = {
        "And N whole avartanas of words before that, 0 to " + ScoreTimeline.MOST_COUNT_IN + ";",
        "heard as far as they are counted in."
      })
  private Integer avartanas;

  /**
   * How many whole avartanas of words come before those from samam.
   *
   * @return 0 to 16; empty if no words lead in
   * @throws UserError if it is another number
   */
  public Optional<Integer> avartanas() {
    if (avartanas != null && (avartanas < 0 || avartanas > ScoreTimeline.MOST_COUNT_IN)) {
      throw new UserError(
          "--lead-in-avartanas takes 0 to "
              + ScoreTimeline.MOST_COUNT_IN
              + " avartanas, given "
              + avartanas);
    }
    return leadIn && avartanas == null ? Optional.of(0) : Optional.ofNullable(avartanas);
  }

  /**
   * A timeline with the words in it.
   *
   * @param counted what is heard, with its count-in
   * @return the same if no words are asked for, or there is no room for them
   */
  Timeline before(Timeline counted) {
    return SpokenLeadIn.before(counted, avartanas());
  }
}
