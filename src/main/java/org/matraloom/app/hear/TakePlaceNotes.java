package org.matraloom.app.hear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.log.PlaceNote;
import org.matraloom.log.ScorePlace;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.pulse.RobustStatistics;

/**
 * What the practice log keeps of where a take was off: every change of nadai, and every phrase of
 * every round.
 */
final class TakePlaceNotes {

  /** A phrase of fewer sollus has no usual deviation. */
  private static final int LEAST_SOLLUS = 3;

  /** Fewer sollus in the beat after a change are no sign of a habit of it. */
  private static final int LEAST_AFTER_CHANGE = 2;

  private static final double MS = 1_000;

  private TakePlaceNotes() {}

  /**
   * Into a change: the median deviation of the sollus of the first beat in the new nadai. Its
   * speed: the ratio said by the ratio asked. A phrase: the median deviation of its sollus in a
   * round. All against the pulse of the take; changes first.
   */
  static List<PlaceNote> of(TakeFindings findings) {
    List<PlaceNote> notes = new ArrayList<>();
    Map<ScorePlace, List<Double>> late = new LinkedHashMap<>();
    List<ExpectedSollu> expected = findings.alignment().expected();
    for (SaidNadaiChange change : findings.changes()) {
      String name = change.from() + ">" + change.to();
      ScorePlace into = new ScorePlace(ScorePlace.Kind.INTO, change.round(), name);
      List<Double> first = afterChange(change, expected, findings.sollus());
      if (first.size() >= LEAST_AFTER_CHANGE) {
        notes.add(new PlaceNote(into, rounded(MS * median(first))));
      }
      ScorePlace speed = new ScorePlace(ScorePlace.Kind.SPEED, change.round(), name);
      notes.add(new PlaceNote(speed, rounded(100 * (change.ratio() / change.asked() - 1))));
    }
    for (SaidSollu said : findings.sollus()) {
      ExpectedSollu asked = expected.get(said.place());
      late.computeIfAbsent(phrase(asked), key -> new ArrayList<>()).add(said.deviationSeconds());
    }
    late.forEach(
        (place, seconds) -> {
          if (seconds.size() >= LEAST_SOLLUS) {
            notes.add(new PlaceNote(place, rounded(MS * median(seconds))));
          }
        });
    return notes.subList(0, Math.min(PlaceNote.MOST, notes.size()));
  }

  private static ScorePlace phrase(ExpectedSollu asked) {
    String name = asked.phrase();
    return new ScorePlace(
        ScorePlace.Kind.PHRASE,
        asked.round(),
        name.length() > ScorePlace.LONGEST_NAME
            ? name.substring(0, ScorePlace.LONGEST_NAME)
            : name);
  }

  private static List<Double> afterChange(
      SaidNadaiChange change, List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    double seam = expected.get(change.place()).beat().toDouble();
    return sollus.stream()
        .filter(said -> said.place() >= change.place())
        .filter(said -> expected.get(said.place()).beat().toDouble() < seam + 1 - 1e-9)
        .map(SaidSollu::deviationSeconds)
        .toList();
  }

  private static double median(List<Double> values) {
    return RobustStatistics.median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** To a tenth, and no zero with a sign. */
  private static double rounded(double value) {
    return Math.round(10 * value) / 10.0;
  }
}
