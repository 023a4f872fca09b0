package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * Where a round comes in against the tala.
 *
 * @param round the round
 * @param insideBeat whether it begins between two beats
 * @param insideAvartana whether it begins anywhere but on samam
 * @param changesNadai whether a beat holds another number of matras than just before
 */
public record Entrance(
    Span.Round round, boolean insideBeat, boolean insideAvartana, boolean changesNadai) {

  /**
   * Whether some matra of the round can fall together with a clap.
   *
   * @return true if the beats lie on its matras
   */
  public boolean meetsClaps() {
    return round.startBeat().times(round.matrasPerBeat()).isWhole();
  }

  /**
   * The entrances of all rounds.
   *
   * @param performance what is performed
   * @return one for each round, in order
   */
  public static List<Entrance> of(Performance performance) {
    Avartana avartana = performance.avartana();
    List<Entrance> entrances = new ArrayList<>();
    int before = 0;
    for (Span.Round round : performance.rounds()) {
      Ratio place = avartana.placeOf(round.startBeat());
      boolean changes = before != 0 && before != round.matrasPerBeat();
      entrances.add(new Entrance(round, !place.isWhole(), place.signum() != 0, changes));
      before = round.matrasPerBeat();
    }
    return List.copyOf(entrances);
  }
}
