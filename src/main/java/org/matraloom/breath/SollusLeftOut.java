package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Element;
import org.matraloom.score.Sollu;

/**
 * Leaves out the last sollus of a word or a group and keeps their matras as silence; those that end
 * a phrase, where it lands, only where nothing else helps.
 */
final class SollusLeftOut extends SequenceEdit {

  private final int count;

  SollusLeftOut(int count) {
    this.count = count;
  }

  @Override
  List<Replacement> ofPlain(Neighbours neighbours) {
    if (neighbours.beforeKarvai()) {
      return List.of();
    }
    if (neighbours.element() instanceof Element.Word word) {
      return shortened(word.sollus(), neighbours);
    }
    if (neighbours.element() instanceof Element.Group group
        && group.hold() == 1
        && group.words().isPlain()
        && group.karvai() == 0) {
      return shortened(group.sollus(), neighbours);
    }
    return List.of();
  }

  @Override
  List<Replacement> ofRepeat(Element.Repeat repeat, Neighbours neighbours) {
    List<Replacement> found = new ArrayList<>();
    for (int time = 1; time <= repeat.times(); time++) {
      for (Variant body : variants(repeat.body())) {
        found.add(
            new Replacement(
                joined(
                    repeated(repeat.body(), time - 1),
                    body.sequence().elements(),
                    repeated(repeat.body(), repeat.times() - time)),
                body.place() + " when it is said the " + Counts.ordinal(time) + " time",
                body.fit(),
                body.eachTime()));
      }
    }
    return found;
  }

  private List<Replacement> shortened(List<Sollu> sollus, Neighbours neighbours) {
    if (sollus.size() <= count) {
      return List.of();
    }
    Element.Word left = word(sollus.subList(0, sollus.size() - count));
    return List.of(
        new Replacement(
            joined(List.of(left), silences(count)),
            neighbours.saidUpToHere().replaceFirst("^after ", "of "),
            neighbours.fitAfter() == Variant.Fit.BETWEEN_PHRASES
                ? Variant.Fit.INSIDE_WORD
                : Variant.Fit.BETWEEN_WORDS));
  }
}
