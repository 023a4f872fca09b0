package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** Types the commands of docs/practising.md; those that would make sound print their score. */
class PractisingPageTest {

  @Test
  void everyCommandOfThePageWorks() throws IOException {
    List<String> commands =
        Files.readAllLines(Path.of("docs", "practising.md")).stream()
            .filter(line -> line.startsWith("    ./matraloom "))
            .map(line -> line.strip().substring("./matraloom ".length()))
            .filter(line -> line.startsWith("drill") || line.startsWith("breaths"))
            .map(line -> line.replaceAll(" (-o|--score) \\S+", ""))
            .toList();
    assertTrue(commands.size() >= 12, "commands were found: " + commands);
    for (String command : commands) {
      CommandLineRun run = CommandLineRun.of(command.split(" "));
      assertTrue(
          run.code() == ExitCode.DONE || run.code() == ExitCode.CHECK_FAILED,
          command + ": " + run.err());
      assertTrue(!run.out().isEmpty() && run.err().isEmpty(), command + ": " + run.err());
    }
  }
}
