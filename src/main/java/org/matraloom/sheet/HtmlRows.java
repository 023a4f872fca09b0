package org.matraloom.sheet;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.matraloom.picture.Xml;
import org.matraloom.score.Kriya;

/**
 * The rows of a sheet as HTML: an avartana is a group of angas, an anga of beats, a beat of marks.
 *
 * <p>Lines break between angas first and between beats only where an anga is wider than the screen.
 * What is shown by a sign is also said in words that only a screen reader meets.
 */
public final class HtmlRows {

  private final Sheet sheet;
  private final SheetWords words;
  private final String prefix;
  private final Appendable out;
  private int mark;

  /**
   * Rows of a page.
   *
   * @param prefix what the names of its marks begin with, before their numbers
   */
  HtmlRows(Sheet sheet, String prefix, Appendable out) {
    this.sheet = sheet;
    this.prefix = prefix;
    this.words = new SheetWords(sheet);
    this.out = out;
  }

  /**
   * The figures that rows refer to, once a page.
   *
   * @param out where they go
   * @throws IOException if it cannot be written
   */
  public static void figures(Appendable out) throws IOException {
    out.append("<svg class=\"figures\" aria-hidden=\"true\">");
    for (Figure figure : Figure.values()) {
      out.append("<symbol id=\"f-" + name(figure) + "\" viewBox=\"0 0 24 24\">");
      out.append(Figures.svg(figure, "currentColor") + "</symbol>");
    }
    out.append("</svg>\n");
  }

  /**
   * A figure in its place.
   *
   * @param figure the sign
   * @return an element of HTML
   */
  public static String figure(Figure figure) {
    return "<svg class=\"fig\" aria-hidden=\"true\"><use href=\"#f-" + name(figure) + "\"/></svg>";
  }

  /**
   * The name under which a page refers to a sign.
   *
   * @param figure the sign
   * @return its name
   */
  public static String name(Figure figure) {
    return figure.name().toLowerCase(Locale.ROOT);
  }

  /** All rows, each after its heading; marks are numbered through, from 0. */
  void write(List<Row> rows, boolean withSums) throws IOException {
    mark = 0;
    for (Row row : rows) {
      write(row, withSums);
    }
  }

  private void write(Row row, boolean withSums) throws IOException {
    for (String line : withSums ? words.above(row) : List.<String>of()) {
      out.append("<p class=\"told\">" + Xml.escape(line) + "</p>\n");
    }
    String heading = words.heading(row);
    if (!heading.isEmpty()) {
      out.append("<h2>" + Xml.escape(heading) + "</h2>\n");
    }
    String label = row.label().isEmpty() ? "Avartana " + row.number() : row.label();
    out.append("<section class=\"row\" aria-label=\"" + Xml.escape(label) + "\">");
    out.append("<span class=\"no\" aria-hidden=\"true\">" + row.number() + "</span>");
    out.append("<div class=\"beats\">");
    boolean inAnga = false;
    for (Cell cell : row.cells()) {
      if (!inAnga) {
        out.append("<div class=\"anga\">");
        inAnga = true;
      }
      write(cell, row);
      if (cell.end() != Cell.End.BEAT) {
        out.append("</div>");
        inAnga = false;
      }
    }
    out.append(inAnga ? "</div>" : "").append("</div>");
    if (withSums) {
      sums(row);
    }
    out.append("</section>\n");
  }

  private void sums(Row row) throws IOException {
    out.append("<p class=\"sum\">");
    if (!row.label().isEmpty()) {
      out.append("<b>" + Xml.escape(row.label()) + "</b> ");
    }
    for (RoundPart part : row.parts()) {
      out.append("<span>" + Xml.escape(part.sum()) + "</span> ");
    }
    out.append("</p>");
  }

  private void write(Cell cell, Row row) throws IOException {
    out.append("<div class=\"beat end-" + cell.end().name().toLowerCase(Locale.ROOT));
    out.append("\" data-beat=\"" + cell.beat() + "\">");
    out.append("<span class=\"hand\">");
    if (cell.kriya().isPresent()) {
      Kriya kriya = cell.kriya().get();
      out.append(figure(Figure.of(kriya)));
      out.append("<span class=\"vh\">" + Xml.escape(kriya.words()) + ": </span>");
    }
    for (NadaiTurn turn : row.turns()) {
      if (cell.holds(turn.beat())) {
        out.append("<b class=\"turn\">" + turn.matrasPerBeat() + "</b>");
        out.append("<span class=\"vh\"> matras a beat: </span>");
      }
    }
    out.append("</span><span class=\"marks\">");
    for (Mark each : cell.marks()) {
      write(each, row);
    }
    out.append("</span>");
    if (row.landing().filter(cell::endsWith).isPresent()) {
      out.append("<span class=\"land\">" + figure(Figure.LANDING));
      out.append("<span class=\"vh\">landing</span></span>");
    }
    out.append("</div>");
  }

  private void write(Mark each, Row row) throws IOException {
    String kind = each instanceof Mark.Said ? "s" : each instanceof Mark.Karvai ? "v" : "q";
    String speed = each.speed() == 1 ? "" : each.speed() == 2 ? " x2" : " x4";
    boolean opens = each instanceof Mark.Said said && said.opens();
    boolean turns = row.turns().stream().anyMatch(turn -> turn.beat().equals(each.beat()));
    String grow =
        String.format(Locale.ROOT, "%.4f", each.beats().toDouble()).replaceFirst("\\.?0+$", "");
    out.append(
        "<span id=\""
            + prefix
            + mark++
            + "\" class=\""
            + kind
            + speed
            + (opens ? " o" : "")
            + (turns ? " t" : ""));
    out.append("\" style=\"flex-grow:" + grow + "\">");
    if (each.breath().isPresent()) {
      out.append("<span class=\"air\">" + figure(Figure.BREATH));
      out.append("<span class=\"vh\">breathe </span></span>");
    }
    if (each instanceof Mark.Said said) {
      out.append(Xml.escape(said.text()));
    } else if (each instanceof Mark.Karvai) {
      out.append(sign(sheet.options().large() ? "\u25a1" : ",", "rings on"));
    } else {
      out.append(sign(".", "silent"));
    }
    out.append("</span> ");
  }

  private static String sign(String shown, String said) {
    return "<span aria-hidden=\"true\">" + shown + "</span><span class=\"vh\">" + said + "</span>";
  }
}
