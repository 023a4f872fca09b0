package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.matraloom.score.Element;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;

/** A way to change one place of a written sequence; it lists every place where that can be done. */
abstract class SequenceEdit {

  /** The sequence with the change made at each place in turn. */
  final List<Variant> variants(Sequence sequence) {
    List<Variant> variants = new ArrayList<>();
    List<Element> elements = sequence.elements();
    for (int at = 0; at < elements.size(); at++) {
      int here = at;
      Neighbours neighbours = new Neighbours(elements, at);
      for (Replacement replacement : replacements(neighbours)) {
        variants.add(
            new Variant(
                spliced(elements, here, replacement.elements()),
                replacement.place(),
                replacement.fit(),
                replacement.eachTime()));
      }
    }
    return variants;
  }

  /** What may stand in place of an element that holds no others, with the change made. */
  abstract List<Replacement> ofPlain(Neighbours neighbours);

  /** What may stand in place of a repeat, with the change made between or in some of its times. */
  abstract List<Replacement> ofRepeat(Element.Repeat repeat, Neighbours neighbours);

  /**
   * What may stand in place of an element.
   *
   * @param elements the elements that replace it
   * @param place where the change is
   * @param fit how well the place suits
   * @param eachTime whether the change stands inside a repeat
   */
  record Replacement(List<Element> elements, String place, Variant.Fit fit, boolean eachTime) {
    Replacement(List<Element> elements, String place, Variant.Fit fit) {
      this(elements, place, fit, false);
    }
  }

  /**
   * An element and what stands around it.
   *
   * @param elements the sequence
   * @param at the element's index
   */
  record Neighbours(List<Element> elements, int at) {
    Element element() {
      return elements.get(at);
    }

    boolean beforeKarvai() {
      return at + 1 < elements.size() && elements.get(at + 1) instanceof Element.Karvai;
    }

    Variant.Fit fitAfter() {
      boolean seam =
          at + 1 == elements.size()
              || element() instanceof Element.Reference
              || elements.get(at + 1) instanceof Element.Reference;
      return seam ? Variant.Fit.BETWEEN_PHRASES : Variant.Fit.BETWEEN_WORDS;
    }

    String saidUpToHere() {
      for (int back = at; back >= 0; back--) {
        String said = lastSaid(elements.get(back));
        if (!said.isEmpty()) {
          return "after " + said;
        }
      }
      return "at its beginning";
    }
  }

  static List<Element> silences(int matras) {
    return Collections.nCopies(matras, new Element.Silence());
  }

  static List<Element> repeated(Sequence body, int times) {
    if (times <= 1) {
      return times == 1 ? body.elements() : List.of();
    }
    return List.of(new Element.Repeat(body, times));
  }

  static Element.Word word(List<Sollu> sollus) {
    StringBuilder written = new StringBuilder();
    sollus.forEach(sollu -> written.append(sollu.spelling()));
    return new Element.Word(written.toString(), sollus);
  }

  @SafeVarargs
  static List<Element> joined(List<? extends Element>... parts) {
    List<Element> joined = new ArrayList<>();
    for (List<? extends Element> part : parts) {
      joined.addAll(part);
    }
    return joined;
  }

  private List<Replacement> replacements(Neighbours neighbours) {
    Element element = neighbours.element();
    List<Replacement> found = new ArrayList<>();
    if (element instanceof Element.Faster faster) {
      for (Variant body : variants(faster.body())) {
        found.add(wrapped(new Element.Faster(faster.factor(), body.sequence()), body));
      }
    } else if (element instanceof Element.InnerNadai inner) {
      for (Variant body : variants(inner.body())) {
        found.add(wrapped(new Element.InnerNadai(inner.nadai(), body.sequence()), body));
      }
    } else if (element instanceof Element.Repeat repeat) {
      for (Variant body : variants(repeat.body())) {
        Element changed = new Element.Repeat(body.sequence(), repeat.times());
        String place = body.place() + " each time";
        found.add(new Replacement(List.of(changed), place, body.fit(), true));
      }
      found.addAll(ofRepeat(repeat, neighbours));
    }
    found.addAll(ofPlain(neighbours));
    return found;
  }

  private static Replacement wrapped(Element element, Variant body) {
    return new Replacement(List.of(element), body.place(), body.fit(), body.eachTime());
  }

  private static Sequence spliced(List<Element> elements, int at, List<Element> replacement) {
    return new Sequence(
        joined(elements.subList(0, at), replacement, elements.subList(at + 1, elements.size())));
  }

  private static String lastSaid(Element element) {
    if (element instanceof Element.Word word) {
      return word.written();
    } else if (element instanceof Element.Group group) {
      return Integer.toString(group.size());
    } else if (element instanceof Element.Reference reference) {
      return reference.name();
    } else if (element instanceof Element.Repeat repeat) {
      return lastSaid(repeat.body());
    } else if (element instanceof Element.Faster faster) {
      return lastSaid(faster.body());
    } else if (element instanceof Element.InnerNadai inner) {
      return lastSaid(inner.body());
    }
    return "";
  }

  private static String lastSaid(Sequence body) {
    for (int back = body.elements().size() - 1; back >= 0; back--) {
      String said = lastSaid(body.elements().get(back));
      if (!said.isEmpty()) {
        return said;
      }
    }
    return "";
  }
}
