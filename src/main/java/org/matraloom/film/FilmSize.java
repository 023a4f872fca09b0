package org.matraloom.film;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** How large a film is, and where on the screen things stand. */
public enum FilmSize {
  /** 1920 by 1080, for a screen on the wall. */
  WIDE(1920, 1080, 1),
  /** 1080 by 1920, for a phone held upright. */
  TALL(1080, 1920, 1),
  /** 1280 by 720, the wide screen in fewer pixels. */
  SMALL(1920, 1080, 2.0 / 3);

  /** Space left free at the sides, in pixels of the large screen. */
  static final double MARGIN = 80;

  private static final double TALL_MARGIN = 50;

  private final int width;
  private final int height;
  private final double scale;

  FilmSize(int width, int height, double scale) {
    this.width = width;
    this.height = height;
    this.scale = scale;
  }

  /**
   * How wide a picture is.
   *
   * @return pixels, even
   */
  public int widthPixels() {
    return (int) Math.round(width * scale);
  }

  /**
   * How high a picture is.
   *
   * @return pixels, even
   */
  public int heightPixels() {
    return (int) Math.round(height * scale);
  }

  /**
   * How it is asked for.
   *
   * @return width, x, height
   */
  public String words() {
    return widthPixels() + "x" + heightPixels();
  }

  /** Pixels of this film to a pixel of the screen on which things are placed. */
  double scale() {
    return scale;
  }

  boolean isUpright() {
    return height > width;
  }

  double margin() {
    return isUpright() ? TALL_MARGIN : MARGIN;
  }

  /** The width between the margins. */
  double room() {
    return width - 2 * margin();
  }

  /** Stylus size of the sollus of a line, in points of a {@code DrawnLine}. */
  double body() {
    return isUpright() ? 34 : 20;
  }

  Rectangle2D whole() {
    return new Rectangle2D.Double(0, 0, width, height);
  }

  Rectangle2D head() {
    return band(0, isUpright() ? 340 : 200);
  }

  Rectangle2D line() {
    return isUpright() ? band(340, 400) : band(200, 330);
  }

  Rectangle2D next() {
    return isUpright() ? band(740, 330) : band(530, 210);
  }

  Rectangle2D hand() {
    return isUpright() ? band(1070, 430) : new Rectangle2D.Double(0, 740, 1140, 340);
  }

  Rectangle2D news() {
    return isUpright() ? band(1500, 420) : new Rectangle2D.Double(1140, 740, 780, 340);
  }

  /** All parts of the screen, from the top. */
  List<Rectangle2D> bands() {
    return List.of(head(), line(), next(), hand(), news());
  }

  private Rectangle2D band(double top, double high) {
    return new Rectangle2D.Double(0, top, width, high);
  }
}
