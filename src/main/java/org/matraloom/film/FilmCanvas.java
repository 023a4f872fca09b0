package org.matraloom.film;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.matraloom.picture.Typeface;

/** The picture that is on the screen; what has not changed is not drawn again. */
final class FilmCanvas implements Surface {

  private final FilmSize size;
  private final BufferedImage image;
  private final Graphics2D graphics;
  private final FilmPen pen;
  private final YuvPlanes planes;
  private List<Band> shown = List.of();

  FilmCanvas(FilmSize size, FilmLook look, Typeface typeface) {
    this.size = size;
    this.image =
        new BufferedImage(size.widthPixels(), size.heightPixels(), BufferedImage.TYPE_INT_RGB);
    this.graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.scale(size.scale(), size.scale());
    this.pen = new FilmPen(this, typeface, look);
    this.planes = new YuvPlanes(size.widthPixels(), size.heightPixels());
  }

  /** Shows bands; gives whether anything looks different. */
  boolean show(List<Band> bands) {
    boolean samePlaces = areas(bands).equals(areas(shown));
    boolean changed = false;
    for (int index = 0; index < bands.size(); index++) {
      Band band = bands.get(index);
      if (!samePlaces || !Objects.equals(band.shows(), shown.get(index).shows())) {
        draw(band);
        changed = true;
      }
    }
    shown = bands;
    return changed;
  }

  private static List<Rectangle2D> areas(List<Band> bands) {
    return bands.stream().map(Band::area).toList();
  }

  private void draw(Band band) {
    graphics.setClip(band.area());
    fill(band.area(), pen.look().paper());
    band.draw().accept(pen);
    graphics.setClip(null);
    planes.convert(image, pixels(band.area()));
  }

  /** The pixels that an area covers, from even to even. */
  private Rectangle pixels(Rectangle2D area) {
    int left = (int) Math.floor(area.getMinX() * size.scale()) & ~1;
    int top = (int) Math.floor(area.getMinY() * size.scale()) & ~1;
    int right =
        Math.min(size.widthPixels(), (int) Math.ceil(area.getMaxX() * size.scale()) + 1 & ~1);
    int bottom =
        Math.min(size.heightPixels(), (int) Math.ceil(area.getMaxY() * size.scale()) + 1 & ~1);
    return new Rectangle(left, top, right - left, bottom - top);
  }

  @Override
  public void fill(Shape shape, Color color) {
    graphics.setColor(color);
    graphics.fill(shape);
  }

  /** The picture as planes of 8 bits, 4:2:0. */
  byte[] planes() {
    return planes.bytes();
  }

  BufferedImage image() {
    return image;
  }

  /** The shapes of one picture on another surface. */
  static void draw(List<Band> bands, FilmSize size, FilmPen pen) {
    pen.fill(size.whole(), pen.look().paper());
    new ArrayList<>(bands).forEach(band -> band.draw().accept(pen));
  }
}
