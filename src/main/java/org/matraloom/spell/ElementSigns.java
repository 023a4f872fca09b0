package org.matraloom.spell;

import org.matraloom.score.Element;
import org.matraloom.score.ElementVisitor;

/** The signs that elements are written with. */
final class ElementSigns implements ElementVisitor<String> {

  @Override
  public String word(Element.Word word) {
    return word.written();
  }

  @Override
  public String karvai(Element.Karvai karvai) {
    return karvai.matras() == 2 ? ";" : ",";
  }

  @Override
  public String silence(Element.Silence silence) {
    return ".";
  }

  @Override
  public String group(Element.Group group) {
    return group.size()
        + (group.hold() == 1 ? "" : "*" + group.hold())
        + (group.karvai() == 0 ? "" : "(" + group.karvai() + ")");
  }

  /** Brackets that are not one double bracket are kept apart by a space. */
  @Override
  public String faster(Element.Faster faster) {
    String body = ScorePrinter.print(faster.body());
    String bracket = faster.factor() == 4 ? "[[" : "[";
    return bracket
        + (body.startsWith("[") ? " " : "")
        + body
        + (body.endsWith("]") ? " " : "")
        + (faster.factor() == 4 ? "]]" : "]");
  }

  @Override
  public String repeat(Element.Repeat repeat) {
    return "(" + ScorePrinter.print(repeat.body()) + ") x" + repeat.times();
  }

  @Override
  public String innerNadai(Element.InnerNadai inner) {
    return "{" + inner.nadai() + ": " + ScorePrinter.print(inner.body()) + "}";
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
}
