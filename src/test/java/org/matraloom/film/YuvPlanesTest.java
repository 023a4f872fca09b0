package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Colours against the 100 % bars of BT.709: Rec. ITU-R BT.709-6, worked out in 8 bits. */
class YuvPlanesTest {

  @ParameterizedTest
  @CsvSource({
    "ffffff, 235, 128, 128",
    "000000, 16, 128, 128",
    "ff0000, 63, 102, 240",
    "00ff00, 173, 42, 26",
    "0000ff, 32, 240, 118",
    "ffff00, 219, 16, 138",
    "00ffff, 188, 154, 16",
    "808080, 126, 128, 128"
  })
  void barsHaveTheirPublishedNumbers(String rgb, int luma, int blue, int red) {
    BufferedImage image = new BufferedImage(4, 2, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 4; x++) {
      image.setRGB(x, 0, Integer.parseInt(rgb, 16));
      image.setRGB(x, 1, Integer.parseInt(rgb, 16));
    }
    YuvPlanes planes = new YuvPlanes(4, 2);
    planes.convert(image, new Rectangle(2, 0, 2, 2));
    byte[] bytes = planes.bytes();
    assertEquals(12, bytes.length);
    assertEquals(0, bytes[0], "what is not in the area stays");
    assertEquals(luma, bytes[2] & 0xff, 1);
    assertEquals(luma, bytes[7] & 0xff, 1);
    assertEquals(blue, bytes[9] & 0xff, 1);
    assertEquals(red, bytes[11] & 0xff, 1);
  }
}
