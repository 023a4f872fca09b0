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

  private static final Path PAGE = Path.of("docs", "practising.md");

  @Test
  void everyCommandOfThePageWorks() throws IOException {
    List<String> commands =
        Files.readAllLines(PAGE).stream()
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

  /** The lines with marks are those that the command above them prints. */
  @Test
  void theMarkedLinesAreTheProgramsOwn() throws IOException {
    List<String> lines = Files.readString(PAGE).lines().toList();
    int blocks = 0;
    String printed = "";
    StringBuilder block = new StringBuilder();
    for (String line : lines) {
      if (line.startsWith("    ./matraloom breaths")) {
        printed =
            CommandLineRun.of(line.strip().substring("./matraloom ".length()).split(" ")).out();
      } else if (line.matches("    [ ]*([Vv]|ta .*)")) {
        block.append(line.substring(4)).append('\n');
      } else if (!block.isEmpty()) {
        assertTrue(printed.contains("\n" + block), block + " is not in " + printed);
        block.setLength(0);
        blocks++;
      }
    }
    assertTrue(blocks == 4, "blocks were found: " + blocks);
  }
}
