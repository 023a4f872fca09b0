package org.matraloom.app.prove;

import java.nio.file.Path;
import java.util.OptionalInt;
import org.matraloom.app.cli.UserError;
import picocli.CommandLine.Option;

/** How many answers are shown, and which repair is written where. */
final class RepairOptions {

  private static final int A_SCREENFUL = 10;
  private static final int MOST = 10_000;

  @Option(
      names = "--apply",
      paramLabel = "K",
      description = "Write way K into a copy of the score; your layout and notes stay.")
  private Integer number;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "The copy to write.")
  private Path target;

  @Option(names = "--all", description = "List everything, not only a screenful; at most 10,000.")
  private boolean all;

  /** What to say of those that are not shown. */
  String more(long more) {
    return "... and " + more + (all ? " more." : " more; --all lists them.");
  }

  int most() {
    return all ? MOST : A_SCREENFUL;
  }

  OptionalInt number() {
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  void refuseApply() {
    if (number != null) {
      throw new UserError("--apply needs a score: name a .loom file");
    }
  }

  /** Where the copy goes; never the score itself. */
  Path target(Path score) {
    if (target == null) {
      throw new UserError("--apply needs -o and the name of the copy, such as -o mended.loom");
    }
    if (target.toAbsolutePath().normalize().equals(score.toAbsolutePath().normalize())) {
      throw new UserError(target + " is the score itself; give the copy another name");
    }
    return target;
  }
}
