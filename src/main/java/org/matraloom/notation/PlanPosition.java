package org.matraloom.notation;

import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Length;
import org.matraloom.score.Step;
import org.matraloom.score.StepVisitor;
import org.matraloom.time.Ratio;

/** Follows a plan while it is read: where the tala is after each line. */
final class PlanPosition implements StepVisitor<Ratio> {

  private final Map<String, Length> lengths;
  private Avartana avartana;
  private Ratio now;

  /** The lengths may grow while the plan is read. */
  PlanPosition(Avartana avartana, Ratio start, Map<String, Length> lengths) {
    this.avartana = avartana;
    this.now = start;
    this.lengths = lengths;
  }

  /** The tala that goes on here. */
  Avartana avartana() {
    return avartana;
  }

  /** Where it is, in beats after samam. */
  Ratio place() {
    return avartana.placeOf(now);
  }

  void pass(Step step) {
    Ratio beats = step.told(this);
    now = avartana.placeOf(now.plus(beats));
  }

  @Override
  public Ratio say(Step.Say say) {
    return lengths.containsKey(say.phrase())
        ? lengths.get(say.phrase()).beats(say.nadai(), say.kalam()).times(say.times())
        : Ratio.ZERO;
  }

  @Override
  public Ratio restBeats(Step.RestBeats rest) {
    return rest.beats();
  }

  @Override
  public Ratio restMatras(Step.RestMatras rest) {
    return Ratio.of(rest.matras(), rest.nadai());
  }

  @Override
  public Ratio until(Step.Until until) {
    return avartana.placeOf(until.place().minus(now));
  }

  @Override
  public Ratio part(Step.Part part) {
    return Ratio.ZERO;
  }

  @Override
  public Ratio tell(Step.Tell tell) {
    return Ratio.ZERO;
  }

  @Override
  public Ratio stands(Step.Stands stands) {
    return Ratio.ZERO;
  }

  @Override
  public Ratio with(Step.With with) {
    return Ratio.ZERO;
  }

  @Override
  public Ratio toTala(Step.ToTala turn) {
    avartana = avartana.in(turn.tala());
    now = Ratio.ZERO;
    return Ratio.ZERO;
  }
}
