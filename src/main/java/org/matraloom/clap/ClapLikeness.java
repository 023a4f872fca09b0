package org.matraloom.clap;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether claps are sounds of their own, or sollus and strokes that were not taken for such.
 *
 * <p>Each clap looks for the attack most like it, among the other claps and among those of the
 * sollus (the nearest-neighbour rule, T. M. Cover and P. E. Hart, IEEE Trans. Inf. Theory 13 (1967)
 * 21-27). Were the claps sollus, hardly one would find it among the few claps.
 */
final class ClapLikeness {

  /** So many attacks of sollus are compared at most. */
  private static final int MOST_SOLLUS = 300;

  private ClapLikeness() {}

  /**
   * Whether more than half of the claps, beyond what chance gives, are most like another clap.
   *
   * @param claps the attacks taken for claps
   * @param sollus the attacks taken for sollus
   */
  static boolean isOfItsOwn(List<Attack> claps, List<Attack> sollus) {
    int step = 1 + sollus.size() / MOST_SOLLUS;
    List<Attack> some =
        IntStream.range(0, sollus.size()).filter(i -> i % step == 0).mapToObj(sollus::get).toList();
    long own = claps.stream().filter(clap -> nearest(clap, claps) < nearest(clap, some)).count();
    double chance = (double) claps.size() / (claps.size() + some.size());
    return own >= claps.size() * (1 + chance) / 2;
  }

  private static double nearest(Attack attack, List<Attack> others) {
    return others.stream()
        .filter(other -> other != attack)
        .mapToDouble(attack::distance)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
