package org.matraloom.pasted;

import java.util.List;

/**
 * A score made of a text that was none.
 *
 * @param score the score, with the guesses as notes at its head; each line ends with a line feed
 * @param guesses what was not certain, a sentence without a full stop each
 * @param unread how many lines could not be read and stand in the score as notes
 */
public record TidyScore(String score, List<String> guesses, int unread) {

  /** Copies the list. */
  public TidyScore {
    guesses = List.copyOf(guesses);
  }
}
