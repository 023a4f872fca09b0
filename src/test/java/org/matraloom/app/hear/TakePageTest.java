package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** Types the commands of docs/take.md, its recordings in a folder that is thrown away. */
class TakePageTest {

  @TempDir private Path folder;

  @Test
  void everyCommandOfThePageWorks() throws IOException {
    List<String> commands =
        Files.readAllLines(Path.of("docs", "take.md")).stream()
            .filter(line -> line.startsWith("    ./matraloom "))
            // There is no recorded voice on a clean machine.
            .filter(line -> !line.contains(" --voice "))
            .map(line -> line.strip().substring("./matraloom ".length()))
            .map(line -> line.replaceAll("(\\w+\\.(?:wav|svg))", folder + "/$1"))
            .toList();
    assertEquals(7, commands.size(), "commands were found: " + commands);
    for (String command : commands) {
      CommandLineRun run = CommandLineRun.of(command.split(" "));
      assertEquals("", run.err(), command);
      assertEquals(ExitCode.DONE, run.code(), command);
    }
  }
}
