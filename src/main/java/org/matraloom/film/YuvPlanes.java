package org.matraloom.film;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * Pixels as luma and two planes of colour at half the size.
 *
 * <p>Source of the numbers: Rec. ITU-R BT.709-6, 3 (matrix) and 5 (8 bits, luma from 16 to 235), in
 * parts of 65,536.
 */
final class YuvPlanes {

  private static final int SHIFT = 16;
  private static final int HALF = 1 << SHIFT - 1;
  private static final int BYTE = 0xff;
  private static final int BLACK = 16;
  private static final int MIDDLE = 128;

  private static final int[] LUMA = {11966, 40254, 4064};
  private static final int[] BLUE = {-6596, -22189, 28784};
  private static final int[] RED = {28784, -26145, -2639};

  private final int width;
  private final int height;
  private final byte[] bytes;

  /** Planes of a picture of even width and height. */
  YuvPlanes(int width, int height) {
    this.width = width;
    this.height = height;
    this.bytes = new byte[width * height * 3 / 2];
  }

  byte[] bytes() {
    return bytes;
  }

  /** Takes over the pixels of an area that begins and ends at even places. */
  void convert(BufferedImage image, Rectangle area) {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    int blueAt = width * height;
    int redAt = blueAt + blueAt / 4;
    for (int y = area.y; y < area.y + area.height; y += 2) {
      for (int x = area.x; x < area.x + area.width; x += 2) {
        int at = y * width + x;
        int a = pixels[at];
        int b = pixels[at + 1];
        int c = pixels[at + width];
        int d = pixels[at + width + 1];
        bytes[at] = luma(a);
        bytes[at + 1] = b == a ? bytes[at] : luma(b);
        bytes[at + width] = c == a ? bytes[at] : luma(c);
        bytes[at + width + 1] = d == a ? bytes[at] : luma(d);
        int red = (a >> 16 & BYTE) + (b >> 16 & BYTE) + (c >> 16 & BYTE) + (d >> 16 & BYTE);
        int green = (a >> 8 & BYTE) + (b >> 8 & BYTE) + (c >> 8 & BYTE) + (d >> 8 & BYTE);
        int blue = (a & BYTE) + (b & BYTE) + (c & BYTE) + (d & BYTE);
        int half = (y >> 1) * (width >> 1) + (x >> 1);
        bytes[blueAt + half] = colour(BLUE, red, green, blue);
        bytes[redAt + half] = colour(RED, red, green, blue);
      }
    }
  }

  private static byte luma(int rgb) {
    int sum = LUMA[0] * (rgb >> 16 & BYTE) + LUMA[1] * (rgb >> 8 & BYTE) + LUMA[2] * (rgb & BYTE);
    return (byte) (BLACK + (sum + HALF >> SHIFT));
  }

  /** From the sums of four pixels. */
  private static byte colour(int[] parts, int red, int green, int blue) {
    int sum = parts[0] * red + parts[1] * green + parts[2] * blue;
    return (byte) (MIDDLE + (sum + 2 * HALF * 2 >> SHIFT + 2));
  }
}
