package org.matraloom.app;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.sheet.Picture;

/** Writes a picture in the form that the ending of its file name asks for. */
final class PictureFile {

  private static final double PIXELS_PER_POINT = 2;

  private PictureFile() {}

  /** Refuses a file name that asks for no form a picture has. */
  static void requireEnding(Path target) {
    String ending = SheetOutput.endingOf(target);
    if (!ending.equals("svg") && !ending.equals("png")) {
      throw new UserError(target + ": a picture is written as .svg or .png");
    }
    WholeFile.requirePlace(target);
  }

  static void write(Picture picture, Path target) throws IOException {
    requireEnding(target);
    if (SheetOutput.endingOf(target).equals("svg")) {
      WholeFile.writeText(target, picture::writeSvg);
    } else {
      WholeFile.write(target, out -> picture.writePng(out, PIXELS_PER_POINT));
    }
  }
}
