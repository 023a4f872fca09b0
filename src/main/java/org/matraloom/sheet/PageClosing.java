package org.matraloom.sheet;

import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.paper.Figure;

/** Sets what stands below the rows of a page: the sums, the verdict, and what the signs mean. */
final class PageClosing {

  private static final double LEADING = PageFlow.LEADING;
  private static final double SIGN_ROOM = 1.4;
  private static final int LEAST_LINES = 5;

  private final Sheet sheet;
  private final PageStyle style;
  private final PageFlow flow;
  private double x = PageStyle.LEFT;

  PageClosing(Sheet sheet, PageStyle style, PageFlow flow) {
    this.sheet = sheet;
    this.style = style;
    this.flow = flow;
  }

  void set() {
    double label = style.label();
    flow.need(label * LEADING * LEAST_LINES);
    flow.skip(label * 0.6);
    double right = PageStyle.WIDTH - PageStyle.RIGHT;
    flow.page().add(new Drawn.Rule(PageStyle.LEFT, flow.y(), right, flow.y(), 0.6, Shade.INK));
    flow.skip(label * 0.5);
    for (int index = 0; index < sheet.closing().size(); index++) {
      boolean verdict = index == sheet.closing().size() - 1;
      flow.paragraph(sheet.closing().get(index), label, verdict);
    }
    sign(Figure.LANDING, new SheetWords(sheet).landsHere());
    if (sheet.rings()) {
      room(style.large() ? SheetWords.RINGS_ON_LARGE : SheetWords.RINGS_ON);
      double top = flow.y() + label * 0.25;
      double side = style.large() ? label * 0.75 : label;
      double line = style.large() ? 1.6 : 0;
      Shade shade = style.large() ? Shade.INK : Shade.TINT;
      flow.page().add(new Drawn.Box(x, top, side, side, line, shade));
      note(style.large() ? SheetWords.RINGS_ON_LARGE : SheetWords.RINGS_ON);
    }
    if (sheet.marksBreaths()) {
      sign(Figure.BREATH, SheetWords.BREATHE_HERE);
    }
    if (sheet.performance().composition().avartana().kalai() > 1) {
      sign(Figure.AGAIN, SheetWords.ONCE_MORE);
    }
    if (sheet.hasStatements()) {
      bracket();
    }
    flow.skip(label * LEADING);
  }

  private void bracket() {
    room(SheetWords.SAID_AGAIN);
    double top = flow.y() + style.label() * 0.4;
    double end = x + style.label();
    flow.page().add(new Drawn.Rule(x, top, end, top, 0.8, Shade.INK));
    flow.page().add(new Drawn.Rule(x, top, x, top + 3, 0.8, Shade.INK));
    flow.page().add(new Drawn.Rule(end, top, end, top + 3, 0.8, Shade.INK));
    note(SheetWords.SAID_AGAIN);
  }

  private void sign(Figure figure, String words) {
    room(words);
    flow.page().add(new Drawn.Symbol(x, flow.y() + 1, style.label(), figure));
    note(words);
  }

  /** Goes to the next line if a note does not fit this one. */
  private void room(String words) {
    double width = style.label() * SIGN_ROOM + flow.widthOf(words, style.label(), false);
    if (x > PageStyle.LEFT && x + width > PageStyle.WIDTH - PageStyle.RIGHT) {
      flow.skip(style.label() * LEADING);
      flow.need(style.label() * LEADING);
      x = PageStyle.LEFT;
    }
  }

  private void note(String words) {
    double left = x + style.label() * SIGN_ROOM;
    flow.put(words, left, flow.y() + style.label(), style.label(), false, Shade.INK);
    x = left + flow.widthOf(words, style.label(), false) + style.label() * 1.6;
  }
}
