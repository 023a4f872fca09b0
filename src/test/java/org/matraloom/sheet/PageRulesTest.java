package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.RandomScores;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;

/** What holds on every drawn page, whatever is on it. */
class PageRulesTest {

  private static final double CONTRAST_AA = 4.5;

  @Test
  void sevenAvartanasFitOnePageAtTwelvePoint() {
    for (String name : List.of("gutter-song", "monsoon-ledger")) {
      Composition korvai = Sheets.sample(name);
      Sheet sheet = Sheets.plain(korvai);
      assertEquals(7, sheet.rows().size(), name);
      List<List<Drawn>> pages = PageSetter.set(sheet, new Typeface());
      assertEquals(1, pages.size(), name);
      List<String> sollus = Sheets.marks(sheet).stream().map(PageRulesTest::textOf).toList();
      long sollusAtTwelve =
          pages.get(0).stream()
              .filter(drawn -> drawn instanceof Drawn.Text text && text.size() == 12)
              .count();
      assertEquals(sollus.size(), sollusAtTwelve, "every mark is set at 12 point");
    }
  }

  private static String textOf(Mark mark) {
    return mark instanceof Mark.Said said ? said.text() : mark.getClass().getSimpleName();
  }

  @Test
  void nothingLeavesThePage() {
    int things = 0;
    for (List<List<Drawn>> pages : manyPages()) {
      for (List<Drawn> page : pages) {
        for (Drawn drawn : page) {
          things++;
          if (drawn instanceof Drawn.Text text) {
            assertInside(text.x(), text.y() - text.size(), text);
            assertInside(text.x() + text.lettering().width(text.size()), text.y(), text);
          } else if (drawn instanceof Drawn.Symbol sign) {
            assertInside(sign.x(), sign.y(), sign);
            assertInside(sign.x() + sign.size(), sign.y() + sign.size(), sign);
          } else if (drawn instanceof Drawn.Rule rule) {
            assertInside(rule.x2(), rule.y2(), rule);
          }
        }
      }
    }
    assertTrue(things > 10_000, "things were looked at: " + things);
  }

  private static void assertInside(double x, double y, Drawn what) {
    assertTrue(x >= 0 && x <= PageStyle.WIDTH, () -> "outside: " + what);
    assertTrue(y >= 0 && y <= PageStyle.HEIGHT, () -> "outside: " + what);
  }

  @Test
  void thereIsOneDropWhereItLands() {
    for (List<List<Drawn>> pages : manyPages()) {
      List<Drawn.Symbol> drops =
          pages.stream()
              .flatMap(List::stream)
              .filter(
                  drawn -> drawn instanceof Drawn.Symbol sign && sign.figure() == Figure.LANDING)
              .map(Drawn.Symbol.class::cast)
              .toList();
      assertEquals(2, drops.size(), "one in the rows, one that explains it");
      assertTrue(drops.get(0).x() > PageStyle.LEFT + 1);
      assertEquals(PageStyle.LEFT, drops.get(1).x());
    }
  }

  @Test
  void sollusNeverTouch() {
    int pairs = 0;
    for (List<List<Drawn>> pages : manyPages()) {
      for (List<Drawn> page : pages) {
        Drawn.Text before = null;
        for (Drawn drawn : page) {
          if (drawn instanceof Drawn.Text text) {
            if (before != null && before.y() == text.y() && text.x() >= before.x()) {
              double end = before.x() + before.lettering().width(before.size());
              Drawn.Text left = before;
              assertTrue(text.x() > end - 0.01, () -> left + " touches " + text);
              pairs++;
            }
            before = text;
          }
        }
      }
    }
    assertTrue(pairs > 5_000, "pairs were looked at: " + pairs);
  }

  @Test
  void largePrintHasOneSizeAndNoUnderlines() {
    Composition fast =
        Sheets.score("tala adi\ntempo 60\nA = [takadimi takadimi] [[takadimi]] ta , ;\n");
    List<List<Drawn>> large = PageSetter.set(Sheets.large(fast), new Typeface());
    List<List<Drawn>> usual = PageSetter.set(Sheets.plain(fast), new Typeface());
    assertTrue(underlines(usual) > 0, "the usual form underlines");
    assertEquals(0, underlines(large), "the large form does not");
    for (Drawn drawn : large.get(0)) {
      if (drawn instanceof Drawn.Text text) {
        assertTrue(text.size() >= 18, () -> "smaller than 18 point: " + text);
        assertFalse(text.lettering().text().equals(","), "a karvai is a square");
      }
    }
  }

  private static long underlines(List<List<Drawn>> pages) {
    return pages.stream()
        .flatMap(List::stream)
        .filter(
            drawn ->
                drawn instanceof Drawn.Rule rule
                    && rule.y1() == rule.y2()
                    && rule.x2() - rule.x1() < 300)
        .count();
  }

  /** Relative luminance and contrast: Web Content Accessibility Guidelines 2.1, 1.4.3. */
  @Test
  void textIsDarkEnough() {
    for (Drawn.Shade tone : List.of(Drawn.Shade.INK, Drawn.Shade.QUIET)) {
      double value = tone.grey();
      double linear = value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
      double contrast = 1.05 / (linear + 0.05);
      assertTrue(contrast >= CONTRAST_AA, tone + " on white has " + contrast);
    }
  }

  private static List<List<List<Drawn>>> manyPages() {
    List<List<List<Drawn>>> all = new ArrayList<>();
    for (Path sample : Sheets.samples()) {
      Composition composition = Sheets.read(sample);
      all.add(PageSetter.set(Sheets.plain(composition), new Typeface()));
      all.add(PageSetter.set(Sheets.large(composition), new Typeface()));
      Performance performance = Performance.of(composition);
      Sheet phrases = Sheets.of(performance, Script.MALAYALAM, SheetOptions.Lines.PHRASE);
      all.add(PageSetter.set(phrases, new Typeface()));
    }
    RandomScores scores = new RandomScores(5);
    for (int count = 0; count < 12; count++) {
      all.add(PageSetter.set(Sheets.plain(scores.composition()), new Typeface()));
    }
    return all;
  }
}
