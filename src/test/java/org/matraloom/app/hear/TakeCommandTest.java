package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class TakeCommandTest {

  @TempDir private Path folder;

  /** The file's tones begin at 0.2, 0.4 and 0.6 s; see the README beside it. */
  @Test
  void listsWhereSoundsBegin() throws IOException {
    CommandLineRun run = CommandLineRun.of("take", "--onsets", recording().toString());
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    List<String> lines = run.out().lines().toList();
    assertEquals(3, lines.size(), run.out());
    for (int i = 0; i < 3; i++) {
      assertEquals(0.2 * (i + 1), Double.parseDouble(lines.get(i)), 0.01);
    }
  }

  @Test
  void aFileThatIsNoRecordingIsExplained() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.wav"), "Dear pupil");
    CommandLineRun run = CommandLineRun.of("take", "--onsets", letter.toString());
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().startsWith("matraloom: " + letter + " is not a sound file"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void confidenceHasARange() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("take", "--onsets", recording().toString(), "--confidence", "2");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("matraloom: --confidence is 2.0; it must be from 0.01 to 1\n", run.err());
  }

  private Path recording() throws IOException {
    Path file = folder.resolve("bursts.mp3");
    if (!Files.exists(file)) {
      try (InputStream in = getClass().getResourceAsStream("/org/matraloom/recording/bursts.mp3")) {
        Files.copy(in, file);
      }
    }
    return file;
  }

  @Test
  void aRecordingThatIsNotThereIsTheUsersMistake() {
    String score = Path.of("samples-synth", "culvert.loom").toString();
    CommandLineRun none = CommandLineRun.of("take", score, folder.resolve("none.wav").toString());
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertEquals(
        "matraloom: there is no recording " + folder.resolve("none.wav") + "\n", none.err());
    CommandLineRun place = CommandLineRun.of("take", score, folder.toString());
    assertEquals(ExitCode.BAD_INPUT, place.code());
    assertTrue(place.err().contains(folder + " is a folder"), place.err());
  }
}
