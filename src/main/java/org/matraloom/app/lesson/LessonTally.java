package org.matraloom.app.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.staircase.PassHeard;
import org.matraloom.staircase.Spot;
import org.matraloom.staircase.StairStep;

/** Counts what a session came to, for its summary. */
final class LessonTally {

  private final Map<String, Integer> fastestClean = new LinkedHashMap<>();
  private final Map<Spot, Integer> faults = new LinkedHashMap<>();
  private int judged;
  private int clean;
  private double voicedSeconds;

  /** Adds a pass; places of the piece are those of passes of the whole. */
  void add(LessonPass pass, PassHeard heard, boolean isWhole) {
    judged++;
    heard.fault().filter(place -> isWhole).ifPresent(place -> faults.merge(place, 1, Integer::sum));
    if (heard.clean()) {
      clean++;
      fastestClean.merge(pass.what() + ", " + pass.help().words(), pass.tempo(), Math::max);
    }
  }

  void voiced(double seconds) {
    voicedSeconds += seconds;
  }

  double voicedSeconds() {
    return voicedSeconds;
  }

  /** The summary, a sentence a line. */
  List<String> summary(StairStep next, double settledTempo, boolean saidTheWhole) {
    List<String> lines = new ArrayList<>();
    lines.add(
        judged
            + (judged == 1 ? " pass judged, " : " passes judged, ")
            + clean
            + " clean, "
            + Math.round(voicedSeconds / 6) / 10.0
            + " minutes of voice.");
    fastestClean.forEach((what, tempo) -> lines.add("Clean at " + tempo + ": " + what + "."));
    if (judged > 0) {
      lines.add(worst());
    }
    if (saidTheWhole && judged > 0) {
      lines.add("About seven passes of ten are clean at " + Math.round(settledTempo) + ".");
    }
    lines.add(
        "Next time begin with "
            + next.looped().map(Spot::words).orElse("the whole")
            + " at "
            + next.tempo()
            + ".");
    return lines;
  }

  private String worst() {
    Optional<Spot> worst =
        faults.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    return worst
        .map(place -> "Worst place: " + place.words() + ", " + faults.get(place) + " times.")
        .orElse("No place stood out.");
  }
}
