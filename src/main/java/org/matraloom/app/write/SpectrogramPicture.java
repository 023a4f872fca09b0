package org.matraloom.app.write;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.voice.Spectrogram;
import org.matraloom.voice.SpokenPhrase;

/**
 * Draws speech as phoneticians do: time to the right, frequency up, strength in grey, with a line
 * at every felt beat.
 */
final class SpectrogramPicture {

  private static final int HIGHEST_HZ = 8000;
  private static final int HEIGHT = 400;
  private static final int PIXELS_A_SECOND = 600;
  private static final int MOST_WIDTH = 8000;
  private static final int MARGIN_LEFT = 56;
  private static final int MARGIN = 28;
  private static final double RANGE_DB = 54;

  /** Few greys keep the file small. */
  private static final int GREYS = 17;

  private static final int GREY_STEP = 255 / GREYS;
  private static final Color GRID = new Color(0xC0392B);

  private final SpokenPhrase spoken;
  private final int ratePerSecond;
  private final int width;

  SpectrogramPicture(SpokenPhrase spoken, int ratePerSecond) {
    this.spoken = spoken;
    this.ratePerSecond = ratePerSecond;
    this.width =
        Math.min(
            MOST_WIDTH, (int) ((long) spoken.samples().length * PIXELS_A_SECOND / ratePerSecond));
  }

  void write(Path target) throws IOException {
    BufferedImage image = draw();
    WholeFile.write(target, out -> ImageIO.write(image, "png", out));
  }

  private BufferedImage draw() {
    BufferedImage image =
        new BufferedImage(
            width + MARGIN_LEFT + MARGIN, HEIGHT + 2 * MARGIN, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, image.getWidth(), image.getHeight());
    drawStrength(image);
    drawScales(pen);
    pen.dispose();
    return image;
  }

  private void drawStrength(BufferedImage image) {
    Spectrogram spectrogram = new Spectrogram(spoken.samples(), ratePerSecond);
    double[][] levels = new double[width][];
    double loudest = -200;
    for (int x = 0; x < width; x++) {
      int frame = (int) ((long) x * spoken.samples().length / width);
      levels[x] = spectrogram.levelsDb(frame, HEIGHT, HIGHEST_HZ);
      for (double level : levels[x]) {
        loudest = Math.max(loudest, level);
      }
    }
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < HEIGHT; y++) {
        double dark = (levels[x][y] - loudest + RANGE_DB) / RANGE_DB;
        int grey = 255 - GREY_STEP * (int) Math.max(0, Math.min(GREYS, GREYS * dark));
        image.setRGB(MARGIN_LEFT + x, MARGIN + HEIGHT - 1 - y, grey << 16 | grey << 8 | grey);
      }
    }
  }

  private void drawScales(Graphics2D pen) {
    pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
    pen.setColor(Color.BLACK);
    pen.drawRect(MARGIN_LEFT - 1, MARGIN - 1, width + 1, HEIGHT + 1);
    for (int khz = 0; khz <= HIGHEST_HZ / 1000; khz++) {
      int y = MARGIN + HEIGHT - khz * 1000 * HEIGHT / HIGHEST_HZ;
      pen.drawLine(MARGIN_LEFT - 5, y, MARGIN_LEFT, y);
      pen.drawString(khz + " kHz", 8, y + 4);
    }
    for (int tenth = 0; tenth * PIXELS_A_SECOND / 10 <= width; tenth++) {
      int x = MARGIN_LEFT + tenth * PIXELS_A_SECOND / 10;
      pen.drawLine(x, MARGIN + HEIGHT, x, MARGIN + HEIGHT + 5);
      pen.drawString(tenth / 10 + "." + tenth % 10 + " s", x - 8, MARGIN + HEIGHT + 19);
    }
    pen.setColor(GRID);
    for (int frame : spoken.gridFrames()) {
      int x = MARGIN_LEFT + (int) ((long) frame * width / spoken.samples().length);
      pen.drawLine(x, MARGIN - 8, x, MARGIN + HEIGHT);
    }
  }
}
