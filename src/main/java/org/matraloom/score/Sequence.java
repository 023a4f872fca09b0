package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;

/**
 * Elements said one after another.
 *
 * @param elements in order, possibly none
 */
public record Sequence(List<Element> elements) {

  private static final int STATEMENTS = 3;

  /**
   * Copies the list; groups know then whether they stand in an ending: three groups one after
   * another, with karvai in brackets after the first two.
   */
  public Sequence {
    elements = List.copyOf(settled(elements));
  }

  private static List<Element> settled(List<Element> elements) {
    List<Element> settled = new ArrayList<>(elements);
    List<Integer> timed = new ArrayList<>();
    for (int at = 0; at < elements.size(); at++) {
      if (!(elements.get(at) instanceof Element.Timeless)) {
        timed.add(at);
      }
    }
    int endingUntil = 0;
    for (int at = 0; at < timed.size(); at++) {
      if (elements.get(timed.get(at)) instanceof Element.Group group) {
        List<Element> next =
            timed.subList(at, Math.min(timed.size(), at + STATEMENTS)).stream()
                .<Element>map(elements::get)
                .toList();
        endingUntil = isEnding(next) ? at + STATEMENTS : endingUntil;
        settled.set(timed.get(at), group.standing(at < endingUntil));
      }
    }
    return settled;
  }

  /**
   * Whether it takes no time: bars and wishes for breath alone, or nothing.
   *
   * @return true if nothing is said and nothing rings
   */
  public boolean saysNothing() {
    for (Element element : elements) {
      if (!(element instanceof Element.Timeless)) {
        return false;
      }
    }
    return true;
  }

  /** Whether these are the three statements of an ending: bars and breath marks do not count. */
  private static boolean isEnding(List<Element> next) {
    for (int index = 0; index < next.size(); index++) {
      boolean rings = index < STATEMENTS - 1;
      if (!(next.get(index) instanceof Element.Group group)
          || group.hold() > 1
          || (rings && group.karvai() == 0)) {
        return false;
      }
    }
    return next.size() == STATEMENTS;
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
