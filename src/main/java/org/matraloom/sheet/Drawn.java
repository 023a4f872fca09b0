package org.matraloom.sheet;

import org.matraloom.picture.Lettering;

/** One thing on a drawn page; lengths in points, y downwards from the top of the page. */
sealed interface Drawn {

  /** What a visitor says of it. */
  <R> R told(DrawnVisitor<R> visitor);

  /**
   * Says something of a thing of each kind on a drawn page; a new kind is a new method for all.
   *
   * @param <R> what is said
   */
  interface DrawnVisitor<R> {

    R text(Drawn.Text text);

    R rule(Drawn.Rule rule);

    R box(Drawn.Box box);

    R symbol(Drawn.Symbol symbol);
  }

  /** How dark a thing is. */
  enum Shade {
    /** Nearly black. */
    INK("#111111"),
    /** A grey that still reads well on white, 7 to 1. */
    QUIET("#595959"),
    /** For rules between beats. */
    RULE("#9a9a9a"),
    /** For the ground behind a ringing sound. */
    TINT("#e4e4e4");

    private final String hex;

    Shade(String hex) {
      this.hex = hex;
    }

    String hex() {
      return hex;
    }

    /** The same as a part of full white, 0 to 1. */
    double grey() {
      return Integer.parseInt(hex.substring(1, 3), 16) / 255.0;
    }
  }

  /** A lettering with its base line at y. */
  record Text(double x, double y, double size, Lettering lettering, Shade tone) implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.text(this);
    }
  }

  /** A straight line. */
  record Rule(double x1, double y1, double x2, double y2, double width, Shade tone)
      implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.rule(this);
    }
  }

  /** A rectangle: a frame of some width, or filled where the width is 0. */
  record Box(double x, double y, double width, double height, double line, Shade tone)
      implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.box(this);
    }
  }

  /** A figure in a square. */
  record Symbol(double x, double y, double size, Figure figure) implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.symbol(this);
    }
  }
}
