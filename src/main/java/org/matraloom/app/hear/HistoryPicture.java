package org.matraloom.app.hear;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.matraloom.log.PlaceFinding;
import org.matraloom.log.ScorePlace;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;

/**
 * Draws how far off the takes of a piece are: of one log every place, of several the two places
 * that most of them have a habit at, in a row for each.
 */
final class HistoryPicture {

  private static final int COLUMNS = 2;
  private static final int MOST_PANELS = 24;
  private static final int MOST_NAME = 20;
  private static final double MARGIN = 24;
  private static final double HEAD = 56;
  private static final double FOOT = 44;
  private static final double GAP = 12;
  private static final double[] EDGES = {10, 20, 40, 60, 100, 200, 400, 600, 1_000, 2_000, 5_000};

  private static final Type TITLE = new Type(22, true, Tone.INK);
  private static final Type NOTE = new Type(13, false, Tone.QUIET);

  /** What a panel shows; no finding where a log does not know the place. */
  private record Panel(String title, ScorePlace place, List<PlaceFinding> finding) {}

  private HistoryPicture() {}

  static Picture of(List<NamedLog> logs, String piece) {
    List<Panel> all = logs.size() == 1 ? ofOne(logs.get(0), piece) : ofMany(logs, piece);
    List<Panel> panels = all.subList(0, Math.min(MOST_PANELS, all.size()));
    int rows = (panels.size() + COLUMNS - 1) / COLUMNS;
    double width = 2 * MARGIN + COLUMNS * HistoryPanel.WIDTH + (COLUMNS - 1) * GAP;
    double height = HEAD + rows * (HistoryPanel.HEIGHT + GAP) + FOOT;
    Picture picture = new Picture(width, height, "How far off each take is, place by place");
    picture.text(MARGIN, 36, Anchor.BEGIN, TITLE, piece + ": how far off, take after take");
    for (int i = 0; i < panels.size(); i++) {
      Panel panel = panels.get(i);
      double left = MARGIN + i % COLUMNS * (HistoryPanel.WIDTH + GAP);
      double top = HEAD + i / COLUMNS * (HistoryPanel.HEIGHT + GAP);
      HistoryPanel drawn =
          new HistoryPanel(picture, left, top, edge(panels, panel.place().kind().unit()));
      if (panel.finding().isEmpty()) {
        drawn.drawEmpty(panel.title());
      } else {
        drawn.draw(panel.title(), panel.finding().get(0));
      }
    }
    legend(picture, height - FOOT + 26, panels.isEmpty(), all.size() - panels.size());
    return picture;
  }

  private static List<Panel> ofOne(NamedLog log, String piece) {
    return PlaceFinding.of(log.history(), piece).stream()
        .map(
            finding -> {
              ScorePlace place = finding.history().place();
              return new Panel(HabitWords.place(place), place, List.of(finding));
            })
        .toList();
  }

  private static List<Panel> ofMany(List<NamedLog> logs, String piece) {
    List<List<PlaceFinding>> findings =
        logs.stream().map(log -> PlaceFinding.of(log.history(), piece)).toList();
    List<Panel> panels = new ArrayList<>();
    List<ScorePlace> columns = columns(findings);
    for (int i = 0; i < logs.size(); i++) {
      for (ScorePlace place : columns) {
        List<PlaceFinding> here =
            findings.get(i).stream().filter(f -> f.history().place().equals(place)).toList();
        String title = shortened(logs.get(i).name()) + ": " + HabitWords.place(place);
        panels.add(new Panel(title, place, here));
      }
    }
    return panels;
  }

  private static String shortened(String name) {
    return name.length() <= MOST_NAME ? name : name.substring(0, MOST_NAME - 1) + "~";
  }

  /** The places with the most habits, then with the most logs, then in their order. */
  private static List<ScorePlace> columns(List<List<PlaceFinding>> findings) {
    TreeMap<ScorePlace, Integer> weight = new TreeMap<>();
    for (List<PlaceFinding> log : findings) {
      for (PlaceFinding finding : log) {
        int told = finding.isTold() ? findings.size() + 1 : 0;
        weight.merge(finding.history().place(), told + 1, Integer::sum);
      }
    }
    List<ScorePlace> places = new ArrayList<>(weight.keySet());
    places.sort(Comparator.comparing(place -> -weight.get(place)));
    List<ScorePlace> columns = new ArrayList<>(places.subList(0, Math.min(COLUMNS, places.size())));
    columns.sort(Comparator.naturalOrder());
    return columns;
  }

  /** What the edges of all panels of a unit stand for, so that they can be compared. */
  private static double edge(List<Panel> panels, String unit) {
    ToDoubleFunction<PlaceFinding> farthest =
        finding ->
            finding.history().points().stream().mapToDouble(p -> Math.abs(p.off())).max().orElse(0);
    double most =
        panels.stream()
            .filter(panel -> panel.place().kind().unit().equals(unit))
            .flatMap(panel -> panel.finding().stream())
            .mapToDouble(farthest)
            .max()
            .orElse(0);
    for (double edge : EDGES) {
      if (most <= 0.95 * edge) {
        return edge;
      }
    }
    return Math.ceil(most);
  }

  private static void legend(Picture picture, double y, boolean isEmpty, int left) {
    if (isEmpty) {
      picture.text(MARGIN, y, Anchor.BEGIN, NOTE, "No take was measured yet.");
      return;
    }
    double x = MARGIN + 6;
    picture.fill(PictureMarks.dot(x, y - 5, HistoryPanel.RADIUS), Tone.INK);
    x = label(picture, x + 10, y, "a take");
    picture.line(x, y - 5, x + 26, y - 5, 2.2, Tone.INK);
    x = label(picture, x + 32, y, "mean of a habit (before and since)");
    picture.outline(new Line2D.Double(x, y - 5, x + 26, y - 5), 1.2, true, Tone.QUIET);
    x = label(picture, x + 32, y, "mean, no habit");
    if (left > 0) {
      picture.text(x, y, Anchor.BEGIN, NOTE, left + " more are not shown");
    }
  }

  private static double label(Picture picture, double x, double y, String text) {
    picture.text(x, y, Anchor.BEGIN, NOTE, text);
    return x + picture.widthOf(NOTE, text) + 26;
  }
}
