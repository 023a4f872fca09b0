package org.matraloom.paper;

import org.matraloom.picture.Lettering;

/** One thing on a drawn page; lengths in points, y downwards from the top of the page. */
public sealed interface Drawn {

  /**
   * What a visitor says of it.
   *
   * @param <R> what is said
   * @param visitor who says it
   * @return what was said
   */
  <R> R told(DrawnVisitor<R> visitor);

  /**
   * Says something of a thing of each kind on a drawn page; a new kind is a new method for all.
   *
   * @param <R> what is said
   */
  interface DrawnVisitor<R> {

    /**
     * Says something of a lettering.
     *
     * @param text the thing
     * @return what is said
     */
    R text(Drawn.Text text);

    /**
     * Says something of a straight line.
     *
     * @param rule the thing
     * @return what is said
     */
    R rule(Drawn.Rule rule);

    /**
     * Says something of a rectangle.
     *
     * @param box the thing
     * @return what is said
     */
    R box(Drawn.Box box);

    /**
     * Says something of a figure.
     *
     * @param symbol the thing
     * @return what is said
     */
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

    /**
     * The shade as it is written on pages.
     *
     * @return a number sign and six digits
     */
    public String hex() {
      return hex;
    }

    /**
     * The same as a part of full white.
     *
     * @return 0 for black to 1 for white
     */
    public double grey() {
      return Integer.parseInt(hex.substring(1, 3), 16) / 255.0;
    }
  }

  /**
   * A lettering with its base line at y.
   *
   * @param x its left edge
   * @param y its base line
   * @param size type size
   * @param lettering the letters
   * @param tone how dark
   */
  record Text(double x, double y, double size, Lettering lettering, Shade tone) implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.text(this);
    }
  }

  /**
   * A straight line.
   *
   * @param x1 from
   * @param y1 from
   * @param x2 to
   * @param y2 to
   * @param width how wide
   * @param tone how dark
   */
  record Rule(double x1, double y1, double x2, double y2, double width, Shade tone)
      implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.rule(this);
    }
  }

  /**
   * A rectangle: a frame of some width, or filled where the width is 0.
   *
   * @param x its left edge
   * @param y its upper edge
   * @param width across
   * @param height down
   * @param line the width of the frame; 0 if it is filled
   * @param tone how dark
   */
  record Box(double x, double y, double width, double height, double line, Shade tone)
      implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.box(this);
    }
  }

  /**
   * A figure in a square.
   *
   * @param x its left edge
   * @param y its upper edge
   * @param size the side of the square
   * @param figure what is drawn
   */
  record Symbol(double x, double y, double size, Figure figure) implements Drawn {
    @Override
    public <R> R told(DrawnVisitor<R> visitor) {
      return visitor.symbol(this);
    }
  }
}
