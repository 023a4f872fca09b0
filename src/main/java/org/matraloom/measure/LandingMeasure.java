package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;

/** Measures how a take lands: {@link TakeLanding}. */
final class LandingMeasure {

  /** A lead or lag of so much that was kept all along is a habit. */
  private static final double MOST_LEAD_SECONDS = 0.10;

  /** A guide at another tempo was not heard. */
  private static final double SAME_TEMPO = 0.02;

  /** From so many sounds on a sollu's lag is learnt. */
  private static final long ENOUGH_HEARD = 3;

  private final List<ExpectedSollu> expected;
  private final List<SaidSollu> sollus;
  private final PulseLine line;
  private final SaidSollu last;
  private final List<SaidSollu> begun;
  private final Optional<PulseBefore> pulse;

  /** Empty where the pulse wanders: that is not carried on. */
  private final Optional<CarriedPulse> carried;

  private final double lagDoubtSeconds;

  private LandingMeasure(
      Alignment alignment,
      List<SaidSollu> sollus,
      PulseLine line,
      SaidSollu last,
      List<HabitFound> habits,
      double lagDoubtSeconds) {
    this.lagDoubtSeconds = lagDoubtSeconds;
    this.expected = alignment.expected();
    this.sollus = sollus;
    this.line = line;
    this.last = last;
    this.begun = sinceBegun(alignment, sollus, last);
    this.pulse = PulseBefore.of(expected, begun);
    this.carried =
        pulse.isPresent() || !line.wanders()
            ? CarriedPulse.of(expected, begun, habits, lagDoubtSeconds)
            : Optional.empty();
  }

  /**
   * The landing: how far the last sollu of the score is from where the beat puts it that the
   * reciter could hear. That is the guide of a recorded take; or claps in the recording; or else
   * the pulse that the take had when it began, or began again, up to a change of nadai. A matra
   * left out on the way is a matra too early here, a five that is too slow is late.
   *
   * @param alignment what was heard
   * @param sollus what was said, in order of time
   * @param line the pulse of the whole take
   * @param guide where the guide was, if that is known
   * @param claps the claps in the recording, if there are any
   * @param habits what bends the beat of some rounds
   * @param lagDoubtSeconds how far the last sollu's beat may be from where it is felt as a rule
   * @return nothing if the last sollu was not heard
   */
  static Optional<TakeLanding> of(
      Alignment alignment,
      List<SaidSollu> sollus,
      PulseLine line,
      Optional<GuideStart> guide,
      Optional<HeardClaps> claps,
      List<HabitFound> habits,
      double lagDoubtSeconds) {
    int place = alignment.expected().size() - 1;
    return sollus.stream()
        .filter(said -> said.place() == place)
        .reduce((a, b) -> b)
        .map(
            said ->
                new LandingMeasure(alignment, sollus, line, said, habits, lagDoubtSeconds)
                    .landing(guide, claps));
  }

  private TakeLanding landing(Optional<GuideStart> guide, Optional<HeardClaps> claps) {
    double beat = beat(last);
    double beatSeconds = pulse.map(p -> p.beatSeconds(expected)).orElse(line.beatSeconds(beat));
    Optional<GuideStart> heard =
        guide.filter(g -> Math.abs(beatSeconds / g.beatSeconds() - 1) <= SAME_TEMPO);
    if (heard.isPresent()) {
      return against(LandingBeat.GUIDE, heard.get()::secondsAt, beatSeconds);
    }
    if (claps.filter(c -> c.isKnownAt(last.feltSeconds())).isPresent()) {
      return against(LandingBeat.CLAPS, claps.get()::secondsAt, beatSeconds);
    }
    LandingBeat what = pulse.isPresent() ? LandingBeat.PULSE_BEFORE_CHANGE : LandingBeat.PULSE;
    double due =
        carried
            .map(CarriedPulse::dueSeconds)
            .orElseGet(
                () ->
                    pulse
                        .map(p -> p.secondsAt(beat))
                        .orElseGet(() -> line.secondsAt(beat, begun.get(0).run())));
    return landing(last.feltSeconds() - due, beatSeconds, what);
  }

  /** Against a beat that goes on by itself; who began again joined it at any of its beats. */
  private TakeLanding against(LandingBeat what, DoubleUnaryOperator due, double beatSeconds) {
    int first = begun.get(0).run();
    List<SaidSollu> before =
        pulse.map(PulseBefore::before).orElse(begun).stream()
            .filter(said -> said.run() == first)
            .toList();
    double usual =
        RobustStatistics.median(
            before.stream()
                .mapToDouble(s -> s.feltSeconds() - due.applyAsDouble(beat(s)))
                .toArray());
    double joined =
        begun.size() == sollus.size() ? 0 : beatSeconds * Math.rint(usual / beatSeconds);
    double lead = usual - joined;
    double error = last.feltSeconds() - due.applyAsDouble(beat(last)) - joined;
    return landing(Math.abs(lead) <= MOST_LEAD_SECONDS ? error - lead : error, beatSeconds, what);
  }

  private TakeLanding landing(double error, double beatSeconds, LandingBeat against) {
    double matra = beatSeconds / expected.get(last.place()).matrasPerBeat();
    double late = error - carried.map(CarriedPulse::ownSeconds).orElse(0.0);
    double ownDoubt = carried.map(CarriedPulse::ownDoubtSeconds).orElseGet(this::lagDoubtSeconds);
    return new TakeLanding(
        last.place(),
        late,
        late / matra,
        Math.hypot(ownDoubt, beatDoubtSeconds(against)),
        Tolerance.landingSeconds(matra),
        against);
  }

  /** How far the beat may be from where it was found, as a standard error. */
  private double beatDoubtSeconds(LandingBeat against) {
    if (carried.isPresent() && isByPulse(against)) {
      return carried.get().doubtSeconds();
    }
    return switch (against) {
      case GUIDE -> 0;
      case CLAPS -> EndDoubt.LEAST_SECONDS;
      case PULSE_BEFORE_CHANGE ->
          lineDoubtSeconds(pulse.orElseThrow().line(), 1, pulse.orElseThrow().before());
      case PULSE -> lineDoubtSeconds(line, begun.get(0).run(), begun);
    };
  }

  /** How far the last sollu's beat may be from where it is felt, if it was hardly heard before. */
  private double lagDoubtSeconds() {
    String sound = expected.get(last.place()).sollu().sound();
    long heard =
        begun.stream()
            .filter(said -> expected.get(said.place()).sollu().sound().equals(sound))
            .count();
    return heard >= ENOUGH_HEARD ? 0 : lagDoubtSeconds;
  }

  private static boolean isByPulse(LandingBeat against) {
    return against == LandingBeat.PULSE || against == LandingBeat.PULSE_BEFORE_CHANGE;
  }

  private double lineDoubtSeconds(PulseLine carried, int run, List<SaidSollu> all) {
    int first = all.get(0).run();
    List<SaidSollu> own = all.stream().filter(said -> said.run() == first).toList();
    return EndDoubt.ofLine(carried, run, own, this::beat, beat(last));
  }

  private double beat(SaidSollu said) {
    return expected.get(said.place()).beat().toDouble();
  }

  /** What was said since the performer began, or last began again, up to the last sollu. */
  private static List<SaidSollu> sinceBegun(
      Alignment alignment, List<SaidSollu> sollus, SaidSollu last) {
    int end = sollus.indexOf(last);
    int from = 0;
    for (int i = 1; i <= end; i++) {
      if (alignment.isRestart(sollus.get(i - 1), sollus.get(i))) {
        from = i;
      }
    }
    return sollus.subList(from, end + 1);
  }
}
