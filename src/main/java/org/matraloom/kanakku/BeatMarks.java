package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** Writes what a beat holds, a mark a matra, so that one sees where in the beat a sollu falls. */
final class BeatMarks {

  private static final String RINGS = ",";
  private static final String SILENT = ".";
  private static final String OUTSIDE = "-";

  private BeatMarks() {}

  /**
   * The marks of a beat.
   *
   * @param beat which beat of the performance
   * @param round the round whose matras are counted
   * @param said what sounds in the beat or after it, in order
   */
  static List<String> of(long beat, Span.Round round, List<Spoken> said) {
    List<String> marks = new ArrayList<>();
    Ratio matra = Ratio.of(1, round.matrasPerBeat());
    Ratio from = round.startBeat();
    if (from.compareTo(Ratio.of(beat)) < 0) {
      Ratio matras = Ratio.of(beat).minus(from).dividedBy(matra);
      from = from.plus(matra.times(Ratio.of(matras.ceil())));
    } else {
      long before = from.minus(Ratio.of(beat)).dividedBy(matra).ceil();
      marks.addAll(Collections.nCopies((int) before, OUTSIDE));
    }
    for (Ratio at = from; at.compareTo(Ratio.of(beat + 1)) < 0; at = at.plus(matra)) {
      marks.add(at.compareTo(round.endBeat()) < 0 ? mark(at, at.plus(matra), said) : OUTSIDE);
    }
    return marks;
  }

  private static String mark(Ratio from, Ratio to, List<Spoken> said) {
    List<Spoken> inside =
        said.stream()
            .takeWhile(one -> one.beat().compareTo(to) < 0)
            .filter(one -> one.beat().compareTo(from) >= 0)
            .toList();
    boolean rings =
        said.stream()
            .takeWhile(one -> one.beat().compareTo(from) < 0)
            .anyMatch(one -> one.endBeat().compareTo(from) > 0);
    if (inside.isEmpty()) {
      return rings ? RINGS : SILENT;
    }
    String words =
        inside.stream().map(one -> one.sollu().spelling()).collect(Collectors.joining(" "));
    boolean plain = inside.size() == 1 && inside.get(0).beat().equals(from);
    return plain ? words : "[" + words + "]";
  }
}
