package org.matraloom.measure;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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
  private static final double LONGEST_SECONDS = 0.12;
  private static final double OF_INTERVAL = 0.7;

  /** Before another sound the ear already hears it. */
  private static final double BEFORE_NEXT_SECONDS = 0.03;

  private static final int LEAST_ALIKE = 3;

  private final Alignment alignment;
  private final SoundLevels levels;
  private final Map<String, Double> usualDb = new HashMap<>();
  private final double anyDb;

  private UnsaidMeasure(Alignment alignment, SoundLevels levels) {
    this.alignment = alignment;
    this.levels = levels;
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
            usualDb.put(sound, median(all));
          }
        });
    anyDb = median(heard.values().stream().flatMap(List::stream).toList());
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
    UnsaidMeasure measure = new UnsaidMeasure(alignment, levels);
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
    double known = expected.get(before.place()).beat().toDouble();
    double at =
        before.onsetSeconds()
            + line.secondsAt(beat, before.run())
            - line.secondsAt(known, before.run());
    double matra = line.beatSeconds(beat) / expected.get(place).matrasPerBeat();
    double to =
        Math.min(at + Math.min(LONGEST_SECONDS, OF_INTERVAL * matra), next - BEFORE_NEXT_SECONDS);
    return to > at
        && levels.highestDb(at - EARLY_SECONDS, to)
            < usualDb.getOrDefault(sound(place), anyDb) - QUIETER_DB;
  }

  private String sound(int place) {
    return alignment.expected().get(place).sollu().sound();
  }

  private static double median(List<Double> values) {
    return RobustStatistics.median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
