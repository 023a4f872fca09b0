package org.matraloom.fit;

import java.util.List;
import java.util.TreeSet;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/** The places that may be tried for the start of a plan, or for its landing. */
public sealed interface AskedPlaces {

  /**
   * The places for one plan.
   *
   * @param plan the rounds
   * @param avartana the cycle
   * @return beats after samam, each once; at least one
   */
  List<Ratio> of(RoundPlan plan, Avartana avartana);

  /**
   * One place.
   *
   * @param place beats after samam, negative before it
   * @return that place alone, whatever the plan
   */
  static AskedPlaces at(Ratio place) {
    return new Named(List.of(place));
  }

  /**
   * AskedPlaces that are named.
   *
   * @param places beats after samam, negative before it; at least one, each once
   */
  record Named(List<Ratio> places) implements AskedPlaces {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if it is empty
     */
    public Named {
      places = List.copyOf(places);
      if (places.isEmpty()) {
        throw new IllegalArgumentException("a fit needs a place to try");
      }
    }

    @Override
    public List<Ratio> of(RoundPlan plan, Avartana avartana) {
      return places;
    }
  }

  /** Every place from which the first round can start: every matra of that round. */
  record AnyStart() implements AskedPlaces {
    @Override
    public List<Ratio> of(RoundPlan plan, Avartana avartana) {
      return every(avartana, List.of(plan.rounds().get(0).matrasPerBeat()));
    }
  }

  /**
   * Every place on which a plan can be asked to land: every matra of each of its rounds, and every
   * quarter of a beat, since the song that is landed on is usually in four (common practice).
   */
  record AnyLanding() implements AskedPlaces {
    private static final int SONG = 4;

    @Override
    public List<Ratio> of(RoundPlan plan, Avartana avartana) {
      TreeSet<Integer> divisions = new TreeSet<>(List.of(SONG));
      plan.rounds().forEach(round -> divisions.add(round.matrasPerBeat()));
      return every(avartana, List.copyOf(divisions));
    }
  }

  private static List<Ratio> every(Avartana avartana, List<Integer> divisions) {
    TreeSet<Ratio> places = new TreeSet<>();
    for (int parts : divisions) {
      for (int part = 0; part < avartana.beats() * parts; part++) {
        places.add(Ratio.of(part, parts));
      }
    }
    return List.copyOf(places);
  }
}
