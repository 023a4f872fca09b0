package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.Typeface;
import org.matraloom.score.TwoReciters;
import org.matraloom.script.Script;
import org.matraloom.sheet.DrawnLine;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.Sheets;

/** Lines on a screen: nothing beside it, nothing too small to read from the back of a room. */
class FilmLinesTest {

  /** The least size of a letter, in pixels of a screen 1080 pixels high. */
  private static final double LEAST = 28;

  /** Bars of a change of nadai stand before their beat, in the margin. */
  private static final double BEFORE = 6;

  private static final String DENSE =
      "title Dense\ntala adi\ntempo 70\nSong = takadimi takajunu [takadimi takajunu] takatakita"
          + " , ; takadiginatom takadimitakajunu\nperform\n  Song x2 nadai 4 kalam 2\n"
          + "  Song nadai 9\n";

  @ParameterizedTest
  @EnumSource(FilmSize.class)
  void everyLineOfEverySampleFitsAndCanBeRead(FilmSize size) {
    int seen = 0;
    double scale = size.room() / DrawnLine.WIDTH;
    for (Script script : List.of(Script.LATIN, Script.TAMIL, Script.MALAYALAM)) {
      for (Path file : Sheets.samples()) {
        var piece = Sheets.read(file);
        if (!TwoReciters.in(piece)) {
          seen += check(Films.pass(piece, script, "").sheet(), size, scale);
        }
      }
      seen += check(Films.pass(Sheets.score(DENSE), script, "").sheet(), size, scale);
    }
    assertTrue(seen > 5_000, "letterings: " + seen);
  }

  private static int check(Sheet sheet, FilmSize size, double scale) {
    Typeface typeface = new Typeface();
    int seen = 0;
    for (Row row : sheet.rows()) {
      for (DrawnLine line : DrawnLine.of(sheet, row, typeface, size.body())) {
        double next = size.next().getHeight() - 60;
        double bare = line.height() - line.top();
        assertTrue(bare * scale * ScreenBands.nextScale(size) <= next, "the line after");
        assertTrue(line.height() * scale + 20 <= size.line().getHeight(), "the line itself");
        for (Drawn thing : line.things()) {
          if (thing instanceof Drawn.Text text) {
            double right = text.x() + text.lettering().width(text.size());
            assertTrue(text.x() >= -BEFORE, text.lettering().text() + " begins at " + text.x());
            assertTrue(right <= DrawnLine.WIDTH + BEFORE, text.lettering().text() + " " + right);
            double small = text.y() < line.top() ? 1 : ScreenBands.nextScale(size);
            assertTrue(text.size() * scale * small >= LEAST, text + " in " + size);
            seen++;
          } else if (thing instanceof Drawn.Symbol symbol) {
            assertTrue(
                symbol.x() >= 0 && symbol.x() + symbol.size() <= DrawnLine.WIDTH, "" + symbol);
          }
        }
        assertEquals(line.from(), line.cells().get(0).from());
      }
    }
    return seen;
  }
}
