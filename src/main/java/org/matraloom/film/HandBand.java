package org.matraloom.film;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.matraloom.film.FilmPen.Side;
import org.matraloom.film.FilmPen.Stylus;
import org.matraloom.paper.Figure;
import org.matraloom.score.Kriya;

/** Draws the hand as a large figure with its count, and small the whole avartana. */
final class HandBand {

  private static final int MOST_A_LINE = 8;
  private static final int MOST_A_LINE_UPRIGHT = 4;
  private static final int MOST_SHOWN = 32;
  private static final double GAP = 12;

  private final FilmSize size;

  HandBand(FilmSize size) {
    this.size = size;
  }

  void draw(ScreenView.HandView hand, FilmPen pen) {
    Rectangle2D area = size.hand();
    double left = size.margin();
    double top = area.getMinY() + 14;
    double side = size.isUpright() ? 300 : 240;
    Figure figure = Figure.of(hand.kriya());
    pen.figure(figure, left, top, side, pen.look().ink());
    if (hand.again()) {
      pen.figure(Figure.AGAIN, left + side - 10, top, side * 0.5, pen.look().ink());
    }
    Stylus count = new Stylus(side * 0.9, true, pen.look().ink());
    double x = left + side + 50;
    pen.text("" + hand.count(), x, top + side * 0.84, Side.LEFT, side * 1.2, count);
    Stylus words = new Stylus(38, false, pen.look().quiet());
    double room = side + (size.isUpright() ? 300 : 260);
    pen.text(hand.words(), left, top + side + 48, Side.LEFT, room, words);
    cycle(hand, area, x + side * 1.2, pen);
  }

  /** All kriyas of the avartana, the one that is given in a frame. */
  private void cycle(ScreenView.HandView hand, Rectangle2D area, double left, FilmPen pen) {
    List<Kriya> cycle = hand.cycle();
    if (cycle.size() > MOST_SHOWN) {
      return;
    }
    double room = area.getMaxX() - left - (size.isUpright() ? size.margin() : 0);
    int most = size.isUpright() ? MOST_A_LINE_UPRIGHT : MOST_A_LINE;
    int lines = (cycle.size() + most - 1) / most;
    int across = Math.min(most, cycle.size());
    double high = (area.getHeight() - 60) / lines - GAP;
    double side = Math.min(Math.min(64, high), room / across - GAP);
    for (int index = 0; index < cycle.size(); index++) {
      double x = left + index % most * (side + GAP);
      double y = area.getMinY() + 30 + index / most * (side + GAP * 1.6);
      boolean now = index == hand.count() - 1;
      pen.figure(
          Figure.of(cycle.get(index)), x, y, side, now ? pen.look().ink() : pen.look().quiet());
      if (now) {
        pen.frame(new Rectangle2D.Double(x - 5, y - 5, side + 10, side + 10), 4, pen.look().ink());
      }
    }
  }
}
