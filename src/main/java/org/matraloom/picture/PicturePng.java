package org.matraloom.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
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
      pen.setColor(color(item.grey()));
      pen.fill(item.ink());
    }
    pen.dispose();
    ImageIO.write(image, "png", out);
  }

  private static Color color(int grey) {
    return new Color(grey, grey, grey);
  }
}
