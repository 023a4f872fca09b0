package org.matraloom.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.picture.Xml;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/** Writes the pages of a class. */
public final class SitePages {

  private static final List<Integer> PERCENTS = List.of(60, 75, 88, 100);
  private static final String HOMEWORK = "homework.html";
  private static final String BOOKLET = "booklet.pdf";

  private SitePages() {}

  /**
   * Whether a page was made here.
   *
   * @param page the text of a page
   * @return true if it may be replaced
   */
  public static boolean isOwn(String page) {
    return page.contains(SiteHtml.MADE_BY);
  }

  /**
   * The contents, which can be searched and read without a script.
   *
   * @param title what stands above them
   * @param pieces the pieces, in order
   * @param hasHomework whether there is a page of homework
   * @return the text of a page
   */
  public static String contents(String title, List<SitePiece> pieces, boolean hasHomework) {
    StringBuilder body = new StringBuilder("<h1>" + Xml.escape(title) + "</h1>\n<p>");
    body.append(SiteHtml.link(BOOKLET, "All sheets as a booklet (PDF)"));
    if (hasHomework) {
      body.append(" · ").append(SiteHtml.link(HOMEWORK, "Homework"));
    }
    body.append("</p>\n<p id=\"search\" hidden><label for=\"find\">Find</label> ");
    body.append("<input id=\"find\" type=\"search\" autocomplete=\"off\"> ");
    body.append("<output id=\"found\" for=\"find\"></output></p>\n");
    body.append("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"Contents\">\n");
    body.append("<table>\n<caption>" + pieces.size() + " pieces</caption>\n<thead><tr>");
    for (String column : List.of("Piece", "Tala", "Nadai", "Length", "Level", "Tags")) {
      body.append("<th scope=\"col\">").append(column).append("</th>");
    }
    body.append("</tr></thead>\n<tbody>\n");
    for (SitePiece piece : pieces) {
      body.append("<tr><th scope=\"row\">");
      body.append(SiteHtml.link(piece.name() + "/index.html", piece.title())).append("</th>");
      cell(piece.tala(), body);
      cell(piece.nadais(), body);
      cell(piece.length(), body);
      cell(piece.entry().level(), body);
      cell(String.join(", ", piece.entry().tags()), body);
      body.append("</tr>\n");
    }
    body.append("</tbody>\n</table>\n</div>\n").append(CAUTION);
    return SiteHtml.page(title, body.toString(), SiteHtml.resource("search.js"));
  }

  private static final String CAUTION =
      "<p class=\"care\">Keep the level low and rest your voice every quarter of an hour; stop on"
          + " pain or dizziness. These are general cautions, not medical advice.</p>\n";

  private static void cell(String text, StringBuilder body) {
    body.append("<td>").append(Xml.escape(text)).append("</td>");
  }

  /**
   * The page of a piece.
   *
   * @param piece the piece with its files
   * @param landing whether it lands, in a sentence
   * @return the text of a page
   */
  public static String piece(SitePiece piece, String landing) {
    StringBuilder body = new StringBuilder();
    body.append("<nav>").append(SiteHtml.link("../index.html", "All pieces")).append("</nav>\n");
    body.append("<h1>" + Xml.escape(piece.title()) + "</h1>\n<p>Tala ");
    body.append(Xml.escape(piece.tala())).append(", nadai ").append(piece.nadais());
    body.append(", ").append(piece.tempo()).append(" beats a minute, ").append(piece.length());
    body.append("</p>\n<p>").append(Xml.escape(landing)).append("</p>\n");
    boolean films = false;
    for (SiteFile file : piece.files()) {
      if (file.isFilm()) {
        films = true;
        body.append("<video controls preload=\"none\" poster=\"./poster.png\" src=\"");
        body.append(SiteHtml.address(file.name())).append("\"></video>\n");
      }
    }
    if (!films) {
      body.append(
          "<img src=\"./poster.png\" width=\"1280\" height=\"720\" alt=\"The first line of ");
      body.append(Xml.escape(piece.title())).append("\">\n");
    }
    body.append("<h2>To take along</h2>\n<ul>\n");
    for (SiteFile file : piece.files()) {
      body.append("<li>").append(SiteHtml.link(file.name(), file.words())).append("</li>\n");
    }
    body.append("</ul>\n<h2>Exercises</h2>\n<ol>\n");
    exercises(piece)
        .forEach(line -> body.append("<li>").append(Xml.escape(line)).append("</li>\n"));
    body.append("</ol>\n").append(CAUTION);
    return SiteHtml.page(piece.title(), body.toString(), "");
  }

  private static List<String> exercises(SitePiece piece) {
    List<String> lines = new ArrayList<>();
    List<String> tempi = new ArrayList<>();
    PERCENTS.forEach(percent -> tempi.add(piece.tempo(percent)));
    lines.add(
        "Say it with the claps at "
            + String.join(", ", tempi.subList(0, tempi.size() - 1))
            + " and "
            + tempi.get(tempi.size() - 1)
            + " beats a minute, three times clean before each next one.");
    Performance performance = piece.performance();
    List<Span.Round> rounds = performance.rounds();
    for (int index = 1; index < rounds.size(); index++) {
      Span.Round before = rounds.get(index - 1);
      Span.Round round = rounds.get(index);
      if (before.matrasPerBeat() != round.matrasPerBeat()) {
        lines.add(
            "The change from "
                + before.matrasPerBeat()
                + " to "
                + round.matrasPerBeat()
                + " matras a beat at "
                + performance.avartana().say(round.startBeat())
                + ": the avartana before it and the one after it, again and again.");
      }
    }
    lines.add("From memory, the hand alone; then the hand while somebody else says it.");
    return lines;
  }

  /**
   * Homework as cards that can be printed and cut.
   *
   * @param title the title of the class
   * @param homework who practises what, in order
   * @param pieces the pieces by name
   * @return the text of a page
   */
  public static String homework(
      String title, List<Homework> homework, Map<String, SitePiece> pieces) {
    Map<String, List<Homework>> byStudent = new LinkedHashMap<>();
    homework.forEach(
        each -> byStudent.computeIfAbsent(each.student(), one -> new ArrayList<>()).add(each));
    StringBuilder body = new StringBuilder("<nav>");
    body.append(SiteHtml.link("index.html", "All pieces")).append("</nav>\n<h1>Homework</h1>\n");
    byStudent.forEach(
        (student, tasks) -> {
          body.append("<section class=\"card\">\n<h2>" + Xml.escape(student) + "</h2>\n<ul>\n");
          tasks.forEach(task -> task(task, pieces.get(task.piece()), body));
          body.append("</ul>\n</section>\n");
        });
    body.append(CAUTION);
    return SiteHtml.page("Homework, " + title, body.toString(), "");
  }

  private static void task(Homework task, SitePiece piece, StringBuilder body) {
    boolean share = task.tempo().endsWith("%");
    int number = Integer.parseInt(task.tempo().replace("%", ""));
    String tempo = share ? task.tempo() + ", " + piece.tempo(number) : task.tempo();
    body.append("<li>");
    body.append(SiteHtml.link(piece.name() + "/index.html", piece.title()));
    body.append(": ").append(tempo).append(" beats a minute");
    body.append(task.task().isEmpty() ? "" : "; " + Xml.escape(task.task()));
    body.append(" <span class=\"done\">done on:</span></li>\n");
  }
}
