package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Element;

/**
 * Some lines taken as one statement, and the silence or karvai that follows it.
 *
 * @param said the elements without what takes no time and without what follows
 * @param gapMatras the karvai or silence at their end, that of a kanakku group included
 */
record Statement(List<Element> said, int gapMatras) {

  static Statement of(List<List<Element>> lines) {
    List<Element> said = new ArrayList<>();
    lines.forEach(
        line -> line.stream().filter(e -> !(e instanceof Element.Timeless)).forEach(said::add));
    int gap = 0;
    while (said.size() > 1 && isQuiet(said.get(said.size() - 1))) {
      Element last = said.remove(said.size() - 1);
      gap += last instanceof Element.Karvai karvai ? karvai.matras() : 1;
    }
    int end = said.size() - 1;
    if (end >= 0 && said.get(end) instanceof Element.Group group) {
      gap += group.karvai();
      said.set(end, group.ringing(0));
    }
    return new Statement(List.copyOf(said), gap);
  }

  /** The sollus of the single kanakku group that is said; 0 if something else is. */
  int groupSize() {
    return said.size() == 1 && said.get(0) instanceof Element.Group group ? group.size() : 0;
  }

  static boolean isQuiet(Element element) {
    return element instanceof Element.Karvai || element instanceof Element.Silence;
  }
}
