package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Looks for another way to pair a take that is hardly less likely than the likeliest: where a matra
 * seems to be left out or put in on the way, the same with that at an end, and the other way about.
 */
final class PairingRivals {

  /** A way that is less likely by less, in logarithms, is a rival. */
  private static final double MARGIN = 3;

  /** So near its end a passage may be put to the next sollu. */
  private static final int NEAR_END = 12;

  /** A sollu cut off by the edge of the recording is not heard. */
  private static final double EDGE_SECONDS = 0.1;

  /** What is so sure an onset is a sound of its own. */
  private static final double SURE_CONFIDENCE = 0.35;

  private final PairingWalk walk;
  private final List<Onset> onsets;
  private final int sollus;
  private final List<Alignment.Said> said;
  private final PairingModel model;

  private PairingRivals(
      PairingWalk walk,
      List<Onset> onsets,
      int sollus,
      List<Alignment.Said> said,
      PairingModel model) {
    this.walk = walk;
    this.onsets = onsets;
    this.sollus = sollus;
    this.said = said;
    this.model = model;
  }

  private record Rival(List<Alignment.Said> said, EndAmbiguity unsure) {}

  /**
   * What cannot be told.
   *
   * @param walk says how likely each way is
   * @param training says whether sounds tell the sollus apart
   * @param onsets what was heard
   * @param sollus how many the score asks for
   * @param said the likeliest way
   * @param model what was learnt from it
   * @return empty if no other way comes near
   */
  static Optional<EndAmbiguity> of(
      PairingWalk walk,
      PairingTraining training,
      List<Onset> onsets,
      int sollus,
      List<Alignment.Said> said,
      PairingModel model) {
    if (said.size() < 2) {
      return Optional.empty();
    }
    PairingRivals rivals = new PairingRivals(walk, onsets, sollus, said, model);
    record Weighed(Rival rival, double worth) {}
    ToDoubleFunction<List<Alignment.Said>> worth =
        training.isToldBySound(said)
            ? way -> walk.worth(way, model)
            : way -> walk.worthOfTime(way, model);
    double least = worth.applyAsDouble(said) - MARGIN;
    return rivals.all().stream()
        .filter(rival -> rival.said.size() > 1)
        .map(rival -> new Weighed(rival, worth.applyAsDouble(rival.said)))
        .max(Comparator.comparingDouble(Weighed::worth))
        .filter(best -> best.worth > least)
        .map(best -> best.rival.unsure);
  }

  private List<Rival> all() {
    List<Rival> rivals = new ArrayList<>();
    for (int at : walk.jumps(said, model)) {
      int missing = said.get(at).sollu() - said.get(at - 1).sollu() - 1;
      Optional<Integer> left = between(said.get(at - 1).onset(), said.get(at).onset());
      if (missing > 0) {
        rivals.add(
            new Rival(moved(0, at, missing, left), new EndAmbiguity(true, EndAmbiguity.End.FIRST)));
        rivals.add(
            new Rival(
                moved(at, said.size(), -missing, left),
                new EndAmbiguity(true, EndAmbiguity.End.LAST)));
      } else if (left.isPresent()) {
        rivals.add(
            new Rival(moved(0, at, -1, left), new EndAmbiguity(false, EndAmbiguity.End.FIRST)));
        rivals.add(
            new Rival(
                moved(at, said.size(), 1, left), new EndAmbiguity(false, EndAmbiguity.End.LAST)));
      }
    }
    ends(rivals);
    return rivals;
  }

  /** What is missing or left over at an end, laid to a matra on the way. */
  private void ends(List<Rival> rivals) {
    int first = said.get(0).sollu();
    int unsaid = sollus - 1 - said.get(said.size() - 1).sollu();
    Optional<Integer> before = between(-1, said.get(0).onset());
    Optional<Integer> after = between(said.get(said.size() - 1).onset(), onsets.size());
    int near = Math.min(NEAR_END, said.size() - 1);
    for (int p = 1; p <= near; p++) {
      int q = said.size() - p;
      if (first > 0 && first <= 2 && isInRecording(first - 1)) {
        rivals.add(
            new Rival(
                moved(0, p, -first, Optional.empty()),
                new EndAmbiguity(true, EndAmbiguity.End.FIRST)));
      } else if (before.isPresent()) {
        rivals.add(
            new Rival(moved(0, p, 1, before), new EndAmbiguity(false, EndAmbiguity.End.FIRST)));
      }
      if (unsaid > 0 && unsaid <= 2) {
        rivals.add(
            new Rival(
                moved(q, said.size(), unsaid, Optional.empty()),
                new EndAmbiguity(true, EndAmbiguity.End.LAST)));
      } else if (after.isPresent()) {
        rivals.add(
            new Rival(
                moved(q, said.size(), -1, after), new EndAmbiguity(false, EndAmbiguity.End.LAST)));
      }
    }
  }

  /** Whether a sollu before the first that was heard would be in the recording. */
  private boolean isInRecording(int sollu) {
    double apart = walk.apartSeconds(sollu, said.get(0).sollu()) * model.stretch();
    return onsets.get(said.get(0).onset()).seconds() - apart >= EDGE_SECONDS;
  }

  /** The last sure sound between two onsets that is no sollu of the pairing, but like one. */
  private Optional<Integer> between(int from, int to) {
    return IntStream.range(from + 1, to)
        .filter(j -> onsets.get(j).confidence() >= SURE_CONFIDENCE)
        .filter(j -> model.sollus().isLikeAny(j))
        .boxed()
        .reduce((a, b) -> b);
  }

  /**
   * Some pairs put to other sollus; a sound that was left over gets the sollu that is free then.
   */
  private List<Alignment.Said> moved(int from, int to, int by, Optional<Integer> left) {
    List<Alignment.Said> moved = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Alignment.Said each = said.get(i);
      boolean moves = i >= from && i < to;
      int sollu = each.sollu() + (moves ? by : 0);
      boolean isFree = moved.isEmpty() || moved.get(moved.size() - 1).sollu() < sollu;
      if (sollu >= 0 && sollu < sollus && (isFree || !moves && i != to)) {
        left.filter(onset -> onset < each.onset())
            .filter(onset -> moved.isEmpty() || onset > moved.get(moved.size() - 1).onset())
            .filter(
                onset ->
                    sollu > 0
                        && (moved.isEmpty() || moved.get(moved.size() - 1).sollu() < sollu - 1))
            .ifPresent(onset -> moved.add(new Alignment.Said(sollu - 1, onset)));
        moved.add(new Alignment.Said(sollu, each.onset()));
      }
    }
    return moved;
  }
}
