package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import org.matraloom.breath.BreathPlan;
import org.matraloom.follow.Aligner;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.GuideBleed;
import org.matraloom.follow.SaidSollu;
import org.matraloom.follow.StrangeEnds;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;

/** Measures a take, step by step: what was said, its pulse, habits, claps, and how it lands. */
final class TakeMeasure {

  private TakeMeasure() {}

  /** What {@link TakeFindings#of} finds. */
  static TakeFindings of(
      Timeline timeline,
      OnsetCurve curve,
      Lexicon lexicon,
      Optional<GuideStart> guide,
      BreathPlan plan,
      KnownSounds mouth) {
    Alignment alignment =
        GuideBleed.leftOut(
                Aligner.of(
                    ExpectedSollu.of(timeline),
                    curve,
                    curve.heard(Alignment.LEAST_CONFIDENCE),
                    lexicon,
                    mouth),
                curve,
                lexicon)
            .withPauses(curve.levels());
    List<ExpectedSollu> expected = alignment.expected();
    List<Span.Round> rounds = timeline.performance().rounds();
    Optional<Doubt> doubt = DoubtMeasure.before(alignment, curve);
    if (doubt.isPresent()) {
      return new TakeFindings(
          alignment,
          List.of(),
          Optional.empty(),
          RoundMeasure.of(rounds, alignment, List.of()),
          TakeFindings.Nadais.NONE,
          Optional.empty(),
          BreathMeasure.of(alignment, curve.levels(), plan),
          doubt);
    }
    SaidSollus first = SaidSollus.of(alignment, lexicon);
    List<HabitFound> habits = HabitMeasure.of(expected, first.sollus(), first.line());
    SaidSollus said = first.without(expected, habits);
    if (habits.stream().noneMatch(found -> found.habit() == Habit.OLD_SPEED_KEPT)) {
      said = said.wandering(expected);
    }
    List<SaidSollu> sollus = said.sollus();
    alignment =
        alignment.recorded(
            StretchMeasure.of(alignment, said, curve.levels(), curve.lengthSeconds()));
    alignment = alignment.unsaid(UnsaidMeasure.of(alignment, sollus, said.line(), curve.levels()));
    Optional<HeardClaps> claps = HeardClaps.of(alignment, sollus, said.line(), curve);
    if (claps.isPresent()) {
      alignment = StrangeEnds.leftOut(alignment, curve.levels(), claps.get()::isClapped);
      said = said.only(alignment);
      sollus = said.sollus();
    }
    alignment =
        ClapsAtEnds.decided(
            alignment, sollus, said.line(), claps, a -> StrangeEnds.isOther(a, curve.levels()));
    return new TakeFindings(
        alignment,
        sollus,
        Optional.of(PulseMeasure.of(expected, said, guide)),
        RoundMeasure.of(rounds, alignment, sollus),
        new TakeFindings.Nadais(
            EvennessMeasure.of(expected, sollus, said.line()),
            NadaiChangeMeasure.of(expected, sollus, said.line()),
            habits),
        LandingMeasure.of(
            alignment,
            sollus,
            said.line(),
            guide,
            claps,
            habits,
            EndDoubt.ofLag(alignment, lexicon)),
        BreathMeasure.of(alignment, curve.levels(), plan),
        DoubtMeasure.after(alignment, said, habits, curve.levels(), claps));
  }
}
