package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.kanakku.Landing;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.script.Script;
import org.matraloom.time.Ratio;

/**
 * Thirteen pieces as a teacher writes them: their sums by hand, and what stands on each line of
 * their sheets in five scripts.
 *
 * <p>Lines are held in {@code golden/pieces}: page, words and figures from left to right. Written
 * anew after a look at the pages: {@code -Dmatraloom.golden=write -Dtest=ThirteenPiecesTest}.
 */
class ThirteenPiecesTest {

  private static final Path PIECES = Path.of("src/test/resources/org/matraloom/pieces");
  private static final Path GOLDEN = Path.of("src/test/resources/golden/pieces");
  private static final boolean WRITE = "write".equals(System.getProperty("matraloom.golden"));
  private static final List<Script> SCRIPTS =
      List.of(Script.TAMIL, Script.KANNADA, Script.TELUGU, Script.MALAYALAM, Script.DEVANAGARI);

  private static Composition piece(String name) {
    return Sheets.read(PIECES.resolve(name + ".loom"));
  }

  /** The sums are worked out by hand from the words of each piece. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // name | matras of a round | their parts | beats of the rounds | beats from samam to start
        "heron-stairs       |  80 | 16+14+12 10 4 10 4 10       | 20 20 16 | 0   | 7",
        "puddle-steps       |  48 | 8+7+6 7 3 7 3 7             | 12 12    | 0   | 4",
        "otter-crossing     |  56 | 10+10 10 3 10 3 10          | 28 14    | 0   | 6",
        "five-stones        |  40 | 10 8 3 8 3 8                | 10 10 10 | 0   | 6",
        "deep-ford          |  64 | 16+12 10 3 10 3 10          | 16 16    | 0   | 2",
        "half-drop          |  33 | 12 5 3 5 3 5                | 8 1/4;8 1/4 | 0 | 2",
        "long-monsoon       | 240 | 36+32+28+24 32 12 32 12 32  | 60 80 48 | 4   | 24",
        "reed-in-the-middle |  64 | 12 5 2 5 2 5 1 10 6 2 6 2 6 | 16 16    | 0   | 4",
        "ten-boats          | 100 | 16+14+12+10 12 6 12 6 12     | 25 25 20 | 0   | 7",
        "nine-lamps         | 105 | 15+20+25 11 6 11 6 11       | 21 15    | 0   | 4",
        "three-ducks        |  48 | 11+7 8 3 8 3 8              | 16 8     | 0   | 3",
        "full-sluice        |  64 | 16+14 10 2 10 2 10          | 16 8 16  | 0   | 5",
        "late-heron         |  41 | 12+6 5 4 5 4 5              | 10 1/4;10 1/4 | 3 1/2 | 3"
      })
  void itLandsWhereTheSumSays(
      String name, int matras, String parts, String beats, String start, int avartanas) {
    assertEquals(matras, List.of(parts.split("[ +]+")).stream().mapToInt(Integer::parseInt).sum());
    Performance performance = Performance.of(piece(name));
    List<String> lines = List.of(parts.split(" ")[0].split("[+]"));
    assertEquals(
        lines,
        TagReader.of(performance).stream()
            .filter(tag -> tag.kind() == Row.Tag.Kind.NAME)
            .limit(lines.size())
            .map(tag -> tag.text().substring(tag.text().lastIndexOf(' ') + 1))
            .toList());
    List<String> lengths = List.of(beats.split(beats.contains(";") ? ";" : " "));
    assertEquals(
        lengths, performance.rounds().stream().map(round -> round.beats().toMixed()).toList());
    for (Span.Round round : performance.rounds()) {
      assertEquals(Ratio.of(matras), round.matras(), name);
    }
    assertEquals(start, performance.startBeat().toMixed());
    assertTrue(Landing.of(performance).lands(), name);
    int cycle = performance.composition().avartana().beats();
    Ratio end = Ratio.of((long) avartanas * cycle).plus(performance.composition().eduppuBeat());
    assertEquals(end, performance.endBeat(), name);
  }

  @ParameterizedTest
  @CsvSource({
    "heron-stairs", "puddle-steps", "otter-crossing", "five-stones", "deep-ford", "half-drop",
    "long-monsoon", "reed-in-the-middle", "ten-boats", "nine-lamps", "three-ducks", "full-sluice",
    "late-heron"
  })
  void everyLineSaysWhatItSaid(String name) throws IOException {
    Performance performance = Performance.of(piece(name));
    StringBuilder now = new StringBuilder();
    for (Script script : SCRIPTS) {
      now.append("== " + script.name().toLowerCase(Locale.ROOT) + "\n");
      Sheet sheet = Sheets.of(performance, script, SheetOptions.Lines.AVARTANA);
      now.append(lines(PageSetter.set(sheet, new Typeface())));
    }
    Path file = GOLDEN.resolve(name + ".txt");
    if (WRITE) {
      assertFalse(System.getenv().containsKey("CI"), "golden files are not written in CI");
      Files.createDirectories(GOLDEN);
      Files.writeString(file, now, StandardCharsets.UTF_8);
    }
    assertEquals(Files.readString(file, StandardCharsets.UTF_8), now.toString(), name);
  }

  /**
   * Words and signs of each height, from left to right; a sign in brackets, a bracket as its ends.
   */
  private static String lines(List<List<Drawn>> pages) {
    StringBuilder text = new StringBuilder();
    for (int page = 0; page < pages.size(); page++) {
      Map<Long, Map<Double, String>> lines = new TreeMap<>();
      for (Drawn drawn : pages.get(page)) {
        if (drawn instanceof Drawn.Text word) {
          put(lines, word.y(), word.x(), word.lettering().text());
        } else if (drawn instanceof Drawn.Symbol sign) {
          put(lines, sign.y() + sign.size(), sign.x(), "[" + HtmlRows.name(sign.figure()) + "]");
        } else if (drawn instanceof Drawn.Rule rule && rule.y1() == rule.y2()) {
          put(lines, rule.y1(), rule.x1(), "_" + Math.round(rule.x2() - rule.x1()) + "_");
        }
      }
      for (Map<Double, String> line : lines.values()) {
        text.append(page + 1).append(' ');
        text.append(line.values().stream().collect(Collectors.joining(" "))).append('\n');
      }
    }
    return text.toString();
  }

  private static void put(Map<Long, Map<Double, String>> lines, double y, double x, String what) {
    lines
        .computeIfAbsent(Math.round(y * 10), height -> new TreeMap<>())
        .merge(x, what, (one, other) -> one + "+" + other);
  }
}
