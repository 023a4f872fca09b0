package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.RoundsOption;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathText;
import org.matraloom.breath.Cure;
import org.matraloom.breath.Cures;
import org.matraloom.breath.KeptPlan;
import org.matraloom.notation.ScoreEditor;
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

  @Mixin private RoundsOption rounds;

  @Mixin private BreathOptions options;

  @Option(names = "--why", description = "Say of every breath why it is taken.")
  private boolean why;

  @Option(
      names = "--keep",
      paramLabel = "OUT.loom",
      description = "Write the score with the plan in it as breath marks.")
  private Path keep;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    if (keep != null && rounds.isGiven()) {
      throw new UserError(
          "--keep writes the plan of all rounds, for a mark speaks in each; leave --rounds out");
    }
    Performance performance = rounds.of(Performance.of(score.read()));
    BreathPlan plan = options.plan(performance);
    List<Cure> cures = Cures.of(plan);
    PrintWriter out = command.commandLine().getOut();
    if (keep != null) {
      keep(plan);
    }
    if (json) {
      BreathJson.write(plan, cures, out);
    } else {
      out.print(BreathText.of(plan, cures, why, Paragraph::folded));
    }
    return plan.isPossible() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private void keep(BreathPlan plan) throws IOException {
    KeptPlan kept = KeptPlan.of(plan);
    String text = Files.readString(score.file(), StandardCharsets.UTF_8);
    String marked = ScoreEditor.apply(text, score.file(), kept.edits(), score.lexicon());
    WholeFile.writeText(keep, file -> file.append(marked));
    command.commandLine().getErr().println(keptWords(kept));
  }

  private String keptWords(KeptPlan kept) {
    int count = kept.edits().size();
    String marks = keep + ": " + count + " breath mark" + (count == 1 ? "" : "s") + " written";
    return kept.added().isEmpty()
        ? marks + "."
        : marks
            + "; a mark speaks wherever its phrase is said, so there are "
            + "more breaths than planned, "
            + kept.added().size()
            + ".";
  }
}
