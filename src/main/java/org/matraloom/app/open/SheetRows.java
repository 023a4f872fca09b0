package org.matraloom.app.open;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.Sheet;

/**
 * The rows of a sheet, each by itself, as {@code sheet} writes them.
 *
 * <p>Numbers of marks are left out, so that a row is the same wherever it stands, and widths are
 * data that a script sets, as the page allows no styles in its text.
 */
final class SheetRows {

  private static final String END = "</section>\n";
  private static final Pattern NUMBER = Pattern.compile(" id=\"m\\d+\"");
  private static final Pattern WIDTH = Pattern.compile(" style=\"flex-grow:([\\d.]+)\"");

  private SheetRows() {}

  static List<String> of(Sheet sheet) throws IOException {
    StringBuilder all = new StringBuilder();
    HtmlSheet.rows(sheet, all);
    String inside = all.substring(all.indexOf(">\n") + 2, all.lastIndexOf("</div>"));
    List<String> rows = new ArrayList<>();
    for (String row : inside.split(END)) {
      String plain = NUMBER.matcher(row + END).replaceAll("");
      rows.add(WIDTH.matcher(plain).replaceAll(" data-grow=\"$1\""));
    }
    return rows;
  }
}
