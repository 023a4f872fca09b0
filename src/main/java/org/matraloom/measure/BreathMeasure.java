package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathSettings;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.onset.SoundLevels;
import org.matraloom.time.Ratio;

/**
 * Finds where breaths were taken: {@link BreathFindings}.
 *
 * <p>A breath may have been taken where between two sollus the sound stays at least {@value
 * SoundLevels#QUIET_DB} dB below the usual sollu for as long as the shortest breath that is ever
 * planned. That it was really taken cannot be heard.
 */
final class BreathMeasure {

  private BreathMeasure() {}

  /**
   * The breathing of a take.
   *
   * @param alignment what was heard
   * @param levels how loud it was
   * @param plan where to breathe
   * @return what was found
   */
  static BreathFindings of(Alignment alignment, SoundLevels levels, BreathPlan plan) {
    List<ExpectedSollu> expected = alignment.expected();
    Set<Ratio> recorded =
        IntStream.range(alignment.recorded().from(), alignment.recorded().to())
            .mapToObj(k -> expected.get(k).beat())
            .collect(Collectors.toSet());
    Set<Ratio> planned =
        plan.breaths().stream()
            .map(Breath::afterBeat)
            .filter(recorded::contains)
            .collect(Collectors.toSet());
    double least = BreathSettings.FLOOR_MS / 1000.0;
    double quietDb = levels.quietDb(alignment.saidSeconds());
    List<BreathFindings.Pause> taken = new ArrayList<>();
    List<Alignment.Said> said = alignment.said();
    double longest = 0;
    int longestFrom = 0;
    int first = 0;
    for (int i = 0; i < said.size(); i++) {
      double from = alignment.secondsOf(said.get(i));
      double to = i + 1 < said.size() ? alignment.secondsOf(said.get(i + 1)) : from;
      Optional<SoundLevels.Quiet> quiet =
          to - from < least ? Optional.empty() : levels.longestQuiet(from, to, quietDb);
      boolean breath = quiet.isPresent() && quiet.get().seconds() >= least;
      double end = breath ? quiet.get().fromSeconds() : to;
      if (breath || i + 1 == said.size()) {
        double stretch = end - alignment.secondsOf(said.get(first));
        if (stretch > longest) {
          longest = stretch;
          longestFrom = said.get(first).sollu();
        }
        first = i + 1;
      }
      if (breath) {
        int place = said.get(i).sollu();
        boolean asked = planned.contains(alignment.expected().get(place).beat());
        taken.add(new BreathFindings.Pause(place, end, quiet.get().seconds(), asked));
      }
    }
    int kept = (int) taken.stream().filter(BreathFindings.Pause::planned).count();
    return new BreathFindings(longest, longestFrom, planned.size(), kept, taken);
  }
}
