package org.matraloom.film;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.PathPen;
import org.matraloom.sheet.DrawnLine;

/** A line of the sheet as shapes, made once and laid down as often as it is lit. */
final class ShownLine {

  /** A shape and how dark it is. */
  record Inked(Shape shape, Drawn.Shade shade) {}

  private final DrawnLine line;
  private final List<Inked> shapes;
  private final List<Inked> bare;

  ShownLine(DrawnLine line) {
    this.line = line;
    this.shapes =
        line.things().stream().flatMap(thing -> thing.told(new Shaper()).stream()).toList();
    this.bare =
        line.things().stream()
            .filter(thing -> !(isAbove(thing)))
            .flatMap(thing -> thing.told(new Shaper()).stream())
            .toList();
  }

  DrawnLine line() {
    return line;
  }

  /** Names and brackets that stand above the hand. */
  private boolean isAbove(Drawn thing) {
    if (thing instanceof Drawn.Text text) {
      return text.y() < line.top();
    }
    return thing instanceof Drawn.Rule rule && rule.y1() < line.top() && rule.y2() <= line.top();
  }

  /** Lays it down with its left upper corner at a place, so many pixels to a point. */
  void draw(FilmPen pen, double x, double y, double scale) {
    lay(shapes, pen, x, y, scale);
  }

  /** The same without names and brackets; the hand begins at the place. */
  void drawBare(FilmPen pen, double x, double y, double scale) {
    lay(bare, pen, x, y - line.top() * scale, scale);
  }

  private static void lay(List<Inked> all, FilmPen pen, double x, double y, double scale) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.scale(scale, scale);
    for (Inked one : all) {
      pen.fill(place.createTransformedShape(one.shape()), pen.look().of(one.shade()));
    }
  }

  /** Each thing on the sheet as shapes. */
  private static final class Shaper implements Drawn.DrawnVisitor<List<Inked>> {

    @Override
    public List<Inked> text(Drawn.Text text) {
      return List.of(
          new Inked(PathPen.shape(text.lettering(), text.x(), text.y(), text.size()), text.tone()));
    }

    @Override
    public List<Inked> rule(Drawn.Rule rule) {
      Shape line = new Line2D.Double(rule.x1(), rule.y1(), rule.x2(), rule.y2());
      return List.of(new Inked(stroke(rule.width()).createStrokedShape(line), rule.tone()));
    }

    @Override
    public List<Inked> box(Drawn.Box box) {
      Shape frame = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
      Shape shape = box.line() == 0 ? frame : stroke(box.line()).createStrokedShape(frame);
      return List.of(new Inked(shape, box.tone()));
    }

    @Override
    public List<Inked> symbol(Drawn.Symbol symbol) {
      List<Inked> all = new ArrayList<>();
      FilmPen.shapes(symbol.figure(), symbol.x(), symbol.y(), symbol.size())
          .forEach(shape -> all.add(new Inked(shape, Drawn.Shade.INK)));
      return all;
    }

    private static BasicStroke stroke(double width) {
      return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }
  }
}
