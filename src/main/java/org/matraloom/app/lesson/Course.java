package org.matraloom.app.lesson;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.matraloom.staircase.Help;
import org.matraloom.staircase.PassHeard;
import org.matraloom.staircase.Spot;
import org.matraloom.staircase.StairSettings;
import org.matraloom.staircase.StairStep;
import org.matraloom.staircase.Staircase;

/**
 * The order of a session: plain words, each join, each section, then the whole, which the staircase
 * leads. What comes before the whole is left as soon as it was clean once, or after two passes.
 */
final class Course {

  private static final int MOST_PASSES_BEFORE = 2;
  private static final double SLOWER = 0.9;

  private final LessonPieces pieces;
  private final StairSettings settings;
  private final Staircase stairs;
  private final Deque<Optional<Spot>> before = new ArrayDeque<>();

  private int tries;
  private int tempoBefore;
  private StairStep step;

  Course(LessonPieces pieces, StairSettings settings, boolean onlyTheWhole) {
    this.pieces = pieces;
    this.settings = settings;
    this.stairs = new Staircase(settings);
    this.step = stairs.first();
    this.tempoBefore = settings.start();
    if (!onlyTheWhole) {
      planBefore();
    }
  }

  private void planBefore() {
    if (pieces.nadais().size() > 1) {
      before.add(Optional.empty());
    }
    for (int join = 1; join <= pieces.joins(); join++) {
      before.add(Optional.of(new Spot(Spot.Kind.JOIN, Integer.toString(join))));
    }
    pieces.sections().stream()
        .map(name -> Optional.of(new Spot(Spot.Kind.PHRASE, name)))
        .forEach(before::add);
    step = leading("Begin with " + (nadaiWords().isEmpty() ? "the parts" : nadaiWords()) + ".");
  }

  private String nadaiWords() {
    return pieces.nadais().size() > 1 ? "plain words, to warm up" : "";
  }

  StairStep step() {
    return step;
  }

  /** Whether the next pass is of the whole, and no loop out of it. */
  boolean isWhole() {
    return before.isEmpty() && step.looped().isEmpty();
  }

  LessonPass pass() {
    if (!before.isEmpty()) {
      return before
          .peek()
          .map(place -> pieces.loop(place, tempoBefore, Help.ALL))
          .orElseGet(() -> pieces.warmUp(tempoBefore));
    }
    return step.looped()
        .map(place -> pieces.loop(place, step.tempo(), step.help()))
        .orElseGet(() -> pieces.whole(step.tempo(), step.help()));
  }

  StairStep after(PassHeard heard) {
    step = before.isEmpty() ? stairs.after(heard) : afterPart(heard.clean());
    return step;
  }

  /** The tempo at which about seven passes of ten are clean, as far as it can be told. */
  double settledTempo() {
    return stairs.settledTempo();
  }

  private StairStep afterPart(boolean isClean) {
    tries++;
    if (!isClean && tries < MOST_PASSES_BEFORE) {
      tempoBefore = Math.max(settings.slowest(), (int) Math.round(SLOWER * tempoBefore));
      return part(StairStep.Move.DOWN, "Missed: once more, at " + tempoBefore + ".");
    }
    before.remove();
    tries = 0;
    tempoBefore = settings.start();
    String next = before.isEmpty() ? "the whole" : before.peek().map(Spot::words).orElse("");
    String why = isClean ? "Clean" : "Enough of this for now";
    return before.isEmpty()
        ? leading(why + ": now " + next + ".")
        : part(isClean ? StairStep.Move.UP : StairStep.Move.SAME, why + ": now " + next + ".");
  }

  private StairStep leading(String why) {
    return before.isEmpty()
        ? new StairStep(
            stairs.first().tempo(), Help.ALL, Optional.empty(), StairStep.Move.UP, why, false)
        : part(StairStep.Move.SAME, why);
  }

  private StairStep part(StairStep.Move move, String why) {
    return new StairStep(tempoBefore, Help.ALL, before.peek(), move, why, false);
  }
}
