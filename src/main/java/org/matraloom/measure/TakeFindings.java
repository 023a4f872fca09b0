package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;

/**
 * All that was measured in a take.
 *
 * @param alignment which sound is which sollu
 * @param sollus the sollus that were heard, in order of time
 * @param pulse the pulse of the take; empty if it has none
 * @param rounds every round of the score
 * @param nadais how each nadai was said, and the changes from one to the next
 * @param landing empty if the last sollu was not heard
 * @param breathing where breaths were taken
 * @param doubt why the take cannot be judged; empty if it can
 */
public record TakeFindings(
    Alignment alignment,
    List<SaidSollu> sollus,
    Optional<Pulse> pulse,
    List<RoundFindings> rounds,
    Nadais nadais,
    Optional<TakeLanding> landing,
    BreathFindings breathing,
    Optional<Doubt> doubt) {

  /** Copies the lists. */
  public TakeFindings {
    sollus = List.copyOf(sollus);
    rounds = List.copyOf(rounds);
  }

  /**
   * How each nadai was said, and the changes from one to the next.
   *
   * @param evenness every place in the beat of every nadai
   * @param changes every change of nadai
   * @param habits what the data bear out
   */
  public record Nadais(
      List<Evenness> evenness, List<SaidNadaiChange> changes, List<HabitFound> habits) {

    /** Nothing was measured. */
    public static final Nadais NONE = new Nadais(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Nadais {
      evenness = List.copyOf(evenness);
      changes = List.copyOf(changes);
      habits = List.copyOf(habits);
    }
  }

  /**
   * Every place in the beat of every nadai.
   *
   * @return in the order of the score
   */
  public List<Evenness> evenness() {
    return nadais.evenness();
  }

  /**
   * Every change of nadai.
   *
   * @return in the order of the score
   */
  public List<SaidNadaiChange> changes() {
    return nadais.changes();
  }

  /**
   * What habits the data bear out.
   *
   * @return none, one or more
   */
  public List<HabitFound> habits() {
    return nadais.habits();
  }

  /**
   * The pulse before the nadai changes; empty if it does not.
   *
   * @return the pulse; empty if the nadai stays
   */
  public Optional<PulseBefore> before() {
    return PulseBefore.of(alignment.expected(), sollus);
  }

  /**
   * Whether the tempo grows all the while, rather than break where the nadai changes.
   *
   * @return false if the nadai stays, or changes too near an end
   */
  public boolean isDrift() {
    return !sollus.isEmpty() && PulseBefore.isDrift(alignment.expected(), sollus);
  }

  /**
   * Whether a tempo that breaks where the nadai changes explains the times better than one that
   * grows all the while.
   *
   * @return false if the nadai stays, or changes too near an end
   */
  public boolean breaksAtChange() {
    return !sollus.isEmpty() && PulseBefore.breaks(alignment.expected(), sollus);
  }

  /**
   * Whether the take lands beyond doubt.
   *
   * @return true if it can be judged, the last sollu is in its place, and nothing is missing or
   *     left over of which it cannot be told where, the pulse it is held against is steady, and it
   *     was said in one go; where the first sollu was not heard though the recording was on, every
   *     sound may be another sollu than it seems, the last one too
   */
  public boolean lands() {
    return landsAsBegun() && !hasRestart();
  }

  /**
   * Whether the take lands beyond doubt from where the reciter began, or last began again.
   *
   * @return what {@link #lands} tells of a take that was said in one go
   */
  public boolean landsAsBegun() {
    return doubt.isEmpty()
        && !alignment.missed().contains(0)
        && knownLanding().filter(TakeLanding::lands).isPresent()
        && !isByDriftingPulse();
  }

  /**
   * Whether the reciter broke off and began again.
   *
   * @return true if some of the score was said twice
   */
  public boolean hasRestart() {
    return !brokenOff().isEmpty();
  }

  /**
   * Where the reciter broke off and began again.
   *
   * @return the last sollu before each new beginning, its place among {@code Alignment.expected()},
   *     in order of time
   */
  public List<Integer> brokenOff() {
    return IntStream.range(1, sollus.size())
        .filter(i -> alignment.isRestart(sollus.get(i - 1), sollus.get(i)))
        .mapToObj(i -> sollus.get(i - 1).place())
        .toList();
  }

  /**
   * The landing, where it is known which sound is the last sollu.
   *
   * @return empty if the last sollu was not heard, or if something is missing or left over of which
   *     it cannot be told where: then every sound may be another sollu than it seems
   */
  public Optional<TakeLanding> knownLanding() {
    return landing.filter(found -> alignment.unsure().isEmpty());
  }

  /**
   * Whether nothing tells the landing but a pulse of which the tempo can be heard to change: that
   * bends to wherever the take ends.
   *
   * @return false if there is no landing
   */
  public boolean isByDriftingPulse() {
    return landing.filter(found -> found.against() == LandingBeat.PULSE).isPresent()
        && pulse
            .filter(found -> Math.abs(found.driftPercent()) > Tolerance.DRIFT_PERCENT)
            .isPresent();
  }

  /**
   * Measures a take of a score that was read with the built-in lexicon.
   *
   * @param timeline what was to be said
   * @param curve what was heard
   * @return the findings
   */
  public static TakeFindings of(Timeline timeline, OnsetCurve curve) {
    BreathPlan plan = BreathPlanner.plan(timeline.performance(), BreathSettings.study());
    return of(timeline, curve, Lexicon.standard(), Optional.empty(), plan, KnownSounds.NONE);
  }

  /**
   * Measures a take of a mouth that may be known.
   *
   * @param timeline what was to be said
   * @param curve what was heard
   * @param lexicon what the score was read with
   * @param guide where the guide was heard, if the recording tells
   * @param plan where to breathe
   * @param mouth what is known beforehand of who speaks
   * @return the findings
   */
  public static TakeFindings of(
      Timeline timeline,
      OnsetCurve curve,
      Lexicon lexicon,
      Optional<GuideStart> guide,
      BreathPlan plan,
      KnownSounds mouth) {
    return TakeMeasure.of(timeline, curve, lexicon, guide, plan, mouth);
  }
}
