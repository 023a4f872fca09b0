package org.matraloom.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.picture.Picture;

/** Writes a picture in the form that the ending of its file name asks for. */
public final class PictureFile {

  private static final double PIXELS_PER_POINT = 2;

  private PictureFile() {}

  /**
   * Refuses a file name that asks for no form a picture has.
   *
   * @param target the file to be written
   * @throws UserError if its name ends in neither .png nor .svg
   */
  public static void requireEnding(Path target) {
    String ending = SheetOutput.endingOf(target);
    if (!ending.equals("svg") && !ending.equals("png")) {
      throw new UserError(target + ": a picture is written as .svg or .png");
    }
    WholeFile.requirePlace(target);
  }

  /**
   * Writes a picture as PNG or SVG.
   *
   * @param picture the picture
   * @param target the file, of a name that {@link #requireEnding} accepts
   * @throws IOException if it cannot be written
   */
  public static void write(Picture picture, Path target) throws IOException {
    requireEnding(target);
    if (SheetOutput.endingOf(target).equals("svg")) {
      WholeFile.writeText(target, picture::writeSvg);
    } else {
      WholeFile.write(target, out -> picture.writePng(out, PIXELS_PER_POINT));
    }
  }
}
