package org.matraloom.app.hear;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.matraloom.log.PlaceFinding;
import org.matraloom.log.PlaceHistory;
import org.matraloom.log.PlaceTrend;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;

/** One place over many takes: takes to the right, one after another, late or fast upwards. */
final class HistoryPanel {

  static final double WIDTH = 470;
  static final double HEIGHT = 196;
  static final double RADIUS = 4;

  private static final double LEFT = 86;
  private static final double RIGHT = 12;
  private static final double TOP = 46;
  private static final double BOTTOM = 26;
  private static final Type HEAD = new Type(14, true, Tone.INK);
  private static final Type SCALE = new Type(13, false, Tone.QUIET);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM yy", Locale.ROOT);

  private final Picture picture;
  private final double left;
  private final double top;
  private final double most;

  /** A panel whose upper and lower edge stand for so much late and early, or fast and slow. */
  HistoryPanel(Picture picture, double left, double top, double most) {
    this.picture = picture;
    this.left = left + LEFT;
    this.top = top + TOP;
    this.most = most;
  }

  void draw(String title, PlaceFinding finding) {
    picture.text(left, top - 26, Anchor.BEGIN, HEAD, title);
    picture.text(left, top - 9, Anchor.BEGIN, SCALE, words(finding));
    List<PlaceHistory.Point> points = finding.history().points();
    grid(finding.history());
    means(finding);
    for (int i = 0; i < points.size(); i++) {
      double x = x(i, points.size());
      picture.fill(PictureMarks.dot(x, y(points.get(i).off()), RADIUS), Tone.INK);
    }
  }

  /** A panel for a place that a log knows nothing of. */
  void drawEmpty(String title) {
    picture.text(left, top - 26, Anchor.BEGIN, HEAD, title);
    picture.text(left, top - 9, Anchor.BEGIN, SCALE, "not measured yet");
    picture.outline(new Rectangle2D.Double(left, top, width(), height()), 1, false, Tone.RULE);
  }

  private static String words(PlaceFinding finding) {
    return switch (finding.habit()) {
          case NEVER ->
              finding.history().points().size() < PlaceFinding.LEAST_TAKES
                  ? "too few takes for a habit"
                  : "no habit";
          case ALL -> "a habit: " + HabitWords.mean(finding.part());
          case EARLIER -> "was a habit: " + HabitWords.mean(finding.part());
          case LATER -> "a new habit: " + HabitWords.mean(finding.part());
        }
        + finding.trend().map(trend -> trend.better() ? "; better" : "; worse").orElse("");
  }

  private void grid(PlaceHistory place) {
    boolean isTime = place.place().kind().unit().equals("ms");
    String unit = " " + place.place().kind().unit();
    for (int side = -1; side <= 1; side++) {
      double value = side * most;
      String word =
          side == 0 ? "" : side > 0 ? isTime ? " late" : " fast" : isTime ? " early" : " slow";
      picture.text(
          left - 8, y(value) + 4.5, Anchor.END, SCALE, SignedNumber.of(value, 0) + unit + word);
    }
    picture.line(left, y(most / 2), left + width(), y(most / 2), 0.8, Tone.FAINT);
    picture.line(left, y(-most / 2), left + width(), y(-most / 2), 0.8, Tone.FAINT);
    picture.line(left, y(0), left + width(), y(0), 1.2, Tone.QUIET);
    picture.outline(new Rectangle2D.Double(left, top, width(), height()), 1, false, Tone.RULE);
    List<PlaceHistory.Point> points = place.points();
    double foot = top + height() + 19;
    picture.text(left, foot, Anchor.BEGIN, SCALE, DATE.format(points.get(0).when()));
    if (points.size() > 1) {
      String last = DATE.format(points.get(points.size() - 1).when());
      picture.text(left + width(), foot, Anchor.END, SCALE, last);
    }
  }

  /** Before and since where there is a trend; else one mean, broken where it is no habit. */
  private void means(PlaceFinding finding) {
    int count = finding.history().points().size();
    if (finding.trend().isPresent()) {
      PlaceTrend trend = finding.trend().get();
      int split = trend.before().points().size();
      mean(0, split, count, trend.before().mean(), false);
      mean(split, count, count, trend.after().mean(), false);
    } else {
      int from = finding.habit() == PlaceFinding.Habitual.LATER ? count / 2 : 0;
      int to = from + finding.part().points().size();
      mean(from, to, count, finding.part().mean(), !finding.isTold());
    }
  }

  private void mean(int from, int to, int count, double mean, boolean isBroken) {
    double half = width() / count / 2;
    double begin = x(from, count) - half;
    double width = x(to - 1, count) + half - begin;
    Line2D line = new Line2D.Double(begin, y(mean), begin + width, y(mean));
    picture.outline(line, isBroken ? 1.2 : 2.2, isBroken, isBroken ? Tone.QUIET : Tone.INK);
  }

  private double width() {
    return WIDTH - LEFT - RIGHT;
  }

  private double height() {
    return HEIGHT - TOP - BOTTOM;
  }

  private double x(int take, int count) {
    return left + width() * (take + 0.5) / count;
  }

  private double y(double off) {
    return top + height() * (most - off) / (2 * most);
  }
}
