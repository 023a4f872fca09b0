package org.matraloom.app.hear;

import org.matraloom.app.cli.UserError;
import org.matraloom.log.TempoRule;
import picocli.CommandLine.Option;

/** When the next tempo is another one. */
final class TempoRuleOptions {

  @Option(
      names = "--clean-in-a-row",
      paramLabel = "N",
      description = "Clean takes in a row before going up (default: ${DEFAULT-VALUE}).")
  private int clean = TempoRule.USUAL.cleanInARow();

  @Option(
      names = "--up",
      paramLabel = "BPM",
      description = "How far up, in beats a minute (default: ${DEFAULT-VALUE}).")
  private double up = TempoRule.USUAL.upBpm();

  @Option(
      names = "--misses-in-a-row",
      paramLabel = "N",
      description = "Misses in a row before going down (default: ${DEFAULT-VALUE}).")
  private int misses = TempoRule.USUAL.missesInARow();

  @Option(
      names = "--down",
      paramLabel = "BPM",
      description = "How far down, in beats a minute (default: ${DEFAULT-VALUE}).")
  private double down = TempoRule.USUAL.downBpm();

  TempoRule rule() {
    try {
      return new TempoRule(clean, up, misses, down);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
