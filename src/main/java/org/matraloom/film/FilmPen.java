package org.matraloom.film;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.PathPen;
import org.matraloom.picture.Typeface;

/** Draws letters, lines and figures of the hand on a surface. */
final class FilmPen {

  /** Nothing is written smaller than this, in pixels of the large screen. */
  static final double LEAST = 30;

  private static final double LEADING = 1.3;
  private static final String CUT = "\u2026";

  /** Which part of a text stands at its place, as a share of its width. */
  enum Side {
    LEFT(0),
    MIDDLE(0.5),
    RIGHT(1);

    private final double share;

    Side(double share) {
      this.share = share;
    }
  }

  /** How a text is written: at most so large, bold or not. */
  record Stylus(double size, boolean bold, Color color) {}

  private final Surface surface;
  private final Typeface typeface;
  private final FilmLook look;

  FilmPen(Surface surface, Typeface typeface, FilmLook look) {
    this.surface = surface;
    this.typeface = typeface;
    this.look = look;
  }

  FilmLook look() {
    return look;
  }

  void fill(Shape shape, Color color) {
    surface.fill(shape, color);
  }

  /** Writes a text in one line that is no wider than a room: smaller first, then cut. */
  double text(String text, double x, double y, Side side, double room, Stylus type) {
    double size = type.size;
    String shown = text;
    double width = width(shown, size, type.bold);
    if (width > room) {
      size = Math.max(Math.min(size, LEAST), size * room / width);
      while (width(shown, size, type.bold) > room && shown.length() > 1) {
        String base = shown.endsWith(CUT) ? shown.substring(0, shown.length() - 1) : shown;
        shown = base.substring(0, base.offsetByCodePoints(base.length(), -1)).stripTrailing() + CUT;
      }
    }
    Lettering letters = typeface.lettering(shown, type.bold);
    double left = x - side.share * letters.width(size);
    surface.fill(PathPen.shape(letters, left, y, size), type.color);
    return letters.width(size);
  }

  /** Writes a text in as many lines as a room allows; gives the base line after the last. */
  double lines(String text, double x, double y, double room, int most, Stylus type) {
    double base = y;
    List<String> lines = wrap(text, room, type);
    for (int index = 0; index < Math.min(most, lines.size()); index++) {
      boolean last = index == most - 1 && lines.size() > most;
      String line = last ? lines.get(index) + " " + CUT : lines.get(index);
      text(line, x, base, Side.LEFT, room, type);
      base += type.size * LEADING;
    }
    return base;
  }

  /**
   * The same type, smaller if a text would not go into a room otherwise.
   *
   * @param most lines at the least size; above it one fewer
   */
  Stylus fitting(String text, double room, int most, Stylus type) {
    Stylus fits = type;
    while (fits.size > LEAST && !goesInto(text, room, most - 1, fits)) {
      fits = new Stylus(Math.max(LEAST, fits.size - 2), fits.bold, fits.color);
    }
    return fits;
  }

  /** Whether a text goes into so many lines of a room uncut. */
  boolean goesInto(String text, double room, int most, Stylus type) {
    List<String> lines = wrap(text, room, type);
    return lines.size() <= most
        && lines.stream().allMatch(line -> width(line, type.size, type.bold) <= room);
  }

  private List<String> wrap(String text, double room, Stylus type) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, type.size, type.bold) > room) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  double width(String text, double size, boolean bold) {
    return typeface.lettering(text, bold).width(size);
  }

  void rule(double x1, double y1, double x2, double y2, double thick, Color color) {
    surface.fill(stroke(thick).createStrokedShape(new Line2D.Double(x1, y1, x2, y2)), color);
  }

  void frame(Rectangle2D box, double thick, Color color) {
    surface.fill(stroke(thick).createStrokedShape(box), color);
  }

  /** A figure in a square of some side. */
  void figure(Figure figure, double x, double y, double side, Color color) {
    shapes(figure, x, y, side).forEach(shape -> surface.fill(shape, color));
  }

  /** The shapes of a figure in a square of some side. */
  static List<Shape> shapes(Figure figure, double x, double y, double side) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.scale(side / Figure.BOX, side / Figure.BOX);
    List<Shape> shapes = new ArrayList<>();
    for (Figure.Part part : figure.parts()) {
      Path2D path = path(part.path());
      Shape shape = part.width() == 0 ? path : round(part.width()).createStrokedShape(path);
      shapes.add(place.createTransformedShape(shape));
    }
    return shapes;
  }

  /** The words M, L, C and Z of a figure as a path. */
  private static Path2D path(String words) {
    Path2D path = new Path2D.Double();
    try (Scanner word = new Scanner(words.replaceAll("([MLCZ])", " $1 "))) {
      while (word.hasNext()) {
        switch (word.next()) {
          case "M" -> path.moveTo(number(word), number(word));
          case "L" -> path.lineTo(number(word), number(word));
          case "C" -> curves(word, path);
          default -> path.closePath();
        }
      }
    }
    return path;
  }

  private static void curves(Scanner word, Path2D path) {
    do {
      path.curveTo(
          number(word), number(word), number(word), number(word), number(word), number(word));
    } while (word.hasNext("[-.0-9]+"));
  }

  private static double number(Scanner word) {
    return Double.parseDouble(word.next());
  }

  private static BasicStroke round(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  private static BasicStroke stroke(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }
}
