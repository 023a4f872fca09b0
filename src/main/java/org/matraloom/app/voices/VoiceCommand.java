package org.matraloom.app.voices;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes and keeps voices of one's own; its subcommands say what is done with them. */
@Command(
    name = "voice",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a voice of recorded sollus, to be used with --voice NAME; hear, check and share it.",
      "Nothing leaves this machine unless you share it."
    },
    subcommands = {
      VoiceRecordCommand.class,
      VoiceMakeCommand.class,
      VoiceListCommand.class,
      VoiceCheckCommand.class,
      VoiceHearCommand.class,
      VoiceShareCommand.class,
      VoiceRemoveCommand.class
    },
    footer = {
      "",
      "Example: matraloom voice record river --owner \"Mira\"",
      "Speak at ease, as in a lesson; rest when the voice tires, and stop on pain."
    })
public final class VoiceCommand implements Runnable {

  @Spec private CommandSpec command;

  @Override
  public void run() {
    command.commandLine().usage(command.commandLine().getOut());
  }
}
