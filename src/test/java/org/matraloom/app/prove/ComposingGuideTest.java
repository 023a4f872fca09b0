package org.matraloom.app.prove;

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
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** The examples of docs/composing.md print what the page shows. */
class ComposingGuideTest {

  private static final Pattern EXAMPLE =
      Pattern.compile("```\\n\\$ \\./matraloom ([^\\n]*)\\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

  @Test
  void everyExampleIsTrue() throws IOException {
    Matcher examples = EXAMPLE.matcher(Files.readString(Path.of("docs", "composing.md")));
    int seen = 0;
    while (examples.find()) {
      CommandLineRun run = CommandLineRun.of(words(examples.group(1)));
      assertEquals("", run.err(), examples.group(1));
      assertTrue(run.code() <= ExitCode.CHECK_FAILED, examples.group(1));
      boolean ofASample = examples.group(1).contains("samples-synth");
      assertEquals(
          shown(examples.group(2), ofASample), shown(run.out(), ofASample), examples.group(1));
      seen++;
    }
    assertTrue(seen >= 15, "examples were found: " + seen);
  }

  /** Of a sample only the first line is held to the page, so that samples may still change. */
  private static List<String> shown(String output, boolean onlyFirst) {
    List<String> lines = output.lines().toList();
    return onlyFirst ? lines.subList(0, 1) : lines;
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      String quoted = word.group(1) == null ? word.group(2) : word.group(1);
      words.add(quoted == null ? word.group(3) : quoted);
    }
    return words.toArray(String[]::new);
  }
}
