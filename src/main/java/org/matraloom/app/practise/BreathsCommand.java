package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathText;
import org.matraloom.breath.Cure;
import org.matraloom.breath.Cures;
import org.matraloom.score.Performance;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans where to breathe. */
@Command(
    name = "breaths",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Plan where to breathe, at the tempo and for every round.",
      "Exit code 1 if a stretch leaves no time to breathe; what would cure it is said."
    },
    footer = {
      "",
      "The figures are starting values; tune them to yourself, and stop on pain or dizziness.",
      "Example: matraloom breaths samples-synth/monsoon-ledger.loom --tempo 80 --concert"
    })
public final class BreathsCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Mixin private BreathOptions options;

  @Option(names = "--why", description = "Say of every breath why it is taken.")
  private boolean why;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    Performance performance = Performance.of(score.read());
    BreathPlan plan = options.plan(performance);
    List<Cure> cures = Cures.of(plan);
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      BreathJson.write(plan, cures, out);
    } else {
      out.print(BreathText.of(plan, cures, why, Paragraph::folded));
    }
    return plan.isPossible() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }
}
