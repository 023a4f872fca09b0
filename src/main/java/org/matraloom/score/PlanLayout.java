package org.matraloom.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.time.Ratio;

/** Lays a perform plan out in time, one line after the other; says how many beats a line takes. */
final class PlanLayout implements StepVisitor<Ratio> {

  /** A silence before the first round is counted in this. */
  static final int FIRST_NADAI = 4;

  private final Composition composition;
  private final List<Span> spans = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();
  private final Map<String, Length> lengths = new HashMap<>();
  private Ratio now;
  private Avartana avartana;
  private int rounds;
  private int nadai = FIRST_NADAI;

  PlanLayout(Composition composition) {
    this.composition = composition;
    this.now = composition.startBeat();
    this.avartana = composition.avartana();
  }

  static PlanLayout of(Composition composition) {
    PlanLayout layout = new PlanLayout(composition);
    for (Step step : composition.plan()) {
      step.told(layout);
    }
    return layout;
  }

  /** Where the next line begins. */
  Ratio now() {
    return now;
  }

  List<Span> spans() {
    return spans;
  }

  Avartana avartana() {
    return avartana;
  }

  List<Notice> notices() {
    return notices;
  }

  @Override
  public Ratio say(Step.Say say) {
    nadai = say.nadai();
    Length length = lengths.get(say.phrase());
    if (length == null) {
      length = Length.of(composition.phrases().get(say.phrase()), composition.phrases());
      lengths.put(say.phrase(), length);
    }
    Ratio beats = length.beats(nadai, say.kalam());
    for (int time = 0; time < say.times(); time++) {
      rounds++;
      spans.add(
          new Span.Round(rounds, say.phrase(), nadai, say.kalam(), now, beats, length.sollus()));
      now = now.plus(beats);
    }
    return beats.times(say.times());
  }

  @Override
  public Ratio restBeats(Step.RestBeats rest) {
    return pause(rest.beats());
  }

  @Override
  public Ratio restMatras(Step.RestMatras rest) {
    nadai = rest.nadai();
    return pause(Ratio.of(rest.matras(), rest.nadai()));
  }

  @Override
  public Ratio until(Step.Until until) {
    Ratio cycle = Ratio.of(avartana.goingOnAt(now).beats());
    return pause(until.place().minus(avartana.placeOf(now)).modulo(cycle));
  }

  @Override
  public Ratio part(Step.Part part) {
    return notice(part);
  }

  @Override
  public Ratio tell(Step.Tell tell) {
    return notice(tell);
  }

  @Override
  public Ratio stands(Step.Stands stands) {
    return notice(stands);
  }

  /** What the second reciter does is laid out by {@link TwoReciters}. */
  @Override
  public Ratio with(Step.With with) {
    return Ratio.ZERO;
  }

  @Override
  public Ratio toTala(Step.ToTala turn) {
    List<TalaTurn> turns = new ArrayList<>(avartana.turns());
    turns.add(new TalaTurn(now.ceil(), composition.avartana().in(turn.tala())));
    avartana = avartana.turning(turns);
    return notice(turn);
  }

  private Ratio notice(Step.Timeless step) {
    notices.add(new Notice(step, now, spans.size()));
    return Ratio.ZERO;
  }

  private Ratio pause(Ratio beats) {
    spans.add(new Span.Pause(nadai, now, beats));
    now = now.plus(beats);
    return beats;
  }
}
