package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.script.Script;

/** What stands near something else on a page stands clear of it, and no page has the sum alone. */
class RoomOnThePageTest {

  private static final Path PIECES = Path.of("src/test/resources/org/matraloom/pieces");
  private static final double BRACKET = 0.8;
  private static final double STEM = 2.4;

  private static List<Performance> pieces() throws IOException {
    try (Stream<Path> files = Files.list(PIECES)) {
      return files.sorted().map(file -> Performance.of(Sheets.read(file))).toList();
    }
  }

  private static List<List<Drawn>> pages(Performance piece, Script script) {
    return PageSetter.set(Sheets.of(piece, script, SheetOptions.Lines.AVARTANA), new Typeface());
  }

  private static List<Drawn.Rule> rules(List<Drawn> page, double width) {
    return page.stream()
        .filter(Drawn.Rule.class::isInstance)
        .map(Drawn.Rule.class::cast)
        .filter(rule -> rule.width() == width)
        .toList();
  }

  /** A brackets' hooks end above the hand, and a line of beats is on every page. */
  @ParameterizedTest
  @EnumSource(Script.class)
  void bracketsStandClearOfTheHandAndSumsOfNoPageAlone(Script script) throws IOException {
    int brackets = 0;
    for (Performance piece : pieces()) {
      for (List<Drawn> page : pages(piece, script)) {
        String where = piece.composition().title() + " in " + script;
        List<Drawn.Symbol> signs =
            page.stream()
                .filter(Drawn.Symbol.class::isInstance)
                .map(Drawn.Symbol.class::cast)
                .filter(sign -> sign.figure() != Figure.LANDING && sign.figure() != Figure.BREATH)
                .toList();
        assertTrue(signs.size() > 4, where + ": a page with hardly a beat");
        for (Drawn.Rule rule : rules(page, BRACKET)) {
          brackets++;
          for (Drawn.Symbol sign : signs) {
            boolean besides =
                sign.x() + sign.size() < rule.x1()
                    || sign.x() > rule.x2()
                    || sign.y() >= rule.y2()
                    || sign.y() + sign.size() <= rule.y1();
            assertTrue(besides, where + ": " + rule + " goes through " + sign);
          }
        }
      }
    }
    assertTrue(brackets > 200, "brackets were seen: " + brackets);
  }

  /** Where a round begins inside a beat, letters keep a point away from its stem. */
  @ParameterizedTest
  @EnumSource(Script.class)
  void stemsStandClearOfLetters(Script script) throws IOException {
    int stems = 0;
    for (Performance piece : pieces()) {
      boolean inside = piece.rounds().stream().map(Span::startBeat).anyMatch(at -> !at.isWhole());
      for (List<Drawn> page : inside ? pages(piece, script) : List.<List<Drawn>>of()) {
        for (Drawn.Rule stem : rules(page, STEM)) {
          stems++;
          for (Drawn drawn : page) {
            if (drawn instanceof Drawn.Text text && text.y() > stem.y1() && text.y() < stem.y2()) {
              double end = text.x() + text.lettering().width(text.size());
              boolean apart = end < stem.x1() - 1 || text.x() > stem.x1() + 1;
              assertTrue(apart, piece.composition().title() + ": " + text + " at " + stem.x1());
            }
          }
        }
      }
    }
    assertTrue(stems >= 3, "stems were seen: " + stems);
  }

  /** Seven avartanas of adi at four fit a page in every script. */
  @ParameterizedTest
  @EnumSource(Script.class)
  void sevenAvartanasOfAdiAreOnePage(Script script) {
    Performance heron = Performance.of(Sheets.read(PIECES.resolve("heron-stairs.loom")));
    assertEquals(1, pages(heron, script).size());
  }

  /** An avartana of a chapu tala is not cut in some rows of a round and whole in others. */
  @Test
  void equallyDenseAvartanasAreCutAlike() {
    Performance otter = Performance.of(Sheets.read(PIECES.resolve("otter-crossing.loom")));
    Sheet sheet = Sheets.of(otter, Script.LATIN, SheetOptions.Lines.AVARTANA);
    List<Integer> lines = new ArrayList<>();
    Typeface typeface = new Typeface();
    for (Row row : sheet.rows()) {
      RowLines cut =
          RowLines.of(
              row, otter.avartana(), PageStyle.of(false), style -> new CellSetter(style, typeface));
      lines.add(cut.lines().size());
    }
    assertEquals(List.of(1, 1, 1, 1, 2, 2), lines);
    assertFalse(lines.isEmpty());
  }
}
