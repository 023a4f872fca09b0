package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.matraloom.app.cli.ExitCode;

/**
 * A score keeps its meaning: all that {@code check} says of each sample, and every sollu and
 * landing on its beat, stand in {@code golden/check}.
 *
 * <p>The sollus of the eleven oldest samples were compared with those of an early version of the
 * program; only "(rings)" of held sollus is new. Written anew, after a look at the difference and a
 * word in {@code CHANGELOG.md}: {@code -Dmatraloom.golden=write -Dtest=SamplesMeanTheSameTest}.
 */
class SamplesMeanTheSameTest {

  private static final Path SAMPLES = Path.of("samples-synth");
  private static final Path GOLDEN = Path.of("src/test/resources/golden/check");
  private static final boolean WRITE = "write".equals(System.getProperty("matraloom.golden"));

  static List<String> samples() throws IOException {
    return names(SAMPLES, ".loom");
  }

  private static List<String> names(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(path -> path.getFileName().toString())
          .filter(name -> name.endsWith(ending))
          .map(name -> name.replace(ending, ""))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleMeansWhatItMeant(String sample) throws IOException {
    String score = SAMPLES.resolve(sample + ".loom").toString();
    CommandLineRun check = CommandLineRun.of("check", score);
    CommandLineRun events = CommandLineRun.of("events", score);
    assertEquals(ExitCode.DONE, events.code(), events.err());
    String now = check.out() + check.err() + "\n" + spoken(events.out());
    Path golden = GOLDEN.resolve(sample + ".txt");
    if (WRITE) {
      assertFalse(System.getenv().containsKey("CI"), "golden files are not written in CI");
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, now);
    }
    assertEquals(Files.readString(golden), now, sample);
  }

  /** A line a beat: the sollus that begin in it, each after its place. */
  private static String spoken(String events) throws IOException {
    CSVFormat table = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).build();
    TreeMap<Integer, StringBuilder> beats = new TreeMap<>();
    int sollus = 0;
    for (CSVRecord row : table.parse(new StringReader(events))) {
      String kind = row.get("kind");
      if (kind.equals("sollu") || kind.equals("landing")) {
        sollus++;
        String[] parts = row.get("beat").split("/");
        int den = parts.length > 1 ? Integer.parseInt(parts[1]) : 1;
        int whole = Math.floorDiv(Integer.parseInt(parts[0]), den);
        String place = Math.floorMod(Integer.parseInt(parts[0]), den) + "/" + den;
        beats
            .computeIfAbsent(whole, beat -> new StringBuilder())
            .append(den > 1 ? "  " + place : "")
            .append(' ')
            .append(kind.equals("sollu") ? row.get("text") : kind);
      }
    }
    assertTrue(sollus > 20, "sollus were seen: " + sollus);
    return beats.entrySet().stream()
        .map(beat -> "beat " + beat.getKey() + ":" + beat.getValue() + "\n")
        .collect(Collectors.joining());
  }

  @Test
  void noSampleIsForgotten() throws IOException {
    Set<String> held = new TreeSet<>(names(GOLDEN, ".txt"));
    assertEquals(new TreeSet<>(samples()), held);
    assertTrue(held.size() >= 13);
  }
}
