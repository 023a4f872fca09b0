package org.matraloom.app.hear;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.matraloom.log.CleanTempo;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;

/** One panel of the log's picture: time to the right, tempo up. */
final class TempoPanel {

  static final double WIDTH = 470;
  static final double HEIGHT = 230;
  static final double RADIUS = 4.5;

  private static final double LEFT = 44;
  private static final double RIGHT = 46;
  private static final double TOP = 30;
  private static final double BOTTOM = 26;
  private static final int MOST_DATES = 4;
  private static final Type HEAD = new Type(14, true, Tone.INK);
  private static final Type SCALE = new Type(13, false, Tone.QUIET);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM yy", Locale.ROOT);

  /** What the edges stand for, the same for all panels of a piece. */
  record Scales(OffsetDateTime from, double seconds, double low, double high, double step) {

    static Scales of(List<CleanTempo> rows) {
      List<CleanTempo.Point> points = rows.stream().flatMap(row -> row.points().stream()).toList();
      OffsetDateTime from = points.get(0).when();
      OffsetDateTime to = from;
      double low = Double.MAX_VALUE;
      double high = 0;
      for (CleanTempo.Point point : points) {
        from = point.when().isBefore(from) ? point.when() : from;
        to = point.when().isAfter(to) ? point.when() : to;
        low = Math.min(low, point.tempo());
        high = Math.max(high, point.tempo());
      }
      OffsetDateTime morning = from.toLocalDate().atStartOfDay().atOffset(from.getOffset());
      OffsetDateTime night = to.toLocalDate().plusDays(1).atStartOfDay().atOffset(to.getOffset());
      double step = high - low > 50 ? 20 : high - low > 20 ? 10 : 5;
      return new Scales(
          morning,
          Math.max(1, Duration.between(morning, night).getSeconds()),
          step * Math.floor((low - 1) / step),
          step * Math.ceil((high + 1) / step),
          step);
    }

    double days() {
      return seconds / Duration.ofDays(1).getSeconds();
    }
  }

  private final Picture picture;
  private final double left;
  private final double top;
  private final Scales scales;

  TempoPanel(Picture picture, double left, double top, Scales scales) {
    this.picture = picture;
    this.left = left + LEFT;
    this.top = top + TOP;
    this.scales = scales;
  }

  void draw(CleanTempo row) {
    int nadai = row.points().get(row.points().size() - 1).nadai();
    String name = row.round() == CleanTempo.WHOLE ? "Whole piece" : "Round " + row.round();
    picture.text(left, top - 9, Anchor.BEGIN, HEAD, name + (nadai == 0 ? "" : ", nadai " + nadai));
    grid();
    climb(row);
    for (CleanTempo.Point point : row.points()) {
      double x = x(point.when());
      double y = y(point.tempo());
      if (point.clean()) {
        picture.fill(PictureMarks.dot(x, y, RADIUS), Tone.INK);
      } else {
        picture.outline(PictureMarks.cross(x, y, RADIUS - 1), 1.6, false, Tone.QUIET);
      }
    }
  }

  private void grid() {
    for (double tempo = scales.low(); tempo <= scales.high(); tempo += scales.step()) {
      picture.line(left, y(tempo), left + width(), y(tempo), 0.8, Tone.FAINT);
      picture.text(left - 8, y(tempo) + 4.5, Anchor.END, SCALE, LogText.tempo(tempo));
    }
    long every = Math.max(1, (long) Math.ceil(scales.days() / MOST_DATES));
    LocalDate first = scales.from().toLocalDate();
    for (long day = 0; day < scales.days(); day += every) {
      double x = x(scales.from().plusDays(day));
      picture.line(x, top + height(), x, top + height() + 5, 0.8, Tone.RULE);
      picture.text(x, top + height() + 19, Anchor.BEGIN, SCALE, DATE.format(first.plusDays(day)));
    }
    picture.outline(new Rectangle2D.Double(left, top, width(), height()), 1, false, Tone.RULE);
  }

  /** The fastest clean tempo so far, as steps. */
  private void climb(CleanTempo row) {
    Path2D path = new Path2D.Double();
    double best = 0;
    for (CleanTempo.Point point : row.points()) {
      if (point.clean() && point.tempo() > best) {
        double x = x(point.when());
        if (best == 0) {
          path.moveTo(x, y(point.tempo()));
        } else {
          path.lineTo(x, y(best));
          path.lineTo(x, y(point.tempo()));
        }
        best = point.tempo();
      }
    }
    if (best > 0) {
      path.lineTo(left + width(), y(best));
      picture.outline(path, 2, false, Tone.INK);
      picture.text(left + width() + 6, y(best) + 5, Anchor.BEGIN, HEAD, LogText.tempo(best));
    }
  }

  private double width() {
    return WIDTH - LEFT - RIGHT;
  }

  private double height() {
    return HEIGHT - TOP - BOTTOM;
  }

  private double x(OffsetDateTime when) {
    return left + width() * Duration.between(scales.from(), when).getSeconds() / scales.seconds();
  }

  private double y(double tempo) {
    return top + height() * (scales.high() - tempo) / (scales.high() - scales.low());
  }
}
