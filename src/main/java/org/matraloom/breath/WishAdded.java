package org.matraloom.breath;

import java.util.List;
import org.matraloom.score.Element;

/** Asks for a breath after an element, where the score does not speak of one yet. */
final class WishAdded extends SequenceEdit {

  @Override
  List<Replacement> ofPlain(Neighbours neighbours) {
    int next = neighbours.at() + 1;
    boolean spoken =
        next < neighbours.elements().size()
            && neighbours.elements().get(next) instanceof Element.BreathWish;
    if (neighbours.element() instanceof Element.Timeless || spoken || neighbours.beforeKarvai()) {
      return List.of();
    }
    return List.of(
        new Replacement(
            List.of(neighbours.element(), new Element.BreathWish(true)),
            neighbours.saidUpToHere(),
            neighbours.fitAfter()));
  }

  @Override
  List<Replacement> ofRepeat(Element.Repeat repeat, Neighbours neighbours) {
    return List.of();
  }
}
