package org.matraloom.score;

import java.util.ArrayList;
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
   * The phrases that it names, at any depth of its brackets.
   *
   * @return their names, possibly repeated
   */
  public List<String> phrasesNamed() {
    List<String> names = new ArrayList<>();
    for (Element element : elements) {
      if (element instanceof Element.Reference reference) {
        names.add(reference.name());
      } else if (element instanceof Element.Bracket bracket) {
        names.addAll(bracket.body().phrasesNamed());
      }
    }
    return names;
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
