package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Element;
import org.matraloom.score.Sollu;

/** Adds silent matras after an element, inside a word, or between the times of a repeat. */
final class SilenceAdded extends SequenceEdit {

  private final int matras;

  SilenceAdded(int matras) {
    this.matras = matras;
  }

  @Override
  List<Replacement> ofPlain(Neighbours neighbours) {
    List<Replacement> found = new ArrayList<>();
    if (!neighbours.beforeKarvai()) {
      found.add(
          new Replacement(
              joined(List.of(neighbours.element()), silences(matras)),
              neighbours.saidUpToHere(),
              neighbours.fitAfter()));
    }
    if (neighbours.element() instanceof Element.Word written) {
      for (int cut = 1; cut < written.sollus().size(); cut++) {
        found.add(inside(written.sollus(), cut));
      }
    }
    return found;
  }

  @Override
  List<Replacement> ofRepeat(Element.Repeat repeat, Neighbours neighbours) {
    List<Replacement> found = new ArrayList<>();
    for (int time = 1; time < repeat.times(); time++) {
      found.add(
          new Replacement(
              joined(
                  repeated(repeat.body(), time),
                  silences(matras),
                  repeated(repeat.body(), repeat.times() - time)),
              neighbours.saidUpToHere() + " has been said " + Counts.times(time),
              Variant.Fit.BETWEEN_WORDS));
    }
    return found;
  }

  private Replacement inside(List<Sollu> sollus, int cut) {
    Element.Word head = word(sollus.subList(0, cut));
    Element.Word tail = word(sollus.subList(cut, sollus.size()));
    return new Replacement(
        joined(List.of(head), silences(matras), List.of(tail)),
        "between " + head.written() + " and " + tail.written(),
        Variant.Fit.INSIDE_WORD);
  }
}
