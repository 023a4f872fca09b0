package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/** The talas of a performance one after another. */
public final class TalaSections {

  private static final Ratio BEFORE_ALL = Ratio.of(Long.MIN_VALUE / 2);

  private TalaSections() {}

  /**
   * The talas with their first samams.
   *
   * @param avartana the cycle of a performance
   * @return in order; one for a cycle that goes on to the end
   */
  public static List<TalaTurn> of(Avartana avartana) {
    TalaTurn first = avartana.turnAt(BEFORE_ALL);
    List<TalaTurn> sections = new ArrayList<>(List.of(first));
    for (TalaTurn turn : avartana.turns()) {
      if (!turn.equals(first)) {
        sections.add(turn);
      }
    }
    return List.copyOf(sections);
  }

  /**
   * Which avartana a place lies in.
   *
   * @param avartana the cycle of a performance
   * @param beat a position in beats
   * @return 0 for the one that begins with the first samam, less before it
   */
  public static long numberAt(Avartana avartana, Ratio beat) {
    List<TalaTurn> sections = of(avartana);
    long number = 0;
    for (int index = 0; index < sections.size(); index++) {
      boolean last = index + 1 == sections.size();
      boolean here = last || beat.compareTo(Ratio.of(sections.get(index + 1).beat())) < 0;
      long end = here ? avartana.samamBefore(beat) : sections.get(index + 1).beat();
      TalaTurn section = sections.get(index);
      number += Math.floorDiv(end - section.beat(), (long) section.avartana().beats());
      if (here) {
        break;
      }
    }
    return number;
  }
}
