package org.matraloom.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.matraloom.score.Composition;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Spoken;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * A phrase as it is said once, sollu by sollu, with all that lies between two sollus.
 *
 * <p>Lengths are matras of the round; only a passage with a nadai of its own depends on which nadai
 * that has.
 */
final class SaidPhrase {

  private static final int NO_NAME = Integer.MAX_VALUE;

  /**
   * A sollu and what follows it up to the next one.
   *
   * @param sound what is said
   * @param matra where it begins
   * @param own how long its own part is
   * @param ring how long it rings on after that
   * @param silence how long nothing sounds after that
   * @param phrase the innermost phrase it stands in
   * @param opens what begins with it
   */
  record Said(
      String sound,
      Ratio matra,
      Ratio own,
      Ratio ring,
      Ratio silence,
      String phrase,
      Spoken.Opens opens) {
    Ratio end() {
      return matra.plus(own).plus(gap());
    }

    Ratio gap() {
      return ring.plus(silence);
    }
  }

  private record Begun(int sollu, int depth) {}

  private final List<Spoken> spoken = new ArrayList<>();
  private final NavigableMap<Integer, Integer> depths = new TreeMap<>();
  private final Map<Integer, Integer> parts = new HashMap<>();
  private final List<Integer> offsets = new ArrayList<>();
  private final List<Begun> open = new ArrayList<>();
  private final List<Said> said = new ArrayList<>();

  private SaidPhrase() {}

  static SaidPhrase of(Composition composition, String phrase, int nadai) {
    Performance once =
        Performance.of(
            new Composition(
                "",
                composition.avartana(),
                composition.tempo(),
                Ratio.ZERO,
                Ratio.ZERO,
                composition.phrases(),
                List.of(new Step.Say(phrase, 1, nadai, 1))));
    SaidPhrase read = new SaidPhrase();
    Iterator<Moment> moments = once.moments();
    while (moments.hasNext()) {
      read.take(moments.next());
    }
    read.finish(once.endBeat(), nadai);
    return read;
  }

  private void take(Moment moment) {
    if (moment instanceof Spoken sollu) {
      int begins = open.isEmpty() ? 0 : open.get(open.size() - 1).sollu();
      offsets.add(spoken.size() - begins);
      spoken.add(sollu);
    } else if (moment instanceof Moment.PhraseStart start) {
      boundary(start.depth());
      open.add(new Begun(spoken.size(), start.depth()));
    } else if (moment instanceof Moment.PhraseEnd end) {
      boundary(end.depth());
      Begun begun = open.remove(open.size() - 1);
      if (!depths.subMap(begun.sollu(), false, spoken.size(), false).isEmpty()) {
        parts.merge(begun.sollu(), begun.depth(), Math::min);
        parts.merge(spoken.size(), begun.depth(), Math::min);
      }
    }
  }

  private void boundary(int depth) {
    depths.merge(spoken.size(), depth, Math::min);
  }

  private void finish(Ratio end, int nadai) {
    for (int at = 0; at < spoken.size(); at++) {
      Spoken one = spoken.get(at);
      Ratio next = at + 1 < spoken.size() ? spoken.get(at + 1).beat() : end;
      Ratio ownEnd = one.beat().plus(one.ownBeats());
      said.add(
          new Said(
              one.sollu().sound(),
              one.beat().times(nadai),
              one.ownBeats().times(nadai),
              one.endBeat().minus(ownEnd).times(nadai),
              next.minus(one.endBeat()).times(nadai),
              one.phrase(),
              one.opens()));
    }
  }

  List<Said> said() {
    return said;
  }

  int size() {
    return said.size();
  }

  /** How many sollus of the innermost named phrase came before a sollu. */
  int offset(int sollu) {
    return offsets.get(sollu);
  }

  /** Whether a phrase named at that depth, or further out, ends or begins before a sollu. */
  boolean hasNameBefore(int sollu, int depth) {
    return depths.getOrDefault(sollu, NO_NAME) <= depth;
  }

  /** Whether one that names others does. */
  boolean hasPartBefore(int sollu, int depth) {
    return parts.getOrDefault(sollu, NO_NAME) <= depth;
  }

  /** The smallest depth at which the phrase falls into parts; 1 if it does not. */
  int topDepth() {
    return depths.entrySet().stream()
        .filter(entry -> entry.getKey() > 0 && entry.getKey() < spoken.size())
        .mapToInt(Map.Entry::getValue)
        .min()
        .orElse(1);
  }
}
