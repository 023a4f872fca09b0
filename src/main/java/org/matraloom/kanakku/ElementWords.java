package org.matraloom.kanakku;

import java.util.List;
import org.matraloom.score.Element;

/** Names an element of a phrase in a message, as it is written in the score. */
final class ElementWords {

  private ElementWords() {}

  static String of(Element element) {
    if (element instanceof Element.Word word) {
      return word.written();
    } else if (element instanceof Element.Karvai karvai) {
      return karvai.matras() == 1 ? "," : ";";
    } else if (element instanceof Element.Silence) {
      return ".";
    } else if (element instanceof Element.Group group) {
      return group.size()
          + (group.hold() > 1 ? "*" + group.hold() : "")
          + (group.karvai() > 0 ? "(" + group.karvai() + ")" : "");
    } else if (element instanceof Element.Faster faster) {
      String inside = of(faster.body().elements());
      return faster.factor() == 2 ? "[" + inside + "]" : "[[" + inside + "]]";
    } else if (element instanceof Element.Repeat repeat) {
      return "(" + of(repeat.body().elements()) + ") x" + repeat.times();
    } else if (element instanceof Element.InnerNadai inner) {
      return "{" + inner.nadai() + ": " + of(inner.body().elements()) + "}";
    } else if (element instanceof Element.Reference reference) {
      return reference.name();
    }
    return ((Element.Bar) element).endsAvartana() ? "||" : "|";
  }

  static String of(List<Element> elements) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < elements.size(); i++) {
      if (i > 0 && !areTight(elements.get(i - 1), elements.get(i))) {
        text.append(' ');
      }
      text.append(of(elements.get(i)));
    }
    return text.toString();
  }

  private static boolean areTight(Element before, Element after) {
    boolean karvais = before instanceof Element.Karvai && after instanceof Element.Karvai;
    return karvais
        || before instanceof Element.Group group
            && group.karvai() > 0
            && after instanceof Element.Group;
  }
}
