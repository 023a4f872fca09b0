package org.matraloom.app;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Performance;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proves or refutes that a score lands. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Prove that a score lands, with its sums; exit code 1 if it misses.",
    footer = {"", "Example: matraloom check samples-synth/gutter-song.loom"})
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    Performance performance = Performance.of(score.read());
    Landing landing = Landing.of(performance);
    if (json) {
      LandingJson.write(landing, command.commandLine().getOut());
    } else {
      new LandingText(landing).print(command.commandLine().getOut());
    }
    boolean claimsHold = FalseClaim.in(performance).isEmpty();
    return landing.lands() && claimsHold ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }
}
