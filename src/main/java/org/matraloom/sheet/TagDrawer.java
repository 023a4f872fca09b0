package org.matraloom.sheet;

import java.util.List;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Typeface;

/** Draws what stands above a line: names of phrases, figures of groups, brackets of moras. */
final class TagDrawer {

  private static final double GAP = 4;
  private static final double HOOK = 2;
  private static final double BRACKET_RULE = 0.8;

  private final PageStyle style;
  private final Typeface typeface;
  private final double right;
  private final List<Drawn> page;

  /** Draws tags that end before a right edge. */
  TagDrawer(PageStyle style, Typeface typeface, double right, List<Drawn> page) {
    this.style = style;
    this.typeface = typeface;
    this.right = right;
    this.page = page;
  }

  /** Whether a line has anything above it. */
  static boolean isNeeded(Row row, SetLine line) {
    return row.tags().stream().anyMatch(tag -> isDrawn(tag, line));
  }

  private static boolean isDrawn(Row.Tag tag, SetLine line) {
    return tag.kind() == Row.Tag.Kind.STATEMENT
        ? tag.reaches(line.startBeat(), line.endBeat())
        : tag.beginsIn(line.startBeat(), line.endBeat());
  }

  /** Draws above a line whose strip begins at a height. */
  void draw(Row row, SetLine line, double top) {
    double free = line.left();
    for (Row.Tag tag : row.tags()) {
      if (!isDrawn(tag, line)) {
        continue;
      } else if (tag.kind() == Row.Tag.Kind.STATEMENT) {
        bracket(tag, line, top + style.bracketTop());
        continue;
      }
      Lettering text = typeface.lettering(tag.text(), false);
      double width = text.width(style.tag());
      double most = right - width;
      double x = Math.max(Math.min(line.lettersOf(tag.from()), most), free);
      if (x <= most) {
        double base = top + style.tag() * 0.8;
        page.add(new Drawn.Text(x, base, style.tag(), text, Shade.QUIET));
        free = x + width + GAP;
      }
    }
  }

  private void bracket(Row.Tag tag, SetLine line, double y) {
    boolean begins = tag.from().compareTo(line.startBeat()) >= 0;
    boolean ends = tag.to().compareTo(line.endBeat()) <= 0;
    double left = begins ? line.xOf(tag.from()) : line.left();
    double right = ends ? line.endOf(tag.to()) : line.right();
    page.add(new Drawn.Rule(left, y, right, y, BRACKET_RULE, Shade.INK));
    if (begins) {
      page.add(new Drawn.Rule(left, y, left, y + HOOK, BRACKET_RULE, Shade.INK));
    }
    if (ends) {
      page.add(new Drawn.Rule(right, y, right, y + HOOK, BRACKET_RULE, Shade.INK));
    }
  }
}
