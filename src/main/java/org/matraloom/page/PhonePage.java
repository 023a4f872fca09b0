package org.matraloom.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import org.matraloom.picture.Xml;
import org.matraloom.sheet.HtmlRows;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetWords;

/**
 * A page for a phone in one HTML file: the sheet follows the sound, and everything works offline.
 *
 * <p>The file carries its sounds as clips and puts them together at the tempo that is chosen; a
 * content security policy forbids it to fetch anything and to run any script but its own.
 */
public final class PhonePage {

  private static final String POLICY =
      "default-src 'none'; script-src '%s'; style-src 'unsafe-inline'; font-src data:;"
          + " base-uri 'none'; form-action 'none'";

  private final Sheet sheet;
  private final PageScore score;
  private final SheetWords words;
  private final Appendable out;

  private PhonePage(Sheet sheet, PageScore score, Appendable out) {
    this.sheet = sheet;
    this.score = score;
    this.words = new SheetWords(sheet);
    this.out = out;
  }

  /**
   * Writes a page.
   *
   * @param sheet a sheet with one row an avartana
   * @param sound its sounds
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, PageSound sound, Appendable out) throws IOException {
    new PhonePage(sheet, new PageScore(sheet, sound), out).write();
  }

  private void write() throws IOException {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"");
    String script = "\n" + HtmlSheet.resource(PhonePage.class, "page.js");
    out.append(String.format(POLICY, sha256(script)) + "\">\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    out.append("<title>" + Xml.escape(words.title()) + "</title>\n<style>\n");
    out.append(HtmlSheet.font(sheet) + HtmlSheet.styles());
    out.append(HtmlSheet.resource(PhonePage.class, "page.css") + "</style>\n</head>\n");
    out.append("<body class=\"" + (sheet.options().large() ? "large" : "plain") + "\">\n");
    HtmlRows.figures(out);
    out.append(HtmlSheet.resource(PhonePage.class, "page-signs.html"));
    out.append("<main>\n");
    HtmlSheet.titleBlock(sheet, words, out);
    out.append(HtmlSheet.resource(PhonePage.class, "page-strip.html"));
    out.append(withRows("page-before.html"));
    HtmlSheet.rows(sheet, out);
    HtmlSheet.closing(sheet, out);
    HtmlSheet.signs(sheet, out);
    out.append(HtmlSheet.resource(PhonePage.class, "page-help.html"));
    out.append("</main>\n");
    out.append(HtmlSheet.resource(PhonePage.class, "page-panel.html"));
    out.append("<script type=\"application/json\" id=\"score\">");
    score.write(out);
    out.append("</script>\n<script>" + script + "</script>\n");
    out.append("</body>\n</html>\n");
  }

  /** A part of the page with the numbers of the avartanas to choose from. */
  private String withRows(String part) {
    StringBuilder options = new StringBuilder();
    List<Row> rows = sheet.rows();
    for (int index = 0; index < rows.size(); index++) {
      options.append("<option value=\"" + index + "\">" + rows.get(index).number() + "</option>");
    }
    return HtmlSheet.resource(PhonePage.class, part).replace("<!--rows-->", options);
  }

  /** What a page may run is named by its hash (Content Security Policy Level 3, 2.3.1). */
  private static String sha256(String script) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
