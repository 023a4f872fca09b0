package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.kanakku.Landing;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** What the README tells a newcomer to type works. */
class ReadmeTest {

  private static final Pattern COMMAND =
      Pattern.compile("^\\./matraloom ([^#\\n]+)", Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern SCORE = Pattern.compile("```\\n(title .*?)```", Pattern.DOTALL);

  /** They take their time or want a device, and have tests of their own. */
  private static final Set<String> LEFT_OUT =
      Set.of("film", "open", "pack", "page", "play", "record", "--help");

  /** The recordings it speaks of; the guide stands in for them. */
  private static final List<String> TAKES = List.of("monday.wav", "friday.wav");

  private static final String SAMPLE = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  private final String readme;

  ReadmeTest() throws IOException {
    readme = Files.readString(Path.of("README.md"));
  }

  @Test
  void everyCommandRuns() {
    for (String take : TAKES) {
      String file = folder.resolve(take).toString();
      CommandLineRun guide =
          CommandLineRun.of("render", SAMPLE, "-o", file, "--mono", "--only", "voice");
      assertEquals(ExitCode.DONE, guide.code(), guide.err());
    }
    Matcher commands = COMMAND.matcher(readme);
    int ran = 0;
    while (commands.find()) {
      List<String> words = words(commands.group(1));
      if (!LEFT_OUT.contains(words.get(0))) {
        CommandLineRun run = CommandLineRun.of(words.toArray(String[]::new));
        assertEquals("", run.err(), commands.group(1));
        assertTrue(run.code() <= ExitCode.CHECK_FAILED, commands.group(1));
        ran++;
      }
    }
    assertTrue(ran >= 10, "commands were run: " + ran);
  }

  @Test
  void thePieceInItLands() {
    Matcher score = SCORE.matcher(readme);
    assertTrue(score.find(), "there is a score");
    Composition composition =
        ScoreReader.read(score.group(1), "README.md", Lexicon.standard())
            .composition()
            .orElseThrow();
    assertTrue(Landing.of(Performance.of(composition)).lands());
  }

  private List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line);
    while (word.find()) {
      boolean isOutput = !words.isEmpty() && words.get(words.size() - 1).equals("-o");
      String text = word.group(1) == null ? word.group(2) : word.group(1);
      words.add(isOutput || TAKES.contains(text) ? folder.resolve(text).toString() : text);
    }
    if (words.get(0).equals("demo")) {
      words.addAll(List.of("--folder", folder.resolve("demo").toString()));
    }
    return words;
  }
}
