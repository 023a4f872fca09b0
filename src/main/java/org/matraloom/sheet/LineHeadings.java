package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.time.Ratio;

/**
 * The headings above one line, each where its round or nadai begins: at the margin if that is the
 * beginning of the line, else above the place.
 */
final class LineHeadings {

  private static final double GAP = 10;

  /** A heading, or a line of one, in its place. */
  private record Placed(String text, double x, int level) {}

  private final PageStyle style;
  private final PageFlow flow;
  private final int most;
  private final List<Placed> placed = new ArrayList<>();
  private double free = PageStyle.LEFT;
  private int level;
  private int count;

  LineHeadings(PageStyle style, PageFlow flow, int most) {
    this.style = style;
    this.flow = flow;
    this.most = most;
  }

  /** Adds a heading, if its place is in the line and there are not too many. */
  void add(SetLine line, Ratio beat, String text) {
    if (!line.holds(beat) || count == most) {
      return;
    }
    count++;
    List<String> lines = flow.wrap(text, style.label(), true);
    double width =
        lines.stream().mapToDouble(each -> flow.widthOf(each, style.label(), true)).max().orElse(0);
    double wanted = beat.equals(line.startBeat()) ? PageStyle.LEFT : line.edgeOf(beat);
    double x =
        Math.max(PageStyle.LEFT, Math.min(wanted, PageStyle.WIDTH - PageStyle.RIGHT - width));
    if (!placed.isEmpty() && (x < free || lines.size() > 1)) {
      level++;
    }
    for (String each : lines) {
      placed.add(new Placed(each, x, level++));
    }
    level--;
    free = x + width + GAP;
  }

  double height() {
    return placed.isEmpty() ? 0 : ((level + 1) * PageFlow.LEADING + 0.5) * style.label();
  }

  /** Draws them and leaves the flow below. */
  void draw() {
    if (placed.isEmpty()) {
      return;
    }
    double label = style.label();
    double top = flow.y() + 0.4 * label;
    for (Placed one : placed) {
      double base = top + one.level() * label * PageFlow.LEADING + label;
      flow.put(one.text(), one.x(), base, label, true, Shade.INK);
    }
    flow.skip(height());
  }
}
