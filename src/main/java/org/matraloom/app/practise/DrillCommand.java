package org.matraloom.app.practise;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes practice material; its subcommands are the drills. */
@Command(
    name = "drill",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make practice material: sound to practise with, and its score to edit and print.",
      "Without -o and --score the score is printed."
    },
    subcommands = {
      DrillSwitchCommand.class,
      DrillNadaisCommand.class,
      DrillSpeedsCommand.class,
      DrillJoinCommand.class,
      DrillLoopCommand.class,
      DrillAnswerCommand.class,
      DrillLadderCommand.class,
      DrillClicksCommand.class,
      DrillFadeCommand.class
    },
    footer = {
      "",
      "Example: matraloom drill switch 4 5 --every halving --tempo 60 -o switch.wav",
      "Rest your voice between drills; stop on pain or dizziness. Keep the level low."
    })
public final class DrillCommand implements Runnable {

  @Spec private CommandSpec command;

  @Override
  public void run() {
    command.commandLine().usage(command.commandLine().getOut());
  }
}
