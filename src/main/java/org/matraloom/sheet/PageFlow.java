package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Typeface;

/** Pages that fill from the top, with the place reached so far, and lines of text on them. */
final class PageFlow {

  /** From base line to base line, in type sizes. */
  static final double LEADING = 1.32;

  private static final double SPACE = 0.26;

  private final PageStyle style;
  private final Typeface typeface;
  private final List<List<Drawn>> pages = new ArrayList<>();
  private List<Drawn> page = new ArrayList<>();
  private double y = PageStyle.TOP;

  PageFlow(PageStyle style, Typeface typeface) {
    this.style = style;
    this.typeface = typeface;
    pages.add(page);
  }

  List<List<Drawn>> pages() {
    return pages;
  }

  /** Adds a page that is full. */
  void append(List<Drawn> full) {
    pages.add(new ArrayList<>(full));
  }

  /** The page that is being filled. */
  List<Drawn> page() {
    return page;
  }

  /** The place reached, from the top of the page. */
  double y() {
    return y;
  }

  void skip(double height) {
    y += height;
  }

  /** Begins a new page if a height is no longer left on this one. */
  void need(double height) {
    if (y + height > PageStyle.HEIGHT - PageStyle.BOTTOM && y > PageStyle.TOP) {
      page = new ArrayList<>();
      pages.add(page);
      y = PageStyle.TOP;
    }
  }

  void paragraph(String text, double size, boolean bold) {
    for (String line : wrap(text, size, bold)) {
      need(size * LEADING);
      putLine(line, size, bold);
    }
  }

  void putLine(String line, double size, boolean bold) {
    put(line, PageStyle.LEFT, y + size, size, bold, Shade.INK);
    y += size * LEADING;
  }

  /** Draws a text word by word, since most words come again. */
  void put(String text, double left, double base, double size, boolean bold, Shade tone) {
    double x = left;
    for (String word : text.split(" ")) {
      Lettering lettering = typeface.lettering(word, bold);
      page.add(new Drawn.Text(x, base, size, lettering, tone));
      x += lettering.width(size) + size * SPACE;
    }
  }

  double widthOf(String text, double size, boolean bold) {
    double width = -size * SPACE;
    for (String word : text.split(" ")) {
      width += typeface.lettering(word, bold).width(size) + size * SPACE;
    }
    return width;
  }

  /** Cuts a text into lines as wide as the page. */
  List<String> wrap(String text, double size, boolean bold) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthOf(longer, size, bold) > style.textWidth()) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** Puts a line at the foot of every page if there is more than one. */
  void footers(String title) {
    double size = style.label();
    for (int index = 0; index < pages.size() && pages.size() > 1; index++) {
      String text = title + ", page " + (index + 1) + " of " + pages.size();
      page = pages.get(index);
      double x = PageStyle.WIDTH - PageStyle.RIGHT - widthOf(text, size, false);
      put(text, x, PageStyle.HEIGHT - PageStyle.BOTTOM * 0.5, size, false, Shade.QUIET);
    }
  }
}
