package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/**
 * A composition that two recite at once, as what each of them says.
 *
 * <p>The lines {@code with} belong to the second reciter. The first of them below another line
 * begins where that line begins, or later if the second reciter is not yet done; those below it
 * follow on. In between the second reciter is silent.
 *
 * @param first what the first reciter says, with all lines that take no time
 * @param second what the second one says, from the same start on
 * @param stretches where the two stand beside each other, in order
 * @param endsThePiece whether the second reciter speaks beside the last line
 */
public record TwoReciters(
    Composition first, Composition second, List<SideBySide> stretches, boolean endsThePiece) {

  /** Copies the list. */
  public TwoReciters {
    stretches = List.copyOf(stretches);
  }

  /**
   * Whether two recite.
   *
   * @param composition a piece
   * @return true if its plan has lines for a second reciter
   */
  public static boolean in(Composition composition) {
    for (Step step : composition.plan()) {
      if (step instanceof Step.With) {
        return true;
      }
    }
    return false;
  }

  /**
   * Takes a piece apart.
   *
   * @param composition a piece for two, in one tala, whose first line of the second reciter stands
   *     below a line of the first
   * @return what each says
   * @throws ArithmeticException if it is too long to count
   */
  public static TwoReciters of(Composition composition) {
    return new Split(composition).result();
  }

  /**
   * A line of the first reciter and what the second one says beside it.
   *
   * @param lineFrom where the line begins, in beats of the performance
   * @param lineTo where it ends, all its rounds included
   * @param silent whether the line is a silence of the first reciter
   * @param from where the second reciter begins
   * @param to where the second reciter ends
   * @param missBeats by how much the two do not end together, positive if the second one ends
   *     later; 0 if the second ends with this line or with a later round, or within a silence
   */
  public record SideBySide(
      Ratio lineFrom, Ratio lineTo, boolean silent, Ratio from, Ratio to, Ratio missBeats) {

    /**
     * How late the second reciter begins, not yet done with what came before.
     *
     * @return beats, 0 if both begin together
     */
    public Ratio lateBeats() {
      return from.minus(lineFrom);
    }

    /**
     * Whether both begin and end together.
     *
     * @return true if nothing is missed
     */
    public boolean isEven() {
      return missBeats.signum() == 0 && lateBeats().signum() == 0;
    }

    SideBySide until(Ratio later) {
      return new SideBySide(lineFrom, lineTo, silent, from, later, missBeats);
    }

    /** The same with its miss, given where the rounds and silences of the first reciter end. */
    SideBySide meeting(List<Ratio> ends) {
      boolean within = silent && to.compareTo(lineTo) < 0;
      Ratio miss = within || ends.contains(to) ? Ratio.ZERO : to.minus(lineTo);
      return new SideBySide(lineFrom, lineTo, silent, from, to, miss);
    }
  }

  /** Goes through the plan once, with a place for each reciter. */
  private static final class Split {
    private final Composition composition;
    private final PlanLayout firstPlace;
    private final PlanLayout secondPlace;
    private final List<Step> firstPlan = new ArrayList<>();
    private final List<Step> secondPlan = new ArrayList<>();
    private final List<SideBySide> open = new ArrayList<>();
    private Step line = new Step.RestBeats(Ratio.ZERO);
    private Ratio lineStart;
    private boolean beside;

    Split(Composition composition) {
      this.composition = composition;
      this.firstPlace = new PlanLayout(composition);
      this.secondPlace = new PlanLayout(composition);
      this.lineStart = composition.startBeat();
    }

    TwoReciters result() {
      composition.plan().forEach(this::take);
      List<Ratio> ends = firstPlace.spans().stream().map(Span::endBeat).toList();
      List<SideBySide> stretches = open.stream().map(each -> each.meeting(ends)).toList();
      Composition second = composition.performing(secondPlan);
      return new TwoReciters(
          composition.performing(firstPlan),
          beside ? second : second.closing(Closing.NONE),
          stretches,
          beside);
    }

    private void take(Step step) {
      if (step instanceof Step.With with) {
        answer(with.step());
        return;
      }
      firstPlan.add(step);
      if (!(step instanceof Step.Timeless)) {
        line = step;
        lineStart = firstPlace.now();
        beside = false;
      }
      step.told(firstPlace);
    }

    private void answer(Step step) {
      Ratio wait = lineStart.minus(secondPlace.now());
      if (!beside && wait.signum() > 0) {
        second(new Step.RestBeats(wait));
      }
      Ratio from = secondPlace.now();
      second(step);
      boolean silent = !(line instanceof Step.Say);
      if (beside) {
        SideBySide last = open.remove(open.size() - 1);
        open.add(last.until(secondPlace.now()));
      } else {
        open.add(
            new SideBySide(
                lineStart, firstPlace.now(), silent, from, secondPlace.now(), Ratio.ZERO));
      }
      beside = true;
    }

    private void second(Step step) {
      secondPlan.add(step);
      step.told(secondPlace);
    }
  }
}
