package org.matraloom.sheet;

import org.matraloom.sheet.Drawn.Shade;

/** Sets what stands below the rows of a page: the sums, the verdict, and what the signs mean. */
final class PageClosing {

  private static final double LEADING = PageFlow.LEADING;
  private static final int MOST_LINES = 7;

  private final Sheet sheet;
  private final PageStyle style;
  private final PageFlow flow;

  PageClosing(Sheet sheet, PageStyle style, PageFlow flow) {
    this.sheet = sheet;
    this.style = style;
    this.flow = flow;
  }

  void set() {
    double label = style.label();
    flow.need(label * LEADING * MOST_LINES);
    flow.skip(label * 0.6);
    double right = PageStyle.WIDTH - PageStyle.RIGHT;
    flow.page().add(new Drawn.Rule(PageStyle.LEFT, flow.y(), right, flow.y(), 0.6, Shade.INK));
    flow.skip(label * 0.5);
    for (int index = 0; index < sheet.closing().size(); index++) {
      boolean verdict = index == sheet.closing().size() - 1;
      flow.paragraph(sheet.closing().get(index), label, verdict);
    }
    sign(Figure.LANDING);
    note(SheetWords.ENDS_HERE);
    if (sheet.rings()) {
      double top = flow.y() + label * 0.25;
      flow.page().add(new Drawn.Box(PageStyle.LEFT, top, label, label, 0, Shade.TINT));
      note(SheetWords.RINGS_ON);
    }
    if (sheet.marksBreaths()) {
      sign(Figure.BREATH);
      note(SheetWords.BREATHE_HERE);
    }
  }

  private void sign(Figure figure) {
    flow.page().add(new Drawn.Symbol(PageStyle.LEFT, flow.y() + 1, style.label(), figure));
  }

  private void note(String words) {
    double left = PageStyle.LEFT + style.label() * 1.4;
    flow.put(words, left, flow.y() + style.label(), style.label(), false, Shade.INK);
    flow.skip(style.label() * LEADING);
  }
}
