package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** Types the commands of docs/log.md, one after another, on a log of their own. */
class LogPageTest {

  private static final String PROMPT = "./matraloom ";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir private Path folder;

  @Test
  void everyCommandOfThePageWorks() throws IOException {
    List<String> commands =
        Files.readAllLines(Path.of("docs", "log.md")).stream()
            .map(String::strip)
            .filter(line -> line.startsWith(PROMPT))
            .map(line -> line.substring(PROMPT.length()))
            .toList();
    assertTrue(commands.size() >= 8, "commands were found: " + commands);
    for (String command : commands) {
      CommandLineRun run = CommandLineRun.of(words(command));
      assertEquals("", run.err(), command);
      assertEquals(ExitCode.DONE, run.code(), command);
    }
    assertEquals(4, Files.readAllLines(folder.resolve("practice.jsonl")).size());
    assertTrue(Files.exists(folder.resolve("progress.svg")));
    assertTrue(Files.exists(folder.resolve("practice.csv")));
  }

  /** Files are written into a folder of the test. */
  private String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    while (matcher.find()) {
      String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
      words.add(word.matches("[a-z]+\\.(svg|csv)") ? folder.resolve(word).toString() : word);
    }
    words.addAll(List.of("--log-file", folder.resolve("practice.jsonl").toString()));
    return words.toArray(String[]::new);
  }
}
