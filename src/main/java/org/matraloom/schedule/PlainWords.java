package org.matraloom.schedule;

import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/** The lexicon's usual word for a number of matras, run together as it is spoken. */
final class PlainWords {

  private PlainWords() {}

  /**
   * The word for a group of this size; nothing for a size that has none.
   *
   * @param size matras
   * @return the word
   */
  static Optional<String> of(int size) {
    if (size < 1 || size > Lexicon.LARGEST_GROUP) {
      return Optional.empty();
    }
    return Optional.of(
        Lexicon.standard().words(size).stream().map(Sollu::spelling).collect(Collectors.joining()));
  }
}
