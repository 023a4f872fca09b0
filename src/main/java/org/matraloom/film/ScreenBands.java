package org.matraloom.film;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.matraloom.film.FilmPen.Side;
import org.matraloom.film.FilmPen.Stylus;
import org.matraloom.sheet.DrawnLine;

/** Draws what is seen of a pass: the head, the line, the line after it, the hand, the news. */
final class ScreenBands {

  private static final double LAMP_RIM = 10;
  private static final double MARK_BAR = 8;
  private static final double NEXT_SCALE = 0.62;
  private static final double NEXT_UPRIGHT = 0.8;
  private static final double TITLE = 44;
  private static final double SMALL = 32;
  private static final double NEWS_PAD = 36;

  /** So many go in at the least size, three at the usual one. */
  static final int NEWS_LINES = 4;

  private static final double FIGURE = 120;
  private static final double ARROW = 106;
  private static final double AFTER_FIGURE = 28;

  private final FilmSize size;
  private final HandBand hand;

  ScreenBands(FilmSize size) {
    this.size = size;
    this.hand = new HandBand(size);
  }

  /** The parts of the screen for a view, in the order of {@link FilmSize#bands()}. */
  List<Band> of(ScreenView view) {
    return List.of(
        new Band(size.head(), view.head(), pen -> head(view.head(), pen)),
        new Band(size.line(), view.line(), pen -> line(view.line(), pen)),
        new Band(size.next(), view.next(), pen -> next(view.next(), pen)),
        new Band(size.hand(), view.hand(), pen -> hand.draw(view.hand(), pen)),
        new Band(size.news(), view.news(), pen -> view.news().ifPresent(told -> news(told, pen))));
  }

  private void head(ScreenView.Head head, FilmPen pen) {
    FilmLook look = pen.look();
    double left = size.margin();
    double right = left + size.room();
    Stylus title = new Stylus(TITLE, true, look.ink());
    Stylus setting = new Stylus(SMALL, false, look.quiet());
    if (size.isUpright()) {
      pen.text(head.title(), left, 90, Side.LEFT, size.room(), title);
      pen.text(head.setting(), left, 145, Side.LEFT, size.room(), setting);
      pen.rule(left, 175, right, 175, 3, look.rule());
      Stylus wrapped = new Stylus(SMALL + 8, true, look.ink());
      double base = pen.lines(head.section(), left, 232, size.room(), 2, wrapped);
      pen.text(head.place(), left, base, Side.LEFT, size.room(), setting);
      return;
    }
    double half = size.room() * 0.5 - 20;
    pen.text(head.title(), left, 80, Side.LEFT, half, title);
    pen.text(head.setting(), right, 80, Side.RIGHT, half, setting);
    pen.rule(left, 106, right, 106, 3, look.rule());
    double place = size.room() * 0.25;
    pen.text(head.section(), left, 168, Side.LEFT, size.room() - place - 40, title);
    pen.text(head.place(), right, 168, Side.RIGHT, place, setting);
  }

  /** Pixels to a point of a line. */
  private double scale() {
    return size.room() / DrawnLine.WIDTH;
  }

  /** The line that goes on: its beat under a lamp, its sign over a bar. */
  private void line(ScreenView.LineView view, FilmPen pen) {
    Rectangle2D area = size.line();
    DrawnLine line = view.line().line();
    double scale = scale();
    double x = size.margin();
    double low = area.getMaxY() - (area.getHeight() - line.height() * scale) / 2;
    double y = Math.max(area.getMinY() + LAMP_RIM, low - line.height() * scale);
    double top = y + line.top() * scale - LAMP_RIM / 2;
    double bottom = y + line.height() * scale;
    view.cell()
        .ifPresent(
            cell -> {
              double left = x + cell.left() * scale;
              double right = x + cell.right() * scale;
              double high = bottom - top + LAMP_RIM + MARK_BAR;
              pen.fill(new Rectangle2D.Double(left, top, right - left, high), pen.look().lamp());
            });
    view.line().draw(pen, x, y, scale);
    view.mark()
        .ifPresent(
            mark -> {
              double left = x + mark.left() * scale;
              double wide = Math.max(MARK_BAR, (mark.right() - mark.left()) * scale);
              pen.fill(new Rectangle2D.Double(left, bottom + 2, wide, MARK_BAR), pen.look().ink());
            });
  }

  private void next(Optional<ShownLine> next, FilmPen pen) {
    Rectangle2D area = size.next();
    double left = size.margin();
    Stylus type = new Stylus(SMALL, false, pen.look().quiet());
    double base = area.getMinY() + 38;
    pen.text(next.isPresent() ? "then" : "", left, base, Side.LEFT, size.room(), type);
    double scale = scale() * nextScale(size);
    next.ifPresent(line -> line.drawBare(pen, left, base + 22, scale));
  }

  /** How much smaller the line after is. */
  static double nextScale(FilmSize size) {
    return size.isUpright() ? NEXT_UPRIGHT : NEXT_SCALE;
  }

  /** What comes, in a black box where it is another nadai. */
  private void news(ScreenView.News news, FilmPen pen) {
    Rectangle2D area = size.news();
    double left = newsLeft(size);
    double right = area.getMaxX() - size.margin();
    if (news instanceof ScreenView.News.Told told) {
      Stylus type = new Stylus(SMALL + 4, false, pen.look().ink());
      pen.lines(told.text(), left, area.getMinY() + 60, right - left, 5, type);
      return;
    }
    ScreenView.News.Change change = (ScreenView.News.Change) news;
    double top = area.getMinY() + 14;
    double bottom = area.getMaxY() - (size.isUpright() ? 60 : 40);
    Rectangle2D box = new Rectangle2D.Double(left, top, right - left, bottom - top);
    pen.fill(box, pen.look().ink());
    change(change, box, pen);
  }

  private void change(ScreenView.News.Change change, Rectangle2D box, FilmPen pen) {
    Stylus figure = new Stylus(FIGURE, true, pen.look().paper());
    Stylus words = new Stylus(SMALL + 6, true, pen.look().paper());
    Stylus small = new Stylus(SMALL + 2, false, pen.look().paper());
    double left = box.getMinX() + NEWS_PAD;
    double room = box.getWidth() - 2 * NEWS_PAD;
    double base = box.getMinY() + 122;
    double x = left;
    if (change.before() > 0) {
      x += pen.text("" + change.before(), x, base, Side.LEFT, room, figure) + 30;
      arrow(x, base - 42, pen);
      x += ARROW;
    }
    x += pen.text("" + change.after(), x, base, Side.LEFT, room, figure) + AFTER_FIGURE;
    double beside = box.getMaxX() - NEWS_PAD - x;
    Stylus fitting = pen.fitting(change.words(), beside, NEWS_LINES, words);
    double top = fitting.size() > FilmPen.LEAST ? base - 70 : base - 84;
    pen.lines(change.words(), x, top, beside, NEWS_LINES, fitting);
    boolean now = change.beatsLeft() == 0;
    String when =
        now ? "now" : change.beatsLeft() == 1 ? "in 1 beat" : "in " + change.beatsLeft() + " beats";
    pen.text(when + ", " + change.place(), left, base + 78, Side.LEFT, room, small);
    double side = Math.min(34, room / Math.max(1, change.beatsLeft()) - 10);
    for (int beat = 0; beat < change.beatsLeft(); beat++) {
      Rectangle2D dot = new Rectangle2D.Double(left + beat * (side + 10), base + 104, side, side);
      pen.fill(dot, pen.look().paper());
    }
  }

  private static double newsLeft(FilmSize size) {
    return size.news().getMinX() + (size.isUpright() ? size.margin() : 20);
  }

  /** How wide the name of a nadai may be beside the figures of a change. */
  static double changeRoom(FilmSize size, int before, int after, FilmPen pen) {
    double figures = pen.width("" + before, FIGURE, true) + pen.width("" + after, FIGURE, true);
    double box = size.news().getMaxX() - size.margin() - newsLeft(size);
    return box - 2 * NEWS_PAD - figures - 30 - ARROW - AFTER_FIGURE;
  }

  private static void arrow(double x, double y, FilmPen pen) {
    pen.rule(x, y, x + 60, y, 10, pen.look().paper());
    Path2D head = new Path2D.Double();
    head.moveTo(x + 50, y - 28);
    head.lineTo(x + 90, y);
    head.lineTo(x + 50, y + 28);
    head.closePath();
    pen.fill(head, pen.look().paper());
  }
}
