package org.matraloom.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/** A piece that misses, and the repairs found for it so far; a change is kept only if it lands. */
final class RepairBench {

  /** Fractions of a beat in a score divide this: every nadai up to 9 in every kalam does. */
  private static final int FINEST_GRID = 10_080;

  private static final int FINEST_PART = 1_000;
  private static final int MOVED_BARS = 4;

  private final Composition composition;
  private final boolean hasBars;
  private final Landing landing;
  private final List<Repair> repairs = new ArrayList<>();

  RepairBench(Composition composition) {
    this.composition = composition;
    this.hasBars = composition.phrases().values().stream().anyMatch(RepairBench::hasBars);
    this.landing = Landing.of(Performance.of(composition));
  }

  private static boolean hasBars(Sequence sequence) {
    return sequence.elements().stream()
        .anyMatch(
            element ->
                element instanceof Element.Bar
                    || element instanceof Element.Repeat repeat && hasBars(repeat.body())
                    || element instanceof Element.Faster faster && hasBars(faster.body())
                    || element instanceof Element.InnerNadai inner && hasBars(inner.body()));
  }

  Composition composition() {
    return composition;
  }

  Performance performance() {
    return landing.performance();
  }

  Landing landing() {
    return landing;
  }

  Ratio cycle() {
    return Ratio.of(composition.avartana().beats());
  }

  /** How far the end must move on to land: from 0 up to a cycle, in beats. */
  Ratio missing() {
    return landing.missBeats().negate().modulo(cycle());
  }

  /** Whether moving the end by so many beats, either way, makes it land. */
  boolean landsMovedBy(Ratio beats) {
    return missing().minus(beats).dividedBy(cycle()).isWhole();
  }

  Performance after(List<Edit> edits) {
    return Performance.of(Edit.all(composition, edits));
  }

  boolean offer(Repair.Kind kind, List<Edit> edits, String words, int cost) {
    if (!edits.stream().allMatch(this::canBeWritten)) {
      return false;
    }
    Performance changed = after(edits);
    if (!Landing.of(changed).lands()) {
      return false;
    }
    boolean barsHold = !hasBars || FalseClaim.in(changed).isEmpty();
    Feel feel = Feel.of(changed);
    repairs.add(
        new Repair(
            kind,
            edits,
            words + feel.words() + (barsHold ? "" : "; some bars then have to move"),
            cost + feel.cost() + (barsHold ? 0 : MOVED_BARS),
            changed));
    return true;
  }

  /** A place before samam is written in aksharas, other places and lengths in beats. */
  private boolean canBeWritten(Edit edit) {
    if (edit instanceof Edit.Start start) {
      boolean before = start.place().signum() < 0;
      return canBeWritten(
          before ? start.place().dividedBy(composition.avartana().kalai()) : start.place());
    }
    return !(edit instanceof Edit.Plan plan)
        || plan.steps().stream()
            .allMatch(step -> !(step instanceof Step.RestBeats rest) || canBeWritten(rest.beats()));
  }

  private static boolean canBeWritten(Ratio beats) {
    return beats.den() <= FINEST_PART && FINEST_GRID % beats.den() == 0;
  }

  List<Repair> ranked() {
    repairs.sort(Comparator.comparingInt(Repair::cost).thenComparing(Repair::kind));
    return List.copyOf(repairs);
  }

  static int rounded(Ratio beats) {
    return (int) Math.min(Integer.MAX_VALUE / 2, Math.abs(beats.ceil()));
  }
}
