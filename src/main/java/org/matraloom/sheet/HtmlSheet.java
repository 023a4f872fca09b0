package org.matraloom.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Typeface;
import org.matraloom.picture.Xml;
import org.matraloom.score.Kriya;
import org.matraloom.script.Script;

/**
 * The sheet as one HTML file, for any width of screen and for A4.
 *
 * <p>Roman letters take the reader's own sans serif; for another script the font travels in the
 * file. Nothing is fetched from anywhere.
 */
public final class HtmlSheet {

  /** A sheet runs nothing and fetches nothing, whatever a title says. */
  private static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none';"
          + " form-action 'none'";

  private HtmlSheet() {}

  /**
   * Writes a sheet.
   *
   * @param sheet what to write
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, Appendable out) throws IOException {
    open(new SheetWords(sheet).title(), sheet, out);
    out.append("<main>\n");
    body(sheet, "", out);
    out.append("</main>\n</body>\n</html>\n");
  }

  /** The head of a file with the styles and signs of a sheet, and the beginning of its body. */
  static void open(String title, Sheet sheet, Appendable out) throws IOException {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\">\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    out.append("<title>" + Xml.escape(title) + "</title>\n");
    out.append("<style>\n" + font(sheet) + styles() + "</style>\n</head>\n");
    out.append("<body class=\"" + (sheet.options().large() ? "large" : "plain") + "\">\n");
    HtmlRows.figures(out);
  }

  /** All of a sheet; the names of its marks begin with a prefix. */
  static void body(Sheet sheet, String prefix, Appendable out) throws IOException {
    titleBlock(sheet, new SheetWords(sheet), out);
    rows(sheet, prefix, out);
    closing(sheet, out);
    signs(sheet, out);
    if (sheet.options().cues()) {
      out.append("<h2 class=\"part\">What falls on each kriya</h2>\n");
      out.append("<p>In brackets: the sound of that sollu rings on or has begun before.</p>\n");
      new HtmlRows(sheet, Optional.of(prefix + "c"), out).write(CueMap.rows(sheet), false);
    }
  }

  /**
   * Writes the title and the setting.
   *
   * @param sheet the sheet
   * @param words its sentences
   * @param out where they go
   * @throws IOException if it cannot be written
   */
  public static void titleBlock(Sheet sheet, SheetWords words, Appendable out) throws IOException {
    out.append("<header>\n<h1>" + Xml.escape(words.title()) + "</h1>\n");
    out.append("<p>" + Xml.escape(words.setting()) + ".<br>\n");
    out.append(Xml.escape(words.places()) + ".</p>\n");
    String loss = sheet.options().writing().script().loss();
    if (!loss.isEmpty()) {
      out.append("<p>" + Xml.escape(loss) + "</p>\n");
    }
    out.append("<ul class=\"legend\">\n");
    Set<Kriya> kriyas = words.kriyas();
    for (Kriya kriya : kriyas) {
      out.append("<li>" + HtmlRows.figure(Figure.of(kriya)) + " ");
      out.append(Xml.escape(words.kriya(kriya)) + "</li>\n");
    }
    out.append("</ul>\n</header>\n");
  }

  /**
   * The sums and the verdict.
   *
   * @param sheet the sheet
   * @param out where they go
   * @throws IOException if it cannot be written
   */
  public static void closing(Sheet sheet, Appendable out) throws IOException {
    out.append("<div class=\"closing\">\n");
    for (String sentence : sheet.closing()) {
      out.append("<p>" + Xml.escape(sentence) + "</p>\n");
    }
    out.append("</div>\n");
  }

  /**
   * What the signs below the rows mean.
   *
   * @param sheet the sheet
   * @param out where it goes
   * @throws IOException if it cannot be written
   */
  public static void signs(Sheet sheet, Appendable out) throws IOException {
    sign(Figure.LANDING, new SheetWords(sheet).landsHere(), out);
    if (sheet.marksBreaths()) {
      sign(Figure.BREATH, SheetWords.BREATHE_HERE, out);
    }
    if (sheet.performance().composition().avartana().kalai() > 1) {
      sign(Figure.AGAIN, SheetWords.ONCE_MORE, out);
    }
    if (sheet.hasStatements()) {
      out.append("<p><span class=\"st sb se key\"></span> " + SheetWords.SAID_AGAIN + "</p>\n");
    }
  }

  private static void sign(Figure figure, String words, Appendable out) throws IOException {
    out.append("<p>" + HtmlRows.figure(figure) + " " + words + "</p>\n");
  }

  /**
   * Writes all rows.
   *
   * @param sheet the sheet
   * @param out where they go
   * @throws IOException if it cannot be written
   */
  public static void rows(Sheet sheet, Appendable out) throws IOException {
    rows(sheet, "", out);
  }

  /**
   * The rows of a sheet of one reciter, each by itself, for a page that puts them in their places:
   * a row is the same wherever it stands, as its marks have no numbers, and their widths are data
   * ({@code data-grow}), as such a page may allow no styles in its text.
   *
   * @param sheet the sheet
   * @return elements of HTML, one row each
   * @throws IOException never, as they are not written to a file
   */
  public static List<String> rowsApart(Sheet sheet) throws IOException {
    List<String> rows = new ArrayList<>();
    for (Row row : sheet.rows()) {
      StringBuilder out = new StringBuilder();
      new HtmlRows(sheet, Optional.empty(), out).write(row, true);
      rows.add(out.toString());
    }
    return rows;
  }

  private static void rows(Sheet sheet, String prefix, Appendable out) throws IOException {
    out.append("<div class=\"rows\" lang=\"" + sheet.options().writing().script().languageTag());
    out.append("\">\n");
    new HtmlRows(sheet, Optional.of(prefix + "m"), out).write(sheet.rows(), true);
    out.append("</div>\n");
  }

  /**
   * The font of a script that a reader may not have.
   *
   * @param sheet the sheet
   * @return styles with the font in them; nothing for Roman letters
   */
  public static String font(Sheet sheet) {
    Script script = sheet.options().writing().script();
    if (script == Script.LATIN || script == Script.ISO15919) {
      return "";
    }
    String bytes = Base64.getEncoder().encodeToString(Typeface.fontFile(script.name()));
    return "@font-face{font-family:Sollus;src:url(data:font/ttf;base64,"
        + bytes
        + ")}\n"
        + "body{font-family:Sollus,system-ui,sans-serif}\n";
  }

  /**
   * How a sheet looks.
   *
   * @return styles in CSS
   */
  public static String styles() {
    return resource(HtmlSheet.class, "sheet.css");
  }

  /**
   * A part of a page that lies beside the class that writes it.
   *
   * @param writer the class
   * @param name the name of the part
   * @return its text
   */
  public static String resource(Class<?> writer, String name) {
    try (InputStream in = writer.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the part " + name + " of the program cannot be read", e);
    }
  }
}
