package org.matraloom.app;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Performance;
import picocli.CommandLine.Option;

/** Which rounds of a score are taken. */
final class RoundsOption {

  private static final Pattern ROUNDS = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");

  @Option(
      names = "--rounds",
      paramLabel = "N[-M]",
      description = "Only these rounds, such as 3 or 2-3; each stays at its place in the tala.")
  private String rounds;

  boolean isGiven() {
    return rounds != null;
  }

  Performance of(Performance whole) {
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
