package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.score.Element;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * A bar in the score that stands where no anga, or no avartana, ends.
 *
 * @param bar the bar as written
 * @param atBeat where the first round really is when the bar is passed, in beats
 * @param missBeats beats from the nearest place where the bar would be right: positive if it stands
 *     late, negative if early
 */
public record FalseClaim(Element.Bar bar, Ratio atBeat, Ratio missBeats) {

  /** The most false claims that are listed. */
  public static final int MOST = 20;

  /**
   * Checks the bars of the first round.
   *
   * @param performance what is performed
   * @return the false ones in the order they are passed, at most {@value #MOST}
   */
  public static List<FalseClaim> in(Performance performance) {
    List<FalseClaim> claims = new ArrayList<>();
    Avartana avartana = performance.avartana();
    int first = performance.rounds().get(0).number();
    Iterator<Moment> moments = performance.onlyRounds(first, first).moments();
    while (moments.hasNext() && claims.size() < MOST) {
      if (moments.next() instanceof Moment.BarPassed passed) {
        Ratio miss = missOf(passed.bar(), passed.beat(), avartana);
        if (miss.signum() != 0) {
          claims.add(new FalseClaim(passed.bar(), passed.beat(), miss));
        }
      }
    }
    return List.copyOf(claims);
  }

  private static Ratio missOf(Element.Bar bar, Ratio beat, Avartana avartana) {
    Ratio place = avartana.placeOf(beat);
    Avartana cycle = avartana.goingOnAt(beat);
    List<Integer> ends = new ArrayList<>(bar.endsAvartana() ? List.of(0) : cycle.angaStarts());
    ends.add(cycle.beats());
    Ratio nearest = place;
    for (int end : ends) {
      Ratio miss = place.minus(Ratio.of(end));
      if (size(miss).compareTo(size(nearest)) < 0) {
        nearest = miss;
      }
    }
    return nearest;
  }

  private static Ratio size(Ratio ratio) {
    return ratio.signum() < 0 ? ratio.negate() : ratio;
  }
}
