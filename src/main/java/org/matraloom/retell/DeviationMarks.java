package org.matraloom.retell;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.Tolerance;
import org.matraloom.pulse.PulseLine;

/**
 * The marks of a take, each at its beat.
 *
 * @param said sollus that were heard
 * @param missed sollus that were not heard
 * @param addedBeats where other sounds were heard, in beats of the performance
 * @param againBeats where the take was begun again, in beats of the performance
 * @param words every sollu of the score
 */
record DeviationMarks(
    List<Said> said,
    List<Word> missed,
    List<Double> addedBeats,
    List<Double> againBeats,
    List<Word> words) {

  /** A sollu that was heard. */
  record Said(double beat, double deviationSeconds, double tolerableSeconds, boolean last) {
    boolean isNoticed() {
      return Math.abs(deviationSeconds) > tolerableSeconds;
    }
  }

  /** A sollu of the score. */
  record Word(double beat, String text) {}

  static DeviationMarks of(TakeFindings findings) {
    List<ExpectedSollu> expected = findings.alignment().expected();
    PulseLine line = findings.pulse().orElseThrow().line();
    OptionalInt landing =
        findings.landing().map(found -> OptionalInt.of(found.place())).orElse(OptionalInt.empty());
    List<Said> said = new ArrayList<>();
    for (SaidSollu sollu : findings.sollus()) {
      ExpectedSollu asked = expected.get(sollu.place());
      double beat = asked.beat().toDouble();
      double matra = line.beatSeconds(beat) / asked.matrasPerBeat();
      said.add(
          new Said(
              beat,
              sollu.deviationSeconds(),
              Tolerance.displacementSeconds(matra),
              landing.isPresent() && landing.getAsInt() == sollu.place()));
    }
    List<Word> words =
        expected.stream()
            .map(sollu -> new Word(sollu.beat().toDouble(), sollu.sollu().spelling()))
            .toList();
    return new DeviationMarks(
        said,
        findings.alignment().missed().stream().map(words::get).toList(),
        added(findings, line),
        again(findings),
        words);
  }

  private static List<Double> again(TakeFindings findings) {
    List<Double> beats = new ArrayList<>();
    int run = 1;
    for (SaidSollu said : findings.sollus()) {
      if (said.run() > run) {
        run = said.run();
        beats.add(findings.alignment().expected().get(said.place()).beat().toDouble());
      }
    }
    return beats;
  }

  private static List<Double> added(TakeFindings findings, PulseLine line) {
    List<Double> beats = new ArrayList<>();
    for (int place : findings.alignment().added()) {
      double seconds = findings.alignment().onsets().get(place).seconds();
      findings.sollus().stream()
          .min(Comparator.comparingDouble(said -> Math.abs(said.onsetSeconds() - seconds)))
          .ifPresent(
              near -> {
                double beat = findings.alignment().expected().get(near.place()).beat().toDouble();
                beats.add(beat + (seconds - near.onsetSeconds()) / line.beatSeconds(beat));
              });
    }
    return beats;
  }
}
