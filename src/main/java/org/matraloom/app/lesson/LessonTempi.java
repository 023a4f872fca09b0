package org.matraloom.app.lesson;

import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.kanakku.SpeechRate;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.History;
import org.matraloom.log.TempoRule;
import org.matraloom.practice.TempoLadder;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.staircase.StairSettings;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Where a session begins, and how fast it may become. */
final class LessonTempi {

  private static final double BEGIN = 0.8;

  private LessonTempi() {}

  /** The tempo that the log suggests for the whole; empty if it holds no take of it. */
  static Optional<Integer> leftOff(History history, String title) {
    return CleanTempo.of(history, title).stream()
        .filter(tempi -> tempi.round() == CleanTempo.WHOLE)
        .findFirst()
        .flatMap(tempi -> TempoRule.USUAL.next(tempi.points()))
        .map(advice -> (int) advice.tempo());
  }

  /** The limit of the mouth in matras a second: what was given, else what the lexicon says. */
  static double mouth(Optional<Double> given, Lexicon lexicon) {
    return given.orElse(lexicon.fastestPerSecond().orElse(SpeechRate.VERY_HARD_PER_SECOND));
  }

  /** Between what the staircase of a session moves. */
  static StairSettings settings(
      Composition composition, Optional<Integer> goal, Optional<Integer> begin, double clearRate) {
    int to =
        goal.orElseGet(() -> (int) Math.round(composition.tempo().beatsPerMinute().toDouble()));
    requireTempo("--to", to);
    begin.ifPresent(tempo -> requireTempo("--from", tempo));
    Tempo mouth = UserError.unlessRefused(() -> TempoLadder.fastestAt(composition, clearRate));
    int limit = (int) mouth.beatsPerMinute().floor();
    int slowest = Math.min(TempoRule.SLOWEST, Math.min(to, limit));
    int start = begin.orElse((int) Math.round(BEGIN * Math.min(to, limit)));
    return StairSettings.usual(start, slowest, to, limit);
  }

  private static void requireTempo(String option, int given) {
    if (!Tempo.inRange(Ratio.of(given))) {
      throw new UserError(
          option
              + " takes "
              + Tempo.SLOWEST
              + " to "
              + Tempo.FASTEST
              + " beats a minute, given "
              + given);
    }
  }
}
