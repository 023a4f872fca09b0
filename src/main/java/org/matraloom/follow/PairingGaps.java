package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Gives sollus that have no sound the sounds that are left over near their places: a sollu said
 * unevenly, or heard at the hum before it, is there all the same.
 */
final class PairingGaps {

  /** A sound is nearer to its sollu's place than to the next. */
  private static final double NEAR_MATRAS = 0.42;

  private final double[] expected;
  private final List<Onset> onsets;
  private final PairingModel model;

  /**
   * Prepares to fill.
   *
   * @param expected when each sollu falls in the score, in seconds at its tempo
   * @param onsets what was heard
   * @param model what is known of the performer
   */
  PairingGaps(double[] expected, List<Onset> onsets, PairingModel model) {
    this.expected = expected;
    this.onsets = onsets;
    this.model = model;
  }

  /**
   * The same pairing with its gaps filled where that can be.
   *
   * @param said the pairs, in order of time
   */
  List<Alignment.Said> filled(List<Alignment.Said> said) {
    List<Alignment.Said> filled = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      if (i > 0 && said.get(i).sollu() > said.get(i - 1).sollu() + 1) {
        between(said.get(i - 1), said.get(i), filled);
      }
      filled.add(said.get(i));
    }
    return filled;
  }

  /**
   * The same pairing with the sounds before its first and after its last that go on in time.
   *
   * @param said the pairs, in order of time; at least one
   */
  List<Alignment.Said> extended(List<Alignment.Said> said) {
    LinkedList<Alignment.Said> extended = new LinkedList<>(said);
    for (Optional<Alignment.Said> next = beside(extended.getFirst(), -1);
        next.isPresent();
        next = beside(extended.getFirst(), -1)) {
      extended.addFirst(next.get());
    }
    for (Optional<Alignment.Said> next = beside(extended.getLast(), 1);
        next.isPresent();
        next = beside(extended.getLast(), 1)) {
      extended.addLast(next.get());
    }
    return List.copyOf(extended);
  }

  /** The sollu next to one at an end, if a sound stands near its place. */
  private Optional<Alignment.Said> beside(Alignment.Said end, int way) {
    int sollu = end.sollu() + way;
    if (sollu < 0 || sollu >= expected.length) {
      return Optional.empty();
    }
    double apart = (expected[sollu] - expected[end.sollu()]) * model.stretch();
    double at = beat(end) + apart - model.lagSeconds()[sollu];
    return IntStream.iterate(end.onset() + way, j -> j >= 0 && j < onsets.size(), j -> j + way)
        .takeWhile(j -> way * (onsets.get(j).seconds() - at) < NEAR_MATRAS * Math.abs(apart))
        .filter(j -> Math.abs(onsets.get(j).seconds() - at) < NEAR_MATRAS * Math.abs(apart))
        .boxed()
        .min(Comparator.comparingDouble(j -> Math.abs(onsets.get(j).seconds() - at)))
        .map(j -> new Alignment.Said(sollu, j));
  }

  private void between(Alignment.Said from, Alignment.Said to, List<Alignment.Said> filled) {
    double begin = beat(from);
    double asked = expected[to.sollu()] - expected[from.sollu()];
    double stretch = (beat(to) - begin) / asked;
    int next = from.onset() + 1;
    for (int k = from.sollu() + 1; k < to.sollu() && asked > 0; k++) {
      double at = begin + (expected[k] - expected[from.sollu()]) * stretch - model.lagSeconds()[k];
      double reach =
          NEAR_MATRAS
              * stretch
              * Math.min(expected[k] - expected[k - 1], expected[k + 1] - expected[k]);
      int best = -1;
      for (int j = next; j < to.onset(); j++) {
        double off = Math.abs(onsets.get(j).seconds() - at);
        if (off < reach && (best < 0 || off < Math.abs(onsets.get(best).seconds() - at))) {
          best = j;
        }
      }
      if (best >= 0) {
        filled.add(new Alignment.Said(k, best));
        next = best + 1;
      }
    }
  }

  private double beat(Alignment.Said said) {
    return onsets.get(said.onset()).seconds() + model.lagSeconds()[said.sollu()];
  }
}
