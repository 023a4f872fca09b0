package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Element;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Sequence;

/**
 * Phrases of another score under other names, without bars: they claim what is so where that score
 * begins.
 *
 * @param names the new name of each phrase
 * @param groupsInWords whether groups are written in words, as the other score has words of its own
 */
record TakenOver(Map<String, String> names, boolean groupsInWords) {

  Sequence sequence(Sequence sequence) {
    List<Element> elements = new ArrayList<>();
    for (Element element : sequence.elements()) {
      if (element instanceof Element.Reference reference) {
        elements.add(new Element.Reference(names.get(reference.name())));
      } else if (element instanceof Element.Faster faster) {
        elements.add(new Element.Faster(faster.factor(), sequence(faster.body())));
      } else if (element instanceof Element.Repeat repeat) {
        elements.add(new Element.Repeat(sequence(repeat.body()), repeat.times()));
      } else if (element instanceof Element.InnerNadai inner) {
        elements.add(new Element.InnerNadai(inner.nadai(), sequence(inner.body())));
      } else if (element instanceof Element.Group group && groupsInWords) {
        inWords(group, elements);
      } else if (!(element instanceof Element.Bar)) {
        elements.add(element);
      }
    }
    return new Sequence(elements);
  }

  private static void inWords(Element.Group group, List<Element> elements) {
    GroupWords words = group.words();
    for (int index = 0; index < words.sollus().size(); index++) {
      elements.add(
          new Element.Word(
              words.sollus().get(index).spelling(), List.of(words.sollus().get(index))));
      ring(words.matras().get(index) * group.hold() - 1, elements);
    }
    ring(group.karvai(), elements);
  }

  private static void ring(int matras, List<Element> elements) {
    for (int left = matras; left > 0; left -= 2) {
      elements.add(new Element.Karvai(Math.min(2, left)));
    }
  }
}
