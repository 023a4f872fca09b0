package org.matraloom.sheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Xml;
import org.matraloom.score.Kriya;
import org.matraloom.time.Ratio;

/**
 * The rows of a sheet as HTML: an avartana is a group of angas, an anga of beats, a beat of marks.
 * Lines break between angas first and between beats only where an anga is wider than the screen.
 * What is shown by a sign is also said in words that only a screen reader meets.
 */
public final class HtmlRows {

  private static final int DECIMALS = 6;

  private final Sheet sheet;
  private final SheetWords words;
  private final Appendable out;
  private final HtmlMarks marks;

  /**
   * Rows of a page.
   *
   * @param prefix what the names of its marks begin with, before their numbers; none if they have
   *     no names
   */
  HtmlRows(Sheet sheet, Optional<String> prefix, Appendable out) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.out = out;
    this.marks = new HtmlMarks(sheet.options().large(), prefix, out);
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
      out.append(figure.svg("currentColor") + "</symbol>");
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
    for (int index = 0; index < rows.size(); index++) {
      boolean system = index + 1 < rows.size() && areTogether(rows.get(index), rows.get(index + 1));
      if (system) {
        int beats = Math.max(rows.get(index).cells().size(), rows.get(index + 1).cells().size());
        out.append("<div class=\"system\" style=\"--beats:" + beats + "\">\n");
        write(rows.get(index++), withSums);
      }
      write(rows.get(index), withSums);
      out.append(system ? "</div>\n" : "");
    }
  }

  /** Whether two reciters say two rows at once. */
  private static boolean areTogether(Row row, Row next) {
    return !row.label().isEmpty()
        && !row.isBelow()
        && next.isBelow()
        && row.startBeat().equals(next.startBeat());
  }

  /** A row after its heading. */
  void write(Row row, boolean withSums) throws IOException {
    for (String line : withSums ? words.above(row) : List.<String>of()) {
      out.append("<p class=\"told\">" + Xml.escape(line) + "</p>\n");
    }
    String heading = words.heading(row);
    if (!heading.isEmpty()) {
      String place =
          row.parts().stream()
              .filter(part -> part.opensHere() && part.from().equals(row.startBeat()))
              .map(part -> place(part.from(), part.whole().endBeat()))
              .findFirst()
              .orElse("");
      out.append("<h2" + place + ">" + Xml.escape(heading) + "</h2>\n");
    }
    String label = row.label().isEmpty() ? "Avartana " + row.number() : row.label();
    out.append("<section class=\"row\" aria-label=\"" + Xml.escape(label) + "\">");
    out.append("<span class=\"no\"" + place(row.startBeat(), row.endBeat()) + ">");
    out.append(row.number() + "</span>");
    out.append("<div class=\"beats\">");
    out.append("<div class=\"half\">");
    int half = half(row);
    List<Cell> anga = new ArrayList<>();
    for (int index = 0; index < row.cells().size(); index++) {
      Cell cell = row.cells().get(index);
      out.append(index == half ? "</div><div class=\"half\">" : "");
      anga.add(cell);
      if (cell.end() != Cell.End.BEAT) {
        writeAnga(anga, row);
        anga.clear();
      }
    }
    writeAnga(anga, row);
    out.append("</div></div>");
    if (withSums) {
      sums(row);
    }
    out.append("</section>\n");
  }

  /** The beat in the middle of an avartana if an anga begins there, as in adi; else none. */
  private static int half(Row row) {
    int middle = row.cells().size() / 2;
    boolean even = row.cells().size() % 2 == 0 && row.cells().get(0).beginsCycle();
    return even && row.cells().get(middle - 1).end() == Cell.End.ANGA ? middle : -1;
  }

  /** An anga in pairs of beats, the last of an odd number three, so that none is torn apart. */
  private void writeAnga(List<Cell> anga, Row row) throws IOException {
    if (anga.isEmpty()) {
      return;
    }
    out.append("<div class=\"anga\">");
    int from = 0;
    while (from < anga.size()) {
      int left = anga.size() - from;
      int to = from + (left <= 3 ? left : 2);
      out.append("<div class=\"pair\">");
      for (Cell cell : anga.subList(from, to)) {
        write(cell, row);
      }
      out.append("</div>");
      from = to;
    }
    out.append("</div>");
  }

  private static String place(Ratio from, Ratio to) {
    return " data-from=\"" + beats(from) + "\" data-to=\"" + beats(to) + "\"";
  }

  /** Beats to a millionth, without zeros that say nothing. */
  static String beats(Ratio beats) {
    return BigDecimal.valueOf(beats.num())
        .divide(BigDecimal.valueOf(beats.den()), DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
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
      out.append(cell.again() ? figure(Figure.AGAIN) : "");
      String again = cell.again() ? " again" : "";
      out.append("<span class=\"vh\">" + Xml.escape(kriya.words()) + again + ": </span>");
    }
    for (Row.NadaiTurn turn : row.turns()) {
      if (cell.holds(turn.beat())) {
        out.append("<b class=\"turn\">" + turn.matrasPerBeat() + "</b>");
        out.append("<span class=\"vh\"> matras a beat: </span>");
      }
    }
    tags(cell, row);
    out.append("</span><span class=\"marks\">");
    for (Mark each : cell.marks()) {
      marks.write(each, row);
    }
    Optional<Ratio> landing = row.landing().filter(cell::endsWith);
    boolean inside = landing.filter(place -> !place.equals(Ratio.of(cell.beat() + 1))).isPresent();
    land(landing.isPresent() && inside, "b", "land inside");
    out.append("</span>");
    land(landing.isPresent() && !inside, "span", "land");
    out.append("</div>");
  }

  /**
   * The drop stands behind the last mark inside a beat, or else on the line where the beat ends.
   */
  private void land(boolean here, String tag, String kind) throws IOException {
    if (here) {
      out.append("<" + tag + " class=\"" + kind + "\">" + figure(Figure.LANDING));
      out.append("<span class=\"vh\">landing</span></" + tag + ">");
    }
  }

  /** The rounds that begin inside a row, and the names and figures, in the strip of the hand. */
  private void tags(Cell cell, Row row) throws IOException {
    for (RoundPart part : row.parts()) {
      if (part.opensHere() && cell.holds(part.from()) && !part.from().equals(row.startBeat())) {
        out.append("<b class=\"round\"" + place(part.from(), part.whole().endBeat()) + ">");
        out.append("Round " + part.round() + "</b>");
      }
    }
    for (Row.Tag tag : row.tags()) {
      if (tag.kind() != Row.Tag.Kind.STATEMENT && cell.holds(tag.from())) {
        boolean late = tag.from().compareTo(cell.from()) > 0;
        out.append(
            "<span class=\"name"
                + (late ? " late" : "")
                + "\""
                + place(tag.from(), tag.to())
                + ">");
        out.append(Xml.escape(tag.text()) + "</span>");
      }
    }
  }
}
