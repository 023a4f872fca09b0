package org.matraloom.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.w3c.dom.Document;

class PictureTest {

  private static final Type PLAIN = new Type(16, false, Tone.INK);

  @Test
  void theSvgIsWellFormedAndKeepsItsWords() throws Exception {
    Document svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg(drawn()).getBytes(StandardCharsets.UTF_8)));
    assertEquals("svg", svg.getDocumentElement().getTagName());
    assertEquals("0 0 200 100", svg.getDocumentElement().getAttribute("viewBox"));
    assertEquals("rain < river", svg.getElementsByTagName("title").item(0).getTextContent());
    assertEquals("தாளம் & ta", svg.getElementsByTagName("title").item(1).getTextContent());
    assertEquals(2, svg.getElementsByTagName("use").getLength());
    assertEquals(0, svg.getElementsByTagName("text").getLength(), "letters are outlines");
    assertTrue(svg(drawn()).contains("stroke-dasharray=\"4 3\""));
  }

  @Test
  void thePngShowsTheSameInGreys() throws IOException {
    BufferedImage png = ImageIO.read(new ByteArrayInputStream(png(drawn())));
    assertEquals(400, png.getWidth());
    assertEquals(200, png.getHeight());
    assertEquals(0xff, grey(png, 2, 2));
    assertEquals(0xcc, grey(png, 100, 40));
    assertEquals(0x11, grey(png, 40, 120), "in the middle of the dot");
    assertEquals(0x9a, grey(png, 300, 100), "on the line");
    int dark = 0;
    for (int x = 0; x < 400; x++) {
      for (int y = 160; y < 200; y++) {
        dark += grey(png, x, y) < 0x40 ? 1 : 0;
      }
    }
    assertTrue(dark > 200, "letters have ink: " + dark);
  }

  @Test
  void theSameDrawingGivesTheSameBytes() throws IOException {
    assertArrayEquals(png(drawn()), png(drawn()));
    assertEquals(svg(drawn()), svg(drawn()));
  }

  @Test
  void aTextIsAsWideAsItSays() {
    Picture picture = new Picture(10, 10, "");
    double one = picture.widthOf(PLAIN, "ta");
    assertTrue(one > 8 && one < 20, "width " + one);
    assertEquals(2 * one, picture.widthOf(new Type(32, false, Tone.INK), "ta"), 1e-9);
  }

  private static Picture drawn() {
    Picture picture = new Picture(200, 100, "rain < river");
    picture.fill(new Rectangle2D.Double(30, 10, 50, 20), Tone.FAINT);
    picture.fill(PictureMarks.dot(20, 60, 5), Tone.INK);
    picture.line(110, 50, 190, 50, 2, Tone.RULE);
    picture.outline(PictureMarks.plus(100, 70, 4), 1, true, Tone.QUIET);
    picture.text(20, 95, Anchor.BEGIN, PLAIN, "தாளம் & ta");
    picture.text(190, 95, Anchor.END, PLAIN, "தாளம் & ta");
    return picture;
  }

  private static int grey(BufferedImage image, int x, int y) {
    int[] sample = new int[4];
    return image.getRaster().getPixel(x, y, sample)[0];
  }

  private static byte[] png(Picture picture) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    picture.writePng(out, 2);
    return out.toByteArray();
  }

  private static String svg(Picture picture) throws IOException {
    StringBuilder out = new StringBuilder();
    picture.writeSvg(out);
    return out.toString();
  }
}
