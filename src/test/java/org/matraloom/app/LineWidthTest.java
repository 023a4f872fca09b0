package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.matraloom.app.cli.Paragraph;

/** Text for reading stays within a terminal of the usual 80 columns. */
class LineWidthTest {

  private static final int COLUMNS = 80;

  /** A cure holds a phrase that is copied into the score, which a break would spoil. */
  private static final String TO_BE_COPIED = "  it helps to ";

  @Test
  void breathsOfEverySampleFit() throws IOException {
    List<Path> samples;
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      samples = files.filter(file -> file.toString().endsWith(".loom")).sorted().toList();
    }
    assertFalse(samples.isEmpty());
    for (Path sample : samples) {
      fits("breaths", sample.toString());
      fits("breaths", sample.toString(), "--tempo", "200");
    }
  }

  @Test
  void talasFit() {
    fits("talas");
    fits("talas", "--kalai", "4");
  }

  @Test
  void aBrokenLineKeepsItsWords() {
    String line = "  v after the tom on beat 1 3/4: 0.57 s for air, its karvai is cut";
    String folded = Paragraph.folded(line);
    assertEquals(line.strip(), folded.replaceAll("\\s+", " ").strip());
    assertEquals(2, folded.lines().count());
    assertTrue(folded.lines().skip(1).allMatch(rest -> rest.startsWith("    ")), folded);
  }

  private static void fits(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals("", run.err());
    assertFalse(run.out().isEmpty());
    List<String> wide =
        run.out()
            .lines()
            .filter(line -> !line.startsWith(TO_BE_COPIED))
            .filter(line -> line.codePointCount(0, line.length()) > COLUMNS)
            .toList();
    assertEquals(List.of(), wide, String.join(" ", arguments));
  }
}
