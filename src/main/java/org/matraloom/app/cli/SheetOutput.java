package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.matraloom.score.Lexicon;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.PdfPages;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SvgPages;
import org.matraloom.sheet.TextSheet;

/** Writes a sheet in the form that the ending of its file name asks for. */
public final class SheetOutput {

  private SheetOutput() {}

  /**
   * Writes a sheet and tells the names of its files.
   *
   * @param sheet the sheet
   * @param lexicon the lexicon of its sollus
   * @param target the file; from the second drawing on its name has a number
   * @param out where the names are told
   * @throws UserError if the ending of the name is none of a sheet
   * @throws IOException if a file cannot be written
   */
  public static void write(Sheet sheet, Lexicon lexicon, Path target, PrintWriter out)
      throws IOException {
    switch (endingOf(target)) {
      case "pdf" -> WholeFile.write(target, file -> PdfPages.write(sheet, file));
      case "html", "htm" -> WholeFile.writeText(target, file -> HtmlSheet.write(sheet, file));
      case "svg" -> {
        writeSvg(sheet, target, out);
        return;
      }
      case "txt", "loom" ->
          WholeFile.writeText(target, file -> TextSheet.write(sheet, lexicon, file));
      default -> throw unknown(target);
    }
    out.println(target);
  }

  /** One drawing a page; from the second page on the name has a number. */
  private static void writeSvg(Sheet sheet, Path target, PrintWriter out) throws IOException {
    SvgPages pages = SvgPages.of(sheet);
    for (int number = 1; number <= pages.count(); number++) {
      int page = number;
      Path file = number == 1 ? target : numbered(target, number);
      WholeFile.writeText(file, svg -> pages.write(page, svg));
      out.println(file);
    }
  }

  /**
   * The name of one of several files.
   *
   * @param target the name that was asked for, with an ending
   * @param number which of them
   * @return the name with the number before its ending
   */
  public static Path numbered(Path target, int number) {
    String name = target.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return target.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
  }

  /**
   * The ending of a file name.
   *
   * @param target the file
   * @return what follows the last point, in small letters; the whole name if there is no point
   */
  public static String endingOf(Path target) {
    String name = String.valueOf(target.getFileName());
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /**
   * Whether a sheet of that name is plain text.
   *
   * @param target the file
   * @return true for .txt and .loom
   */
  public static boolean isText(Path target) {
    return List.of("txt", "loom").contains(endingOf(target));
  }

  static UserError unknown(Path target) {
    return new UserError(target + ": a sheet is written as .pdf, .svg, .html or .txt");
  }
}
