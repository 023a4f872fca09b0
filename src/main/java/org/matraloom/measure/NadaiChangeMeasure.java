package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;

/** Measures how the speed of the matras changes with the nadai: {@link SaidNadaiChange}. */
final class NadaiChangeMeasure {

  /** The speed is taken over so many beats on either side. */
  private static final int BEATS = 8;

  /** Whether the speed is kept is looked at in stretches of so many beats. */
  private static final int STEADY_BEATS = 2;

  private final List<ExpectedSollu> expected;
  private final List<SaidSollu> sollus;
  private final PulseLine line;

  private NadaiChangeMeasure(List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    this.expected = expected;
    this.sollus = sollus;
    this.line = line;
  }

  /**
   * All changes of nadai on both sides of which enough was heard.
   *
   * <p>The ratio is the length of a matra before the change by that after it, each the median slope
   * of felt time over matras (H. Theil, Proc. K. Ned. Akad. Wet. 53 (1950) 386-392) in the {@value
   * #BEATS} beats next to it. The new speed is steady from the first beat at which the matras of
   * {@value #STEADY_BEATS} beats are as long as the pulse asks, within {@link
   * Tolerance#displacementSeconds}.
   *
   * @param expected the sollus of the score
   * @param sollus what was said, in order of time
   * @param line the pulse
   * @return in order of the score
   */
  static List<SaidNadaiChange> of(
      List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    NadaiChangeMeasure measure = new NadaiChangeMeasure(expected, sollus, line);
    List<SaidNadaiChange> changes = new ArrayList<>();
    for (int k = 1; k < expected.size(); k++) {
      if (expected.get(k).matrasPerBeat() != expected.get(k - 1).matrasPerBeat()) {
        measure.changeAt(k).ifPresent(changes::add);
      }
    }
    return changes;
  }

  private java.util.Optional<SaidNadaiChange> changeAt(int place) {
    int from = expected.get(place - 1).matrasPerBeat();
    int to = expected.get(place).matrasPerBeat();
    double seam = beat(place);
    int first = place - 1;
    while (first > 0 && expected.get(first - 1).matrasPerBeat() == from) {
      first--;
    }
    int last = place;
    while (last + 1 < expected.size() && expected.get(last + 1).matrasPerBeat() == to) {
      last++;
    }
    OptionalDouble before = matraSeconds(first, place - 1, seam - BEATS, seam);
    OptionalDouble after = matraSeconds(place, last, seam, seam + BEATS);
    if (before.isEmpty() || after.isEmpty() || after.getAsDouble() <= 0) {
      return java.util.Optional.empty();
    }
    double ratio = before.getAsDouble() / after.getAsDouble();
    int round = expected.get(place).round();
    return java.util.Optional.of(
        new SaidNadaiChange(place, round, from, to, ratio, steadyAfter(place, last)));
  }

  private OptionalInt steadyAfter(int place, int last) {
    double seam = beat(place);
    int to = expected.get(place).matrasPerBeat();
    for (int k = 0; seam + k + STEADY_BEATS <= beat(last) + 1e-9; k++) {
      double ideal = line.beatSeconds(seam + k) / to;
      OptionalDouble is = matraSeconds(place, last, seam + k, seam + k + STEADY_BEATS);
      if (is.isPresent()
          && Math.abs(is.getAsDouble() - ideal) <= Tolerance.displacementSeconds(ideal)) {
        return OptionalInt.of(k);
      }
    }
    return OptionalInt.empty();
  }

  /** The length of a matra, from sollus between two places and two beats, both included. */
  private OptionalDouble matraSeconds(int first, int last, double fromBeat, double toBeat) {
    List<SaidSollu> near =
        sollus.stream()
            .filter(s -> s.place() >= first && s.place() <= last)
            .filter(s -> beat(s.place()) >= fromBeat - 1e-9 && beat(s.place()) <= toBeat + 1e-9)
            .toList();
    List<Double> slopes = new ArrayList<>();
    for (int i = 0; i < near.size(); i++) {
      for (int j = i + 1; j < near.size(); j++) {
        double beats = beat(near.get(j).place()) - beat(near.get(i).place());
        if (beats > 0 && near.get(i).run() == near.get(j).run()) {
          double took = near.get(j).feltSeconds() - near.get(i).feltSeconds();
          slopes.add(took / beats / expected.get(first).matrasPerBeat());
        }
      }
    }
    return slopes.size() < 3
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            RobustStatistics.median(slopes.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  private double beat(int place) {
    return expected.get(place).beat().toDouble();
  }
}
