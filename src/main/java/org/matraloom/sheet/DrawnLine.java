package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.Typeface;
import org.matraloom.time.Ratio;

/**
 * One line of a row, drawn as on the page, for those who show it by itself.
 *
 * <p>Lengths are points; a full line is {@value #WIDTH} wide, x from its left edge, y downwards
 * from the top of what is drawn.
 *
 * @param row the row it belongs to
 * @param from where it begins, in beats of the performance
 * @param to where it ends, in beats of the performance
 * @param top where the signs of the hand begin; names and brackets stand above
 * @param height how high it is
 * @param things what is drawn
 * @param cells the beats of the line
 * @param marks the sollus, karvais and silences of the line
 */
public record DrawnLine(
    Row row,
    Ratio from,
    Ratio to,
    double top,
    double height,
    List<Drawn> things,
    List<Stretch> cells,
    List<Stretch> marks) {

  /** How wide a full line is, in points. */
  public static final double WIDTH = 496;

  /**
   * What takes some time and some of the width of a line.
   *
   * @param from where it begins, in beats of the performance
   * @param to where it ends, in beats of the performance
   * @param left its left edge, in points
   * @param right its right edge, in points
   */
  public record Stretch(Ratio from, Ratio to, double left, double right) {

    /**
     * Whether it goes on at a place.
     *
     * @param beat in beats of the performance
     * @return true from its beginning on, its end not included
     */
    public boolean holds(Ratio beat) {
      return beat.compareTo(from) >= 0 && beat.compareTo(to) < 0;
    }
  }

  /** Copies the lists. */
  public DrawnLine {
    things = List.copyOf(things);
    cells = List.copyOf(cells);
    marks = List.copyOf(marks);
  }

  /**
   * Draws the lines of a row.
   *
   * @param sheet the sheet of the row, with one row an avartana
   * @param row the row
   * @param typeface draws the letters
   * @param body the type size of sollus, in points; smaller where two beats do not fit a line
   * @return its lines, in order of time
   */
  public static List<DrawnLine> of(Sheet sheet, Row row, Typeface typeface, double body) {
    Map<PageStyle, CellSetter> setters = new HashMap<>();
    RowLines.SetterOf setter =
        style -> setters.computeIfAbsent(style, each -> new CellSetter(each, typeface));
    RowLines lines =
        RowLines.of(
            row,
            sheet.performance().avartana().goingOnAt(row.startBeat()),
            PageStyle.screen(body),
            setter);
    List<DrawnLine> drawn = new ArrayList<>();
    for (List<Cell> cells : lines.lines()) {
      drawn.add(draw(row, cells, lines, setter.of(lines.style()), typeface));
    }
    return List.copyOf(drawn);
  }

  /** The drop of a landing stands beside a full line on a page; a screen may have no room there. */
  private static Drawn inside(Drawn thing, double signs) {
    return thing instanceof Drawn.Symbol symbol && symbol.x() + symbol.size() > WIDTH
        ? new Drawn.Symbol(WIDTH - symbol.size(), signs, symbol.size(), symbol.figure())
        : thing;
  }

  private static DrawnLine draw(
      Row row, List<Cell> cells, RowLines lines, CellSetter setter, Typeface typeface) {
    PageStyle style = lines.style();
    SetLine line = SetLine.of(cells, 0, WIDTH / lines.longest(), setter);
    List<Drawn> things = new ArrayList<>();
    double top = 0;
    if (TagDrawer.isNeeded(row, line)) {
      new TagDrawer(style, typeface, WIDTH, things).draw(row, line, 0);
      top = style.lane();
    }
    new LineDrawer(style, typeface, setter, things).draw(row, line, top);
    double signs = top;
    things.replaceAll(thing -> inside(thing, signs));
    List<Stretch> beats = new ArrayList<>();
    List<Stretch> marks = new ArrayList<>();
    for (int index = 0; index < cells.size(); index++) {
      Cell cell = cells.get(index);
      beats.add(
          new Stretch(
              cell.from(), cell.to(), line.edges().get(index), line.edges().get(index + 1)));
      line.placed()
          .get(index)
          .forEach(
              one ->
                  marks.add(
                      new Stretch(
                          one.mark().beat(),
                          one.mark().endBeat(),
                          one.x(),
                          one.x() + one.width())));
    }
    return new DrawnLine(
        row, line.startBeat(), line.endBeat(), top, top + style.lineHeight(), things, beats, marks);
  }
}
