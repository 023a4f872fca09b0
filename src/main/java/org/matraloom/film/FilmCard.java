package org.matraloom.film;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Kriya;

/**
 * A card that stands still: what comes, in words, over the hand of the tala.
 *
 * @param heading what is written large
 * @param lines what is written below it
 * @param hand the kriyas of an avartana; none for a card between passes
 * @param line the line with which the piece begins; none for a card between passes
 */
record FilmCard(String heading, List<String> lines, List<Kriya> hand, Optional<ShownLine> line) {
  FilmCard {
    lines = List.copyOf(lines);
    hand = List.copyOf(hand);
  }
}
