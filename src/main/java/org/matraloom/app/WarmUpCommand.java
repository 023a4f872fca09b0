package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import org.matraloom.app.open.Samples;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Runs commands on a short piece, so that the launcher can archive their classes; prints nothing.
 */
@Command(name = "warm-up", hidden = true, description = "Load what short commands need.")
final class WarmUpCommand implements Callable<Integer> {

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
          "sheet SCORE -o SHEET",
          "talas adi",
          "talas",
          "sollus",
          "--version",
          "--help");

  /** What is asked of every sample: other talas, other lines than those of one piece. */
  private static final List<String> OF_SAMPLES = List.of("check SCORE", "breaths SCORE");

  @Spec private CommandSpec command;

  @Override
  public Integer call() throws IOException {
    Map<String, Path> files = new HashMap<>();
    try {
      files.put("SCORE", Files.createTempFile("warm-up", ".loom"));
      files.put("TRACK", Files.createTempFile("warm-up", ".wav"));
      files.put("SHEET", Files.createTempFile("warm-up", ".pdf"));
      run(DemoScore.text(), COMMANDS, files);
      for (String sample : Samples.NAMES) {
        run(Samples.text(sample), OF_SAMPLES, files);
      }
    } finally {
      for (Path file : files.values()) {
        Files.deleteIfExists(file);
      }
    }
    return ExitCode.DONE;
  }

  private void run(String score, List<String> lines, Map<String, Path> files) throws IOException {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Program program = (Program) command.root().userObject();
    Files.writeString(files.get("SCORE"), score);
    for (String line : lines) {
      String[] words = line.split(" ");
      for (int at = 0; at < words.length; at++) {
        Path file = files.get(words[at]);
        words[at] = file == null ? words[at] : file.toString();
      }
      program.runAlso(nowhere, nowhere, words);
    }
  }
}
