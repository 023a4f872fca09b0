package org.matraloom.measure;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.SoundLevels;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;

/**
 * Tells sollus that were not said from those that were not heard to begin: where a sollu should be,
 * it is quieter by far than where such a sollu is said. The hum of a nasal that runs on from the
 * vowel before has no beginning, but it sounds.
 */
final class UnsaidMeasure {

  private static final double QUIETER_DB = 9;
  private static final double EARLY_SECONDS = 0.02;

  /** Who is uneven may be early by so many spreads, but hardly by more of a matra. */
  private static final double EARLY_SPREADS = 2;

  private static final double MOST_EARLY_MATRAS = 0.35;

  /** Of sollus that are not always as loud it is quieter than the quietest but one in twenty. */
  private static final double QUIETEST_SPREADS = 1.65;

  private static final double LONGEST_SECONDS = 0.12;
  private static final double OF_INTERVAL = 0.7;

  /** Before another sound the ear already hears it. */
  private static final double BEFORE_NEXT_SECONDS = 0.03;

  private static final int LEAST_ALIKE = 3;

  /** The pulse is told by so many sollus to each side. */
  private static final int AROUND = 5;

  private final Alignment alignment;
  private final SoundLevels levels;
  private final Map<String, Double> leastDb = new HashMap<>();
  private final double anyDb;
  private final double spreadSeconds;

  private UnsaidMeasure(Alignment alignment, List<SaidSollu> sollus, SoundLevels levels) {
    this.alignment = alignment;
    this.levels = levels;
    spreadSeconds =
        RobustStatistics.spreadAroundZero(
            sollus.stream().mapToDouble(SaidSollu::deviationSeconds).toArray());
    Map<String, List<Double>> heard =
        alignment.said().stream()
            .collect(
                Collectors.groupingBy(
                    said -> sound(said.sollu()),
                    Collectors.mapping(
                        said -> levels.attackDb(alignment.secondsOf(said)), Collectors.toList())));
    heard.forEach(
        (sound, all) -> {
          if (all.size() >= LEAST_ALIKE) {
            leastDb.put(sound, leastDb(all));
          }
        });
    anyDb = leastDb(heard.values().stream().flatMap(List::stream).toList());
  }

  /**
   * The sollus that were not said.
   *
   * @param alignment what was heard
   * @param sollus the same against the pulse, in order of time; at least one
   * @param line the pulse
   * @param levels the recording
   * @return places in the score
   */
  static Set<Integer> of(
      Alignment alignment, List<SaidSollu> sollus, PulseLine line, SoundLevels levels) {
    UnsaidMeasure measure = new UnsaidMeasure(alignment, sollus, levels);
    Set<Integer> unsaid = new HashSet<>();
    for (int place : alignment.missed()) {
      if (measure.isQuiet(place, sollus, line)) {
        unsaid.add(place);
      }
    }
    return unsaid;
  }

  private boolean isQuiet(int place, List<SaidSollu> sollus, PulseLine line) {
    SaidSollu before = sollus.get(0);
    double next = Double.POSITIVE_INFINITY;
    for (SaidSollu said : sollus) {
      if (said.place() < place) {
        before = said;
      } else if (said.place() > place) {
        next = said.onsetSeconds();
        break;
      }
    }
    List<ExpectedSollu> expected = alignment.expected();
    double beat = expected.get(place).beat().toDouble();
    double at =
        line.secondsAt(beat, before.run()) + usualLate(sollus, sollus.indexOf(before), line);
    double matra = line.beatSeconds(beat) / expected.get(place).matrasPerBeat();
    double to =
        Math.min(at + Math.min(LONGEST_SECONDS, OF_INTERVAL * matra), next - BEFORE_NEXT_SECONDS);
    double early =
        Math.max(EARLY_SECONDS, Math.min(EARLY_SPREADS * spreadSeconds, MOST_EARLY_MATRAS * matra));
    return to > at && levels.highestDb(at - early, to) < leastDb.getOrDefault(sound(place), anyDb);
  }

  /** How much later than the pulse sollus begin to sound around one, in seconds. */
  private double usualLate(List<SaidSollu> sollus, int i, PulseLine line) {
    int run = sollus.get(i).run();
    return RobustStatistics.median(
        sollus.subList(Math.max(0, i - AROUND), Math.min(sollus.size(), i + 1 + AROUND)).stream()
            .filter(said -> said.run() == run)
            .mapToDouble(
                said ->
                    said.onsetSeconds()
                        - line.secondsAt(
                            alignment.expected().get(said.place()).beat().toDouble(), run))
            .toArray());
  }

  private String sound(int place) {
    return alignment.expected().get(place).sollu().sound();
  }

  /** What is quieter than this is not one of these. */
  private static double leastDb(List<Double> heard) {
    double[] all = heard.stream().mapToDouble(Double::doubleValue).toArray();
    double usual = RobustStatistics.median(all);
    double spread =
        RobustStatistics.spreadAroundZero(
            DoubleStream.of(all).map(level -> level - usual).toArray());
    return usual - Math.max(QUIETER_DB, QUIETEST_SPREADS * spread);
  }
}
