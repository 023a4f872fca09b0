package org.matraloom.kanakku;

import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.score.TalaSections;
import org.matraloom.score.TalaTurn;
import org.matraloom.time.Ratio;

/**
 * Where a performance ends and by how much that misses the eduppu.
 *
 * <p>It lands when start + rounds + silences = eduppu, counted modulo the avartana, in exact
 * fractions.
 *
 * @param performance what was laid out
 * @param missBeats beats from the nearest place where it would land to where it ends: positive if
 *     it ends late, negative if early, 0 if it lands; never more than half an avartana
 */
public record Landing(Performance performance, Ratio missBeats) {

  /**
   * Proves or refutes the landing of a performance.
   *
   * @param performance a performance with at least one round
   * @return its landing
   */
  public static Landing of(Performance performance) {
    Composition composition = performance.composition();
    Avartana avartana = performance.avartana();
    Ratio cycle = Ratio.of(avartana.goingOnAt(performance.endBeat()).beats());
    Ratio place = avartana.placeOf(performance.endBeat());
    Ratio past = place.minus(composition.eduppuBeat()).modulo(cycle);
    boolean nearerToTheNext = past.times(2).compareTo(cycle) > 0;
    return new Landing(performance, nearerToTheNext ? past.minus(cycle) : past);
  }

  /**
   * Whether the last matra ends on the eduppu.
   *
   * @return true if it lands
   */
  public boolean lands() {
    return missBeats.signum() == 0;
  }

  /**
   * The miss counted in matras of the last round.
   *
   * @return matras, signed as {@link #missBeats()}
   */
  public Ratio missMatras() {
    List<Span.Round> rounds = performance.rounds();
    return missBeats.times(rounds.get(rounds.size() - 1).matrasPerBeat());
  }

  /**
   * The matras of all rounds and planned silences, each counted in its own nadai.
   *
   * @return matras
   */
  public Ratio matras() {
    Ratio sum = Ratio.ZERO;
    for (Span span : performance.spans()) {
      sum = sum.plus(span.matras());
    }
    return sum;
  }

  /**
   * The length from the first sollu to the landing.
   *
   * @return beats
   */
  public Ratio beats() {
    return performance.beats();
  }

  /**
   * The length from the first sollu to the landing.
   *
   * @return avartanas
   */
  public Ratio avartanas() {
    Ratio avartanas = Ratio.ZERO;
    List<TalaTurn> talas = TalaSections.of(performance.avartana());
    for (int index = 0; index < talas.size(); index++) {
      boolean last = index + 1 == talas.size();
      Ratio from = index == 0 ? performance.startBeat() : Ratio.of(talas.get(index).beat());
      Ratio to = last ? performance.endBeat() : Ratio.of(talas.get(index + 1).beat());
      avartanas = avartanas.plus(to.minus(from).dividedBy(talas.get(index).avartana().beats()));
    }
    return avartanas;
  }

  /**
   * Whether another start could mend a miss: a plan that waits for a place of the tala ends where
   * it ends, wherever it starts, and one that changes the tala does so on samam.
   *
   * @return true if {@link #startThatLands()} lands
   */
  public boolean startCanMend() {
    return performance.composition().plan().stream()
        .noneMatch(step -> step instanceof Step.Until || step instanceof Step.ToTala);
  }

  /**
   * The start that would make it land as it stands, if {@link #startCanMend()}.
   *
   * @return beats after samam, from 0 up to the length of the avartana
   */
  public Ratio startThatLands() {
    Avartana avartana = performance.avartana();
    return avartana.placeOf(performance.startBeat().minus(missBeats));
  }
}
