package org.matraloom.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Nadai;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/**
 * What is to be other in a piece that is taken over; any of the three, together or alone.
 *
 * @param nadai all rounds in this nadai, matras a beat in the first kalam, 1 to 9
 * @param tala the piece in this tala, in the same kalai; a place that the other cycle is too short
 *     for moves to samam
 * @param samePlace the piece starts where it lands: eduppu to eduppu
 */
public record ConversionWish(Optional<Integer> nadai, Optional<Tala> tala, boolean samePlace) {

  /**
   * Whether nothing is wished.
   *
   * @return true if all stays as it is
   */
  public boolean isEmpty() {
    return nadai.isEmpty() && tala.isEmpty() && !samePlace;
  }

  /** The wish in a musician's words. */
  String words(Composition piece) {
    List<String> words = new ArrayList<>();
    nadai.ifPresent(given -> words.add("all rounds in " + Nadai.inWords(given)));
    tala.ifPresent(
        given -> words.add("in " + given.name() + " (" + LengthWords.beats(cycle(piece)) + ")"));
    if (samePlace) {
      words.add("started where it lands, eduppu to eduppu");
    } else if (!start(piece).equals(piece.startBeat())) {
      words.add("started on samam");
    }
    if (!eduppu(piece).equals(piece.eduppuBeat())) {
      words.add("landing on samam");
    }
    return String.join(", ", words);
  }

  /** The changes, in an order in which each of them leaves a score that can be read. */
  List<Edit> edits(Composition piece) {
    List<Edit> edits = new ArrayList<>();
    if (!eduppu(piece).equals(piece.eduppuBeat())) {
      edits.add(new Edit.Eduppu(eduppu(piece)));
    }
    if (!start(piece).equals(piece.startBeat())) {
      edits.add(new Edit.Start(start(piece)));
    }
    List<Step> plan = plan(piece);
    if (!plan.equals(piece.plan())) {
      edits.add(new Edit.Plan(plan));
    }
    tala.ifPresent(given -> edits.add(new Edit.InTala(given)));
    return List.copyOf(edits);
  }

  private List<Step> plan(Composition piece) {
    List<Step> plan = new ArrayList<>(piece.plan());
    plan.replaceAll(
        step -> step instanceof Step.Until u ? new Step.Until(inside(u.place(), piece)) : step);
    if (tala.isPresent()) {
      plan.removeIf(Step.Stands.class::isInstance);
    }
    return nadai.map(given -> PlanSurgery.inNadai(plan, given)).orElse(plan);
  }

  private Ratio start(Composition piece) {
    return samePlace ? eduppu(piece) : inside(piece.startBeat(), piece);
  }

  private Ratio eduppu(Composition piece) {
    return inside(piece.eduppuBeat(), piece);
  }

  private Ratio inside(Ratio place, Composition piece) {
    Ratio cycle = cycle(piece);
    return place.compareTo(cycle) < 0 && place.compareTo(cycle.negate()) > 0 ? place : Ratio.ZERO;
  }

  private Ratio cycle(Composition piece) {
    return Ratio.of(
        tala.map(given -> (long) given.aksharas() * piece.avartana().kalai())
            .orElse((long) piece.avartana().beats()));
  }
}
