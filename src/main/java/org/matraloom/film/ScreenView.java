package org.matraloom.film;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Kriya;
import org.matraloom.sheet.DrawnLine;
import org.matraloom.time.Ratio;

/**
 * What is to be seen from a moment of a pass on.
 *
 * @param beat the moment, in beats of the performance
 * @param head what stands at the top
 * @param line the line that goes on, with what is lit
 * @param next the line after it
 * @param hand what the hand does
 * @param news what comes and is told beforehand
 */
record ScreenView(
    Ratio beat,
    Head head,
    LineView line,
    Optional<ShownLine> next,
    HandView hand,
    Optional<News> news) {

  /** What stands at the top: the piece, how it is taken, what is being said, and where. */
  record Head(String title, String setting, String section, String place) {}

  /** A line with the beat and the sign that are lit in it. */
  record LineView(
      ShownLine line, Optional<DrawnLine.Stretch> cell, Optional<DrawnLine.Stretch> mark) {}

  /**
   * The hand.
   *
   * @param kriya what it does
   * @param words the same in words
   * @param count which beat of the avartana, from 1
   * @param again whether the kriya is given a second time
   * @param cycle all kriyas of the avartana
   */
  record HandView(Kriya kriya, String words, int count, boolean again, List<Kriya> cycle) {
    HandView {
      cycle = List.copyOf(cycle);
    }
  }

  /** What is told beside the hand. */
  sealed interface News {

    /** A text. */
    record Told(String text) implements News {}

    /**
     * Another number of matras a beat.
     *
     * @param before matras a beat up to there; 0 if it is the first
     * @param after matras a beat from there on
     * @param words the nadai by name
     * @param place where, as it is said
     * @param beatsLeft whole beats until then; 0 if it has come
     */
    record Change(int before, int after, String words, String place, int beatsLeft)
        implements News {}
  }
}
