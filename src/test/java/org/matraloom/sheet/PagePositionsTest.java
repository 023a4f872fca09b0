package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.Points;
import org.matraloom.picture.Typeface;

/** Holds the places of everything on the pages of three scores; see the README of the folder. */
class PagePositionsTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden/sheet");
  private static final boolean WRITE = "write".equals(System.getProperty("matraloom.golden"));

  @ParameterizedTest
  @ValueSource(strings = {"gutter-song", "lantern-ferry", "half-step-heron"})
  void everythingStandsWhereItStood(String name) throws IOException {
    compare(name, Sheets.plain(Sheets.sample(name)));
    compare(name + "-large", Sheets.large(Sheets.sample(name)));
  }

  private static void compare(String name, Sheet sheet) throws IOException {
    String now = describe(PageSetter.set(sheet, new Typeface()));
    Path file = GOLDEN.resolve(name + ".txt");
    if (WRITE) {
      assertFalse(System.getenv().containsKey("CI"), "golden files are not written in CI");
      Files.writeString(file, now, StandardCharsets.UTF_8);
    }
    assertEquals(Files.readString(file, StandardCharsets.UTF_8), now, name);
  }

  private static String describe(List<List<Drawn>> pages) {
    StringBuilder text = new StringBuilder();
    for (int page = 0; page < pages.size(); page++) {
      Map<Double, List<String>> lines = new TreeMap<>();
      for (Drawn drawn : pages.get(page)) {
        lines.computeIfAbsent(y(drawn), height -> new ArrayList<>()).add(describe(drawn));
      }
      for (Map.Entry<Double, List<String>> line : lines.entrySet()) {
        text.append(page + 1).append(' ').append(Points.text(line.getKey())).append(": ");
        text.append(line.getValue().stream().collect(Collectors.joining(" "))).append('\n');
      }
    }
    return text.toString();
  }

  private static double y(Drawn drawn) {
    if (drawn instanceof Drawn.Text text) {
      return text.y();
    } else if (drawn instanceof Drawn.Rule rule) {
      return rule.y1();
    } else if (drawn instanceof Drawn.Box box) {
      return box.y();
    }
    return ((Drawn.Symbol) drawn).y();
  }

  private static String describe(Drawn drawn) {
    if (drawn instanceof Drawn.Text text) {
      return Points.text(text.x()) + "'" + text.lettering().text() + "'";
    } else if (drawn instanceof Drawn.Rule rule) {
      boolean upright = rule.x1() == rule.x2();
      return Points.text(rule.x1()) + (upright ? "|" : "-" + Points.text(rule.x2()));
    } else if (drawn instanceof Drawn.Box box) {
      return Points.text(box.x()) + "#" + Points.text(box.width());
    }
    Drawn.Symbol sign = (Drawn.Symbol) drawn;
    return Points.text(sign.x()) + "[" + HtmlRows.name(sign.figure()) + "]";
  }
}
