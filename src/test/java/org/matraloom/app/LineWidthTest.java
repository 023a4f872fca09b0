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

  @Test
  void breathsOfEverySampleFit() throws IOException {
    List<Path> samples = samples();
    assertFalse(samples.isEmpty());
    for (Path sample : samples) {
      fits("breaths", sample.toString());
      fits("breaths", sample.toString(), "--tempo", "200");
      fits("breaths", sample.toString(), "--tempo", "24", "--whole-karvais");
    }
  }

  /** Also where the answers are many, the fractions long and the phrases named at length. */
  @Test
  void composingFits() throws IOException {
    List<Path> samples = samples();
    for (Path sample : samples) {
      for (String command : List.of("check", "shape", "convert", "rebar")) {
        fits(command, sample.toString());
      }
    }
    String boat = "samples-synth/leaking-boat.loom";
    fits("fit", boat, "--all");
    fits("convert", boat, "--nadai", "9", "--tala", "rupaka", "--same-place");
    fits("check", "samples-synth");
    fits("fit", "samples-synth");
    fits("endings", "128", "--after", "24,75", "--all");
    fits("shape", "28", "21", "14", "7", "9", "8", "7", "6", "28", "21", "14", "7", "9", "8", "7");
    fits("propose", "--yati", "mridanga", "--matras", "400", "--lines", "12");
    fits("propose", "--reduce", "tadiginatomtakadimi");
    fits("fit", "--as", "?-?-?", "--start", "?", "--eduppu", "?");
    fits("fit", "--as", "4-4-5", "--eduppu", "+3/4");
    fits("fit", "--as", "9k3-7-(?n5)-5", "--eduppu", "+3/28");
    fits("fit", "14 + 5(2)5(2)5", "--start", "1 matra late");
  }

  /** A sheet in text, which goes through messages; a dense beat alone may be wider. */
  @Test
  void sheetsOfEverySampleFit() throws IOException {
    for (Path sample : samples()) {
      fits("sheet", sample.toString());
      fits("sheet", sample.toString(), "--rows", "phrase", "--lead-in");
    }
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      return files.filter(file -> file.toString().endsWith(".loom")).sorted().toList();
    }
  }

  @Test
  void talasFit() {
    fits("talas");
    fits("talas", "--kalai", "4");
  }

  @Test
  void aBrokenLineKeepsItsWords() {
    String line =
        "  v after the tom on beat 1 3/4: 0.57 s for air, its karvai is cut short by a half";
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
        run.out().lines().filter(line -> line.codePointCount(0, line.length()) > COLUMNS).toList();
    assertEquals(List.of(), wide, String.join(" ", arguments));
  }
}
