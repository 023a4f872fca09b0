package org.matraloom.app.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Performance;
import picocli.CommandLine.Option;

/** Which rounds of a score are taken. */
public final class RoundsOption {

  private static final Pattern ROUNDS = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");

  @Option(
      names = "--rounds",
      paramLabel = "N[-M]",
      description = "Only these rounds, such as 3 or 2-3; each stays at its place in the tala.")
  private String rounds;

  /**
   * Whether some rounds were chosen.
   *
   * @return false if all are taken
   */
  public boolean isGiven() {
    return rounds != null;
  }

  /**
   * The rounds that were chosen.
   *
   * @param whole all rounds of the score
   * @return the performance of the chosen ones
   * @throws UserError if there are no such rounds
   */
  public Performance of(Performance whole) {
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
