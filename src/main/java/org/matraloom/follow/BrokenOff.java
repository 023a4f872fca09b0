package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Finds a few sollus said, broken off and begun again where a pairing has a wait with sounds left
 * over in it. So short a passage costs as much as a restart as it does as a wait, but a wait is
 * silent: sounds in it that keep the pulse before the silence, or the one after it, are sollus.
 */
final class BrokenOff {

  /** A sound is no farther from the place of its sollu, in matras. */
  private static final double NEAR_MATRAS = 0.42;

  /** So many sounds must be found to be sollus, and no more than one be left. */
  private static final int LEAST_SOUNDS = 2;

  private static final int MOST_LEFT = 1;

  /** Of the sollus from the first to the last of them at least this share is heard. */
  private static final double LEAST_HEARD = 0.67;

  private final double[] expected;
  private final double[] matraSeconds;
  private final List<Onset> onsets;
  private final PairingModel model;

  /**
   * Prepares to look.
   *
   * @param expected when each sollu falls, in seconds at the tempo of the score
   * @param matraSeconds the length of each sollu's matra at that tempo
   * @param onsets what was heard
   * @param model what is known of the performer
   */
  BrokenOff(double[] expected, double[] matraSeconds, List<Onset> onsets, PairingModel model) {
    this.expected = expected;
    this.matraSeconds = matraSeconds;
    this.onsets = onsets;
    this.model = model;
  }

  /**
   * The pairing with the sollus that were said before it was begun again.
   *
   * @param said the pairs, in order of time
   * @param jumps where it is half a matra or more too late or too early: the pairs after it
   */
  List<Alignment.Said> found(List<Alignment.Said> said, List<Integer> jumps) {
    List<Alignment.Said> found = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      if (i > 0 && jumps.contains(i)) {
        found.addAll(between(said.get(i - 1), said.get(i)));
      }
      found.add(said.get(i));
    }
    return found;
  }

  private List<Alignment.Said> between(Alignment.Said from, Alignment.Said to) {
    List<Integer> left =
        IntStream.range(from.onset() + 1, to.onset())
            .filter(j -> onsets.get(j).confidence() >= PairingPrices.SURE_CONFIDENCE)
            .boxed()
            .toList();
    List<Integer> all = new ArrayList<>(left);
    all.add(0, from.onset());
    all.add(to.onset());
    int silence = 1;
    for (int i = 2; i < all.size(); i++) {
      silence = gap(all, i) > gap(all, silence) ? i : silence;
    }
    if (left.size() < LEAST_SOUNDS || gap(all, silence) < PairingPrices.RESTART_SECONDS) {
      return List.of();
    }
    List<Alignment.Said> before = filled(from, all.subList(1, silence), 1);
    List<Integer> later = new ArrayList<>(all.subList(silence, all.size() - 1));
    Collections.reverse(later);
    List<Alignment.Said> after = new ArrayList<>(filled(to, later, -1));
    Collections.reverse(after);
    int last = before.isEmpty() ? from.sollu() : before.get(before.size() - 1).sollu();
    int first = after.isEmpty() ? to.sollu() : after.get(0).sollu();
    int found = before.size() + after.size();
    int said = last - from.sollu() + to.sollu() - first;
    if (found < Math.max(LEAST_SOUNDS, LEAST_HEARD * said)
        || left.size() - found > MOST_LEFT
        || first > last) {
      return List.of();
    }
    List<Alignment.Said> both = new ArrayList<>(before);
    both.addAll(after);
    return both;
  }

  private double gap(List<Integer> all, int i) {
    return onsets.get(all.get(i)).seconds() - onsets.get(all.get(i - 1)).seconds();
  }

  /** Sounds that go on from a pair, one way, each a sollu in its time. */
  private List<Alignment.Said> filled(Alignment.Said pair, List<Integer> sounds, int way) {
    List<Alignment.Said> filled = new ArrayList<>();
    int sollu = pair.sollu() + way;
    for (int onset : sounds) {
      double felt = felt(pair, onset);
      while (inScore(sollu) && way * (place(pair, sollu) - felt) < -reach(sollu)) {
        sollu += way;
      }
      if (inScore(sollu) && Math.abs(place(pair, sollu) - felt) <= reach(sollu)) {
        filled.add(new Alignment.Said(sollu, onset));
        sollu += way;
      }
    }
    return filled;
  }

  private boolean inScore(int sollu) {
    return sollu >= 0 && sollu < expected.length;
  }

  /** When a sollu falls by the pulse of a pair, in seconds after the pair. */
  private double place(Alignment.Said pair, int sollu) {
    return (expected[sollu] - expected[pair.sollu()]) * model.stretch()
        - model.lagSeconds()[sollu]
        + model.lagSeconds()[pair.sollu()];
  }

  private double felt(Alignment.Said pair, int onset) {
    return onsets.get(onset).seconds() - onsets.get(pair.onset()).seconds();
  }

  private double reach(int sollu) {
    return NEAR_MATRAS * matraSeconds[sollu] * model.stretch();
  }
}
