package org.matraloom.picture;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing in greys, written as SVG or as PNG with the same letters and lines.
 *
 * <p>Lengths are points, x to the right, y downwards from the upper left corner. What is drawn
 * later covers what is there.
 */
public final class Picture {

  /** How dark a thing is; neighbours are told apart in a grey print. */
  public enum Tone {
    /** Nearly black. */
    INK(0x11),
    /** A grey that still reads well on white, 7 to 1. */
    QUIET(0x59),
    /** For lines that divide. */
    RULE(0x9a),
    /** For lines that only guide the eye, and for a ground behind marks. */
    FAINT(0xcc),
    /** The paper. */
    PAPER(0xff);

    private final int grey;

    Tone(int grey) {
      this.grey = grey;
    }
  }

  /** Which part of a text stands at its place. */
  public enum Anchor {
    /** It begins there. */
    BEGIN(0),
    /** Its middle is there. */
    MIDDLE(0.5),
    /** It ends there. */
    END(1);

    private final double share;

    Anchor(double share) {
      this.share = share;
    }
  }

  /**
   * How texts are written.
   *
   * @param size the type size, in points
   * @param bold whether they are bold
   * @param tone how dark they are
   */
  public record Type(double size, boolean bold, Tone tone) {}

  private final double width;
  private final double height;
  private final String title;
  private final Typeface typeface = new Typeface();
  private final List<PictureItem> items = new ArrayList<>();

  /**
   * An empty sheet.
   *
   * @param width its width, above 0
   * @param height its height, above 0
   * @param title what it shows, in a sentence for those who cannot see it
   */
  public Picture(double width, double height, String title) {
    this.width = width;
    this.height = height;
    this.title = title;
    fill(new Rectangle2D.Double(0, 0, width, height), Tone.PAPER);
  }

  /**
   * Writes a text.
   *
   * @param x where its anchor is
   * @param y its base line
   * @param anchor which part of it stands at x
   * @param type how it is written
   * @param text the text
   */
  public void text(double x, double y, Anchor anchor, Type type, String text) {
    Lettering lettering = typeface.lettering(text, type.bold());
    double left = x - anchor.share * lettering.width(type.size());
    items.add(new PictureItem.Words(left, y, type.size(), lettering, type.tone().grey));
  }

  /**
   * How wide a text is.
   *
   * @param type how it is written
   * @param text the text
   * @return points
   */
  public double widthOf(Type type, String text) {
    return typeface.lettering(text, type.bold()).width(type.size());
  }

  /**
   * Draws a straight line.
   *
   * @param x1 where it begins
   * @param y1 where it begins
   * @param x2 where it ends
   * @param y2 where it ends
   * @param thick its width
   * @param tone how dark it is
   */
  public void line(double x1, double y1, double x2, double y2, double thick, Tone tone) {
    items.add(new PictureItem.Form(new Line2D.Double(x1, y1, x2, y2), thick, false, tone.grey));
  }

  /**
   * Draws along the edge of a shape.
   *
   * @param shape the shape
   * @param thick the width of the line
   * @param dashed whether the line is broken
   * @param tone how dark it is
   */
  public void outline(Shape shape, double thick, boolean dashed, Tone tone) {
    items.add(new PictureItem.Form(shape, thick, dashed, tone.grey));
  }

  /**
   * Fills a shape.
   *
   * @param shape the shape
   * @param tone how dark it is
   */
  public void fill(Shape shape, Tone tone) {
    items.add(new PictureItem.Form(shape, 0, false, tone.grey));
  }

  /**
   * Writes it as SVG 1.1, every letter as an outline.
   *
   * @param out where it goes
   * @throws IOException if it cannot be written
   */
  public void writeSvg(Appendable out) throws IOException {
    new PictureSvg(content()).write(out);
  }

  /**
   * Writes it as PNG.
   *
   * @param out where it goes; not closed
   * @param pixelsPerPoint its resolution, above 0
   * @throws IOException if it cannot be written
   */
  public void writePng(OutputStream out, double pixelsPerPoint) throws IOException {
    new PicturePng(content(), pixelsPerPoint).write(out);
  }

  private PictureContent content() {
    return new PictureContent(width, height, title, items);
  }
}
