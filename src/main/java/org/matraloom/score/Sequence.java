package org.matraloom.score;

import java.util.List;

/**
 * Elements said one after another.
 *
 * @param elements in order, possibly none
 */
public record Sequence(List<Element> elements) {

  /** Copies the list. */
  public Sequence {
    elements = List.copyOf(elements);
  }

  /**
   * A sequence of the given elements.
   *
   * @param elements in order
   * @return the sequence
   */
  public static Sequence of(Element... elements) {
    return new Sequence(List.of(elements));
  }
}
