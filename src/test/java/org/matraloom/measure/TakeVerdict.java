package org.matraloom.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.follow.SaidSollu;
import org.matraloom.madetake.SolluTruth;
import org.matraloom.madetake.TakeCase;
import org.matraloom.madetake.TakePlan;

/**
 * What was measured in a made take, held against what is known about it.
 *
 * @param made the take
 * @param said how many sollus of the score were said, one said again counted again
 * @param matched how many of them were found at their place and time
 * @param wrong how many were found that were not said there
 * @param onsetErrors heard less true, of the matched, in seconds
 * @param feltErrors the same of the felt beat
 * @param tempoPercent measured tempo against the true one
 * @param driftPercent measured drift less the true one
 * @param scatterPercent how much of a drift the scatter of the sollus may feign, by its standard
 *     error
 * @param landingSeconds measured landing error less the true one
 * @param habitsRight whether just the habits that are in the take were named
 * @param habits those that were named
 * @param breaths how breaths were found
 * @param doubt why it was not judged, if it was not
 */
record TakeVerdict(
    TakeCase made,
    int said,
    int matched,
    int wrong,
    List<Double> onsetErrors,
    List<Double> feltErrors,
    Optional<Double> tempoPercent,
    Optional<Double> driftPercent,
    double scatterPercent,
    Optional<Double> landingSeconds,
    boolean habitsRight,
    List<HabitFound> habits,
    BreathVerdict breaths,
    Optional<Doubt> doubt) {

  /** A sollu is matched if it is heard between its onset and its vowel, give or take so much. */
  private static final double WINDOW_SECONDS = 0.050;

  /** Holds findings against the truth. */
  static TakeVerdict of(TakeCase made, TakePlan truth, TakeFindings found) {
    List<SolluTruth> asked =
        truth.sollus().stream().filter(sollu -> sollu.place() != SolluTruth.NO_PLACE).toList();
    Set<SaidSollu> used = new HashSet<>();
    List<Double> onsetErrors = new ArrayList<>();
    List<Double> feltErrors = new ArrayList<>();
    for (SolluTruth sollu : asked) {
      found.sollus().stream()
          .filter(said -> said.place() == sollu.place() && isThere(said, sollu))
          .findFirst()
          .ifPresent(
              said -> {
                used.add(said);
                onsetErrors.add(said.onsetSeconds() - sollu.onsetSeconds());
                feltErrors.add(said.feltSeconds() - sollu.feltSeconds());
              });
    }
    Optional<Pulse> pulse = found.pulse();
    SolluTruth last = asked.get(asked.size() - 1);
    return new TakeVerdict(
        made,
        asked.size(),
        onsetErrors.size(),
        found.sollus().size() - used.size(),
        onsetErrors,
        feltErrors,
        pulse.map(line -> 100 * (line.beatsPerMinute() / truth.pulse().beatsPerMinute() - 1)),
        pulse.map(line -> line.driftPercent() - truth.pulse().driftPercent()),
        truth.driftScatterPercent(made.flaws().jitterSeconds),
        found
            .landing()
            .filter(landing -> landing.place() == last.place())
            .map(landing -> landing.errorSeconds() - truth.landingSeconds()),
        isRight(made, found.habits()),
        found.habits(),
        BreathVerdict.of(truth, found.breathing()),
        found.doubt());
  }

  private static boolean isThere(SaidSollu said, SolluTruth sollu) {
    return said.onsetSeconds() >= sollu.onsetSeconds() - WINDOW_SECONDS
        && said.onsetSeconds() <= sollu.feltSeconds() + WINDOW_SECONDS;
  }

  private static boolean isRight(TakeCase made, List<HabitFound> habits) {
    if (made.flaws().khanda.isEmpty()) {
      return habits.isEmpty();
    }
    Habit habit =
        switch (made.flaws().khanda.get()) {
          case OLD_SPEED_THROUGHOUT, OLD_SPEED_IN_EACH_BEAT -> Habit.OLD_SPEED_KEPT;
          case LIMPING -> Habit.LIMPING;
          case RUSHED -> Habit.RUSHED_THEN_WAITING;
        };
    return !habits.isEmpty()
        && habits.stream()
            .allMatch(
                found -> found.habit() == habit && made.khandaRounds().contains(found.round()));
  }
}
