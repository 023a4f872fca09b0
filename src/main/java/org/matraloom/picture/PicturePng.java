package org.matraloom.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** A picture as pixels in 256 greys. */
final class PicturePng {

  private final PictureContent picture;
  private final double pixelsPerPoint;

  PicturePng(PictureContent picture, double pixelsPerPoint) {
    this.picture = picture;
    this.pixelsPerPoint = pixelsPerPoint;
  }

  void write(OutputStream out) throws IOException {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(picture.width() * pixelsPerPoint),
            (int) Math.ceil(picture.height() * pixelsPerPoint),
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(pixelsPerPoint, pixelsPerPoint);
    for (PictureItem item : picture.items()) {
      if (item instanceof PictureItem.Words words) {
        pen.setColor(color(words.grey()));
        pen.fill(outline(words));
      } else if (item instanceof PictureItem.Form form) {
        pen.setColor(color(form.grey()));
        pen.fill(form.width() > 0 ? form.stroke().createStrokedShape(form.shape()) : form.shape());
      }
    }
    pen.dispose();
    ImageIO.write(image, "png", out);
  }

  private static Color color(int grey) {
    return new Color(grey, grey, grey);
  }

  private static Path2D outline(PictureItem.Words words) {
    double scale = words.size() / Typeface.UNITS;
    double x = words.x();
    double y = words.y();
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    for (Lettering.Stroke stroke : words.lettering().outline()) {
      if (stroke instanceof Lettering.Stroke.Move to) {
        path.moveTo(x + to.x() * scale, y + to.y() * scale);
      } else if (stroke instanceof Lettering.Stroke.Line to) {
        path.lineTo(x + to.x() * scale, y + to.y() * scale);
      } else if (stroke instanceof Lettering.Stroke.Bend to) {
        path.quadTo(
            x + to.x1() * scale, y + to.y1() * scale, x + to.x() * scale, y + to.y() * scale);
      } else if (stroke instanceof Lettering.Stroke.Curve to) {
        path.curveTo(
            x + to.x1() * scale,
            y + to.y1() * scale,
            x + to.x2() * scale,
            y + to.y2() * scale,
            x + to.x() * scale,
            y + to.y() * scale);
      } else {
        path.closePath();
      }
    }
    return path;
  }
}
