package org.matraloom.notation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;

/** Which phrase speaks of which: looks for unknown names, circles, and what is too much. */
final class PhraseGraph {

  static final long MOST_STEPS = 2_000_000;
  private static final int MOST_SPEED = 64;

  /**
   * A phrase as it is written.
   *
   * @param name its name
   * @param token where its name stands
   * @param sequence what it says
   * @param references the names of other phrases in it
   */
  record Definition(String name, Token token, Sequence sequence, List<Token> references) {}

  private record Shape(int depth, long speed) {
    static final Shape FLAT = new Shape(0, 1);

    Shape beside(Shape other) {
      return new Shape(Math.max(depth, other.depth), Math.max(speed, other.speed));
    }

    Shape inside(long factor) {
      return new Shape(depth + 1, Math.min(speed * factor, MOST_SPEED + 1L));
    }
  }

  private static final class Visit {
    private final Definition phrase;
    private int next;

    Visit(Definition phrase) {
      this.phrase = phrase;
    }
  }

  private final Map<String, Definition> phrases;
  private final Lexicon lexicon;
  private final Problems problems;

  PhraseGraph(Map<String, Definition> phrases, Lexicon lexicon, Problems problems) {
    this.phrases = phrases;
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** The phrases' sequences by name, in written order. */
  Map<String, Sequence> sequences() {
    Map<String, Sequence> sequences = new LinkedHashMap<>();
    for (Map.Entry<String, Definition> phrase : phrases.entrySet()) {
      sequences.put(phrase.getKey(), phrase.getValue().sequence());
    }
    return sequences;
  }

  /** Checks all phrases; the length of each, or of none if there is an error. */
  Map<String, Length> lengths() {
    int before = problems.errors();
    checkNames();
    List<String> order = insideFirst();
    if (before == problems.errors()) {
      checkShapes(order);
    }
    return before == problems.errors() ? measure(order) : Map.of();
  }

  /** The phrases that are said when some phrases are. */
  Set<String> saidBy(Set<String> first) {
    Set<String> said = new LinkedHashSet<>(first);
    List<String> open = new ArrayList<>(first);
    while (!open.isEmpty()) {
      for (Token reference : phrases.get(open.remove(open.size() - 1)).references()) {
        String name = reference.name();
        if (said.add(name)) {
          open.add(name);
        }
      }
    }
    return said;
  }

  private void checkNames() {
    for (Definition phrase : phrases.values()) {
      for (Token reference : phrase.references()) {
        if (!phrases.containsKey(reference.name())) {
          String message = "no phrase is called " + reference.brief();
          String name = reference.text();
          problems.error(
              reference,
              message,
              () -> PhraseMistakes.unknownName(name, phrases.keySet(), lexicon));
        }
      }
    }
  }

  /** An order in which every phrase comes after those it speaks of; circles are told. */
  private List<String> insideFirst() {
    List<String> order = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (String name : phrases.keySet()) {
      if (!done.contains(name)) {
        walk(name, done, order);
      }
    }
    return order;
  }

  private void walk(String start, Set<String> done, List<String> order) {
    LinkedHashMap<String, Visit> path = new LinkedHashMap<>();
    Deque<Visit> stack = new ArrayDeque<>();
    enter(start, path, stack);
    while (!stack.isEmpty()) {
      Visit visit = stack.peek();
      if (visit.next == visit.phrase.references().size()) {
        stack.pop();
        String name = visit.phrase.name();
        path.remove(name);
        done.add(name);
        order.add(name);
        continue;
      }
      Token reference = visit.phrase.references().get(visit.next++);
      String name = reference.name();
      if (path.containsKey(name)) {
        tellCircle(reference, name, path);
      } else if (phrases.containsKey(name) && !done.contains(name)) {
        enter(name, path, stack);
      }
    }
  }

  private void enter(String name, Map<String, Visit> path, Deque<Visit> stack) {
    Visit visit = new Visit(phrases.get(name));
    path.put(name, visit);
    stack.push(visit);
  }

  private void tellCircle(Token reference, String name, Map<String, Visit> path) {
    List<String> names = new ArrayList<>(path.keySet());
    List<String> circle = names.subList(names.indexOf(name), names.size());
    problems.error(
        reference,
        circle.size() == 1
            ? "phrase " + name + " speaks of itself"
            : "phrase " + name + " speaks of itself by way of " + circle.get(1),
        "take one of the names out");
  }

  private void checkShapes(List<String> order) {
    Map<String, Shape> shapes = new HashMap<>();
    for (String name : order) {
      Definition phrase = phrases.get(name);
      Shape shape = shape(phrase.sequence(), shapes);
      if (shape.depth > PhraseParser.DEEPEST) {
        problems.error(
            phrase.token(),
            "in "
                + name
                + " brackets and phrases stand more than "
                + PhraseParser.DEEPEST
                + " deep inside each other",
            "write some of the inner phrases out");
        shape = Shape.FLAT;
      } else if (shape.speed > MOST_SPEED) {
        problems.error(
            phrase.token(),
            "in "
                + name
                + " square brackets make something more than "
                + MOST_SPEED
                + " times as fast",
            "take some of the square brackets out");
        shape = Shape.FLAT;
      }
      shapes.put(name, shape);
    }
  }

  private static Shape shape(Sequence sequence, Map<String, Shape> shapes) {
    Shape shape = Shape.FLAT;
    for (Element element : sequence.elements()) {
      shape = shape.beside(shape(element, shapes));
    }
    return shape;
  }

  private static Shape shape(Element element, Map<String, Shape> shapes) {
    if (element instanceof Element.Faster faster) {
      return shape(faster.body(), shapes).inside(faster.factor());
    } else if (element instanceof Element.Repeat repeat) {
      return shape(repeat.body(), shapes).inside(1);
    } else if (element instanceof Element.InnerNadai inner) {
      return shape(inner.body(), shapes).inside(1);
    } else if (element instanceof Element.Reference reference) {
      return shapes.get(reference.name()).inside(1);
    }
    return Shape.FLAT;
  }

  private Map<String, Length> measure(List<String> order) {
    Map<String, Sequence> sequences = sequences();
    Map<String, Length> known = new HashMap<>();
    for (String name : order) {
      Token token = phrases.get(name).token();
      try {
        Length length = Length.of(sequences.get(name), sequences, known);
        known.put(name, length);
        if (length.steps() > MOST_STEPS) {
          tooLong(token);
          return Map.of();
        }
      } catch (ArithmeticException e) {
        tooLong(token);
        return Map.of();
      }
    }
    return known;
  }

  private void tooLong(Token name) {
    problems.error(
        name,
        "phrase "
            + name.brief()
            + " is too long: it passes more than "
            + String.format(Locale.ROOT, "%,d", MOST_STEPS)
            + " sollus and marks",
        "check the repeats");
  }
}
