package org.matraloom.breath;

import java.util.Optional;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Counts how many breaths a piece has no time for, much quicker than a plan.
 *
 * <p>Taking every breath as early as it can be taken leaves the shortest stretches there are. One
 * of three times the limit lacks two breaths at least; a piece that lacks none is possible.
 */
final class MissingBreaths {

  private MissingBreaths() {}

  static long in(Performance performance, BreathSettings settings) {
    return VoiceReader.read(performance)
        .map(voice -> in(voice, performance.composition().tempo(), settings))
        .orElse(0L);
  }

  static long in(Voice voice, Tempo tempo, BreathSettings settings) {
    StretchLimits limits = new StretchLimits(settings, tempo);
    long missing = 0;
    Ratio from = voice.begin().beat();
    long said = 0;
    for (VoiceStop stop : voice.stops()) {
      Optional<Ratio> start = Candidate.earliestStart(stop, tempo, settings);
      if (start.isPresent()) {
        missing += limits.missingBreaths(start.get().minus(from), stop.solluCount() - said);
        from = stop.next().beat();
        said = stop.solluCount();
      }
    }
    return missing + limits.missingBreaths(voice.endBeat().minus(from), voice.sollus() - said);
  }
}
