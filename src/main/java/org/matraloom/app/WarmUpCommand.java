package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Runs commands on a short piece, so that the launcher can archive their classes; prints nothing.
 */
@Command(name = "warm-up", hidden = true, description = "Load what short commands need.")
final class WarmUpCommand implements Callable<Integer> {

  private static final String SCORE = "SCORE";
  private static final String TRACK = "TRACK";

  private static final List<String> COMMANDS =
      List.of(
          "check SCORE",
          "check --json SCORE",
          "breaths SCORE",
          "events SCORE",
          "shape SCORE",
          "fit SCORE",
          "render SCORE -o TRACK --rounds 1",
          "take SCORE TRACK --no-log",
          "talas adi",
          "--version",
          "--help");

  @Spec private CommandSpec command;

  @Override
  public Integer call() throws IOException {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Program program = (Program) command.root().userObject();
    Path score = Files.createTempFile("warm-up", ".loom");
    Path track = Files.createTempFile("warm-up", ".wav");
    try {
      Files.writeString(score, DemoScore.text());
      for (String line : COMMANDS) {
        String[] words = line.split(" ");
        for (int at = 0; at < words.length; at++) {
          words[at] =
              words[at].equals(SCORE)
                  ? score.toString()
                  : words[at].equals(TRACK) ? track.toString() : words[at];
        }
        program.runAlso(nowhere, nowhere, words);
      }
    } finally {
      Files.delete(score);
      Files.delete(track);
    }
    return ExitCode.DONE;
  }
}
