package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Moves a finished pairing, or a part of it, some sollus on or back, and tells where its sounds are
 * more alike then: from there the search goes on (hill climbing). Sound alone is looked at, since
 * time tells little before what is missing and left over at the ends is found anew.
 */
final class LikerSounds {

  /** So many sollus the whole is moved at most. */
  private static final int FARTHEST = 16;

  /** A part is moved by a matra or two that were left out or put in. */
  private static final int PART_FARTHEST = 2;

  /** From so many places on. */
  private static final int PARTS = 12;

  /** Right after the beginning too: what seemed to be the first sollus may stand alone. */
  private static final int FIRST = 3;

  /** What is a little less alike may still be likelier: its ends are not yet filled. */
  private static final double LESS_ALIKE = 8;

  /** So many are worth a closer look. */
  private static final int MOST = 3;

  private LikerSounds() {}

  private record Moved(List<Alignment.Said> said, double evidence) {}

  /**
   * The moved pairings whose sounds are most alike, if they are hardly less alike than now.
   *
   * @param said the pairs, in order of time
   * @param sollus how many the score asks for
   * @param training tells how alike sounds are
   */
  static List<List<Alignment.Said>> of(
      List<Alignment.Said> said, int sollus, PairingTraining training) {
    double least = training.alike(said) - LESS_ALIKE;
    return all(said, sollus).stream()
        .filter(moved -> moved.size() > 1)
        .map(moved -> new Moved(moved, training.alike(moved)))
        .filter(moved -> moved.evidence > Math.max(0, least))
        .sorted(Comparator.comparingDouble(Moved::evidence).reversed())
        .limit(MOST)
        .map(Moved::said)
        .toList();
  }

  /**
   * Whether sounds are more alike than now, beyond doubt, if a part of a pairing is moved.
   *
   * @param said the pairs, in order of time
   * @param sollus how many the score asks for
   * @param training tells how alike sounds are
   */
  static boolean are(List<Alignment.Said> said, int sollus, PairingTraining training) {
    double now = training.alike(said) + LESS_ALIKE;
    return all(said, sollus).stream()
        .anyMatch(moved -> moved.size() > 1 && training.alike(moved) > now);
  }

  private static Set<List<Alignment.Said>> all(List<Alignment.Said> said, int sollus) {
    Set<List<Alignment.Said>> all = new LinkedHashSet<>();
    for (int by = -FARTHEST; by <= FARTHEST; by++) {
      all.add(moved(said, 0, said.size(), by, sollus));
    }
    Set<Integer> from = new LinkedHashSet<>();
    IntStream.rangeClosed(1, FIRST).forEach(from::add);
    IntStream.range(1, PARTS).map(part -> part * said.size() / PARTS).forEach(from::add);
    for (int at : from) {
      for (int by = -PART_FARTHEST; by <= PART_FARTHEST; by++) {
        all.add(moved(said, at, said.size(), by, sollus));
        all.add(moved(said, 0, Math.min(at, said.size()), by, sollus));
      }
    }
    all.remove(said);
    return all;
  }

  /** Some pairs put to other sollus; those that would stand where others are fall out. */
  private static List<Alignment.Said> moved(
      List<Alignment.Said> said, int from, int to, int by, int sollus) {
    List<Alignment.Said> moved = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Alignment.Said each = said.get(i);
      int sollu = each.sollu() + (i >= from && i < to ? by : 0);
      boolean goesOn =
          i == 0
              || moved.isEmpty()
              || said.get(i).sollu() <= said.get(i - 1).sollu()
              || sollu > moved.get(moved.size() - 1).sollu();
      if (sollu >= 0 && sollu < sollus && goesOn) {
        moved.add(new Alignment.Said(sollu, each.onset()));
      }
    }
    return moved;
  }
}
