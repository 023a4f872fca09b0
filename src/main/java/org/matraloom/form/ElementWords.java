package org.matraloom.form;

import java.util.List;
import org.matraloom.score.Element;
import org.matraloom.score.ElementVisitor;

/** Names an element of a phrase in a message, as it is written in the score. */
public final class ElementWords implements ElementVisitor<String> {

  private static final ElementWords WORDS = new ElementWords();

  private ElementWords() {}

  /**
   * An element as it is written.
   *
   * @param element the element
   * @return its text in a score
   */
  public static String of(Element element) {
    return element.told(WORDS);
  }

  @Override
  public String word(Element.Word word) {
    return word.written();
  }

  @Override
  public String karvai(Element.Karvai karvai) {
    return karvai.matras() == 1 ? "," : ";";
  }

  @Override
  public String silence(Element.Silence silence) {
    return ".";
  }

  @Override
  public String group(Element.Group group) {
    return group.size()
        + (group.hold() > 1 ? "*" + group.hold() : "")
        + (group.karvai() > 0 ? "(" + group.karvai() + ")" : "");
  }

  @Override
  public String faster(Element.Faster faster) {
    String inside = of(faster.body().elements());
    return faster.factor() == 2 ? "[" + inside + "]" : "[[" + inside + "]]";
  }

  @Override
  public String repeat(Element.Repeat repeat) {
    return "(" + of(repeat.body().elements()) + ") x" + repeat.times();
  }

  @Override
  public String innerNadai(Element.InnerNadai inner) {
    return "{" + inner.nadai() + ": " + of(inner.body().elements()) + "}";
  }

  @Override
  public String reference(Element.Reference reference) {
    return reference.name();
  }

  @Override
  public String bar(Element.Bar bar) {
    return bar.endsAvartana() ? "||" : "|";
  }

  @Override
  public String breathWish(Element.BreathWish wish) {
    return wish.asks() ? "'" : "'!";
  }

  /**
   * Elements as they are written.
   *
   * @param elements the elements, in order
   * @return their text in a score, with spaces between them
   */
  public static String of(List<Element> elements) {
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
