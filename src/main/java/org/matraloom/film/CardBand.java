package org.matraloom.film;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.matraloom.film.FilmPen.Stylus;
import org.matraloom.paper.Figure;
import org.matraloom.sheet.DrawnLine;

/** Draws a card over the whole screen. */
final class CardBand {

  private static final double HEADING = 110;
  private static final double WORDS = 42;
  private static final double GAP = 20;
  private static final double LARGEST_HAND = 110;

  private final FilmSize size;

  CardBand(FilmSize size) {
    this.size = size;
  }

  /** The one band of a card. */
  List<Band> of(FilmCard card) {
    return List.of(new Band(size.whole(), card, pen -> draw(card, pen)));
  }

  private void draw(FilmCard card, FilmPen pen) {
    Rectangle2D whole = size.whole();
    double left = size.margin();
    double y = whole.getHeight() * (card.line().isPresent() ? 0.24 : 0.42);
    Stylus heading = new Stylus(HEADING, true, pen.look().ink());
    boolean fits = pen.width(card.heading(), HEADING, true) <= size.room();
    Stylus wrapped = new Stylus(HEADING * 0.6, true, pen.look().ink());
    y = pen.lines(card.heading(), left, y, size.room(), 2, fits ? heading : wrapped);
    y -= (fits ? HEADING : HEADING * 0.6) * 0.9;
    pen.rule(left, y, left + size.room(), y, 4, pen.look().rule());
    y += 80;
    Stylus words = new Stylus(WORDS, false, pen.look().ink());
    for (String line : card.lines()) {
      y = pen.lines(line, left, y, size.room(), 2, words) + 6;
    }
    y += 10;
    if (!card.hand().isEmpty()) {
      double side = Math.min(LARGEST_HAND, size.room() / card.hand().size() - GAP);
      for (int index = 0; index < card.hand().size(); index++) {
        Figure figure = Figure.of(card.hand().get(index));
        pen.figure(figure, left + index * (side + GAP), y, side, pen.look().ink());
      }
      y += side + 50;
    }
    if (card.line().isPresent()) {
      double scale = size.room() / DrawnLine.WIDTH;
      card.line().get().drawBare(pen, left, y, scale);
    }
  }
}
