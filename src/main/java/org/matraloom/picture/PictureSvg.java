package org.matraloom.picture;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** A picture as SVG 1.1 (W3C Recommendation, second edition, 2011). */
final class PictureSvg {

  private final PictureContent picture;

  PictureSvg(PictureContent picture) {
    this.picture = picture;
  }

  void write(Appendable out) throws IOException {
    String width = Points.text(picture.width());
    String height = Points.text(picture.height());
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    out.append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\"");
    out.append(" width=\"" + width + "\" height=\"" + height + "\"");
    out.append(" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\">\n");
    out.append("<title>" + Xml.escape(picture.title()) + "</title>\n");
    letterings(out);
    for (PictureItem item : picture.items()) {
      if (item instanceof PictureItem.Words words) {
        words(words, out);
      } else if (item instanceof PictureItem.Form form) {
        form(form, out);
      }
    }
    out.append("</svg>\n");
  }

  private void letterings(Appendable out) throws IOException {
    Map<Integer, Lettering> used = new LinkedHashMap<>();
    for (PictureItem item : picture.items()) {
      if (item instanceof PictureItem.Words words) {
        used.put(words.lettering().number(), words.lettering());
      }
    }
    out.append("<defs>\n");
    for (Lettering lettering : used.values()) {
      out.append("<path id=\"t" + lettering.number() + "\" d=\"" + SvgOutline.of(lettering));
      out.append("\"><title>" + Xml.escape(lettering.text()) + "</title></path>\n");
    }
    out.append("</defs>\n");
  }

  private static void words(PictureItem.Words words, Appendable out) throws IOException {
    double scale = Math.rint(words.size() / Typeface.UNITS * 1e5) / 1e5;
    out.append("<use xlink:href=\"#t" + words.lettering().number() + "\"");
    out.append(" transform=\"translate(" + Points.text(words.x()) + " ");
    out.append(Points.text(words.y()) + ") scale(" + scale + ")\"");
    out.append(" fill=\"" + hex(words.grey()) + "\"/>\n");
  }

  private static void form(PictureItem.Form form, Appendable out) throws IOException {
    out.append("<path d=\"" + path(form.shape()) + "\"");
    if (form.width() > 0) {
      out.append(" fill=\"none\" stroke=\"" + hex(form.grey()) + "\"");
      out.append(" stroke-width=\"" + Points.text(form.width()) + "\"");
      out.append(form.dashed() ? " stroke-dasharray=\"" + dashes() + "\"/>\n" : "/>\n");
    } else {
      out.append(" fill=\"" + hex(form.grey()) + "\"/>\n");
    }
  }

  private static String dashes() {
    return Points.text(PictureItem.DASH) + " " + Points.text(PictureItem.GAP);
  }

  private static String hex(int grey) {
    return "#" + Integer.toHexString(grey).repeat(3);
  }

  private static String path(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] p = new double[6];
    for (PathIterator at = shape.getPathIterator(null); !at.isDone(); at.next()) {
      switch (at.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> step(path, 'M', p, 2);
        case PathIterator.SEG_LINETO -> step(path, 'L', p, 2);
        case PathIterator.SEG_QUADTO -> step(path, 'Q', p, 4);
        case PathIterator.SEG_CUBICTO -> step(path, 'C', p, 6);
        default -> path.append('Z');
      }
    }
    return path.toString();
  }

  private static void step(StringBuilder path, char word, double[] points, int count) {
    path.append(word);
    for (int i = 0; i < count; i++) {
      path.append(i == 0 ? "" : " ").append(Points.text(points[i]));
    }
  }
}
