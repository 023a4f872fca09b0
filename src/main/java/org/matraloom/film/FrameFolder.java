package org.matraloom.film;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;

/** Writes every picture as a PNG file of its own; equal ones are drawn once. */
final class FrameFolder implements PictureSink {

  private final Path folder;
  private byte[] png = new byte[0];
  private int number;

  FrameFolder(Path folder) {
    this.folder = folder;
  }

  @Override
  public void put(FilmCanvas canvas, boolean changed) throws IOException {
    if (changed) {
      png = png(canvas);
    }
    number++;
    Path part = folder.resolve("picture.part");
    Files.write(part, png);
    Files.move(part, folder.resolve(String.format(Locale.ROOT, "picture-%06d.png", number)));
  }

  static byte[] png(FilmCanvas canvas) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(canvas.image(), "png", bytes);
    return bytes.toByteArray();
  }
}
