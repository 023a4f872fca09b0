package org.matraloom.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.time.Ratio;

/** One change to a composition, small enough to be written into its text. */
public sealed interface Edit {

  /**
   * Makes the change.
   *
   * @param composition the composition to change
   * @return a changed copy
   */
  Composition appliedTo(Composition composition);

  /**
   * The first round begins elsewhere.
   *
   * @param place beats after samam; negative before it
   */
  record Start(Ratio place) implements Edit {
    @Override
    public Composition appliedTo(Composition c) {
      return c.startingAt(place);
    }
  }

  /**
   * The landing is elsewhere.
   *
   * @param place beats after samam; negative before it
   */
  record Eduppu(Ratio place) implements Edit {
    @Override
    public Composition appliedTo(Composition c) {
      return c.landingAt(place);
    }
  }

  /**
   * Set in another tala, in the same kalai.
   *
   * @param tala the other tala
   */
  record InTala(Tala tala) implements Edit {
    @Override
    public Composition appliedTo(Composition c) {
      Avartana other = Avartana.of(tala, c.avartana().kalai(), c.avartana().custom());
      return c.in(other);
    }
  }

  /**
   * Performed by another plan.
   *
   * @param steps the new plan, at least one step that says something
   */
  record Plan(List<Step> steps) implements Edit {
    /** Copies the list. */
    public Plan {
      steps = List.copyOf(steps);
    }

    @Override
    public Composition appliedTo(Composition c) {
      return c.performing(steps);
    }
  }

  /**
   * Elements of a phrase are replaced, taken out or put in.
   *
   * @param phrase the phrase's name
   * @param from the first element replaced, from 0
   * @param to the element after the last one replaced; equal to {@code from} to put something in
   * @param elements what stands there instead, possibly nothing
   */
  record Splice(String phrase, int from, int to, List<Element> elements) implements Edit {
    /** Copies the list. */
    public Splice {
      elements = List.copyOf(elements);
    }

    @Override
    public Composition appliedTo(Composition c) {
      Map<String, Sequence> phrases = new LinkedHashMap<>(c.phrases());
      List<Element> body = new ArrayList<>(phrases.get(phrase).elements());
      List<Element> replaced = body.subList(from, to);
      replaced.clear();
      replaced.addAll(elements);
      phrases.put(phrase, new Sequence(body));
      return c.saying(phrases);
    }
  }

  /**
   * Makes several changes one after another.
   *
   * @param composition the composition to change
   * @param edits the changes in order
   * @return a changed copy
   */
  static Composition all(Composition composition, List<Edit> edits) {
    Composition changed = composition;
    for (Edit edit : edits) {
      changed = edit.appliedTo(changed);
    }
    return changed;
  }
}
