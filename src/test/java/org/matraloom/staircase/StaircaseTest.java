package org.matraloom.staircase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.matraloom.staircase.StairStep.Move;

/** Two clean up, one miss down, smaller after each turn: the rule 1up-2down of Levitt 1971. */
class StaircaseTest {

  private static final PassHeard CLEAN = PassHeard.CLEAN;
  private static final Spot JOIN = new Spot(Spot.Kind.JOIN, "1");
  private static final Spot STREAM = new Spot(Spot.Kind.PHRASE, "Stream");

  private static PassHeard missed() {
    return PassHeard.missed(Optional.empty());
  }

  private static Staircase at(int start, int goal, int mouth) {
    return new Staircase(StairSettings.usual(start, 34, goal, mouth));
  }

  private static StairStep after(Staircase stairs, PassHeard... heard) {
    StairStep step = stairs.first();
    for (PassHeard pass : heard) {
      step = stairs.after(pass);
    }
    return step;
  }

  @Test
  void twoCleanPassesLeadUpAndOneMissLeadsDown() {
    Staircase stairs = at(60, 200, 200);
    assertEquals(60, after(stairs, CLEAN).tempo());
    assertEquals(70, stairs.after(CLEAN).tempo());
    assertEquals(70, stairs.after(CLEAN).tempo());
    StairStep down = stairs.after(missed());
    assertEquals(65, down.tempo(), "the first turn halves the step");
    assertEquals(Move.DOWN, down.move());
    assertEquals(60, stairs.after(missed()).tempo(), "no turn, the same step");
    stairs.after(CLEAN);
    assertEquals(63, stairs.after(CLEAN).tempo(), "the second turn");
    assertEquals(60, stairs.after(missed()).tempo(), "not below the least step");
  }

  @Test
  void aCleanPassBeforeAMissCountsNoMore() {
    Staircase stairs = at(60, 200, 200);
    assertEquals(50, after(stairs, CLEAN, missed()).tempo());
    assertEquals(50, stairs.after(CLEAN).tempo());
  }

  @Test
  void atTheGoalHelpIsTakenAwayAndGivenBack() {
    Staircase stairs = at(60, 60, 200);
    assertEquals(Help.NO_VOICE, after(stairs, CLEAN, CLEAN).help());
    stairs.after(CLEAN);
    assertEquals(Help.NO_TICKS, stairs.after(CLEAN).help());
    StairStep back = stairs.after(missed());
    assertEquals(Help.NO_VOICE, back.help());
    assertEquals(60, back.tempo(), "help first, then tempo");
    stairs.after(missed());
    assertEquals(50, stairs.after(missed()).tempo());
  }

  @Test
  void theGoalTwiceCleanWithoutHelpIsTheEnd() {
    Staircase stairs = at(60, 60, 200);
    StairStep step = stairs.first();
    int passes = 0;
    for (; !step.isDone(); passes++) {
      step = stairs.after(CLEAN);
    }
    assertEquals(10, passes, "two for each of five kinds of help");
    assertTrue(step.reason().contains("the goal"), step.reason());
  }

  @Test
  void theMouthLimitsAndIsNamed() {
    Staircase stairs = at(60, 200, 66);
    StairStep step = after(stairs, CLEAN, CLEAN);
    assertEquals(66, step.tempo());
    assertTrue(step.reason().contains("limit of the mouth"), step.reason());
  }

  @Test
  void aFaultTwiceAtOnePlaceIsLoopedUntilItIsCleanTwice() {
    Staircase stairs = at(60, 200, 200);
    PassHeard atJoin = PassHeard.missed(Optional.of(JOIN));
    StairStep loop = after(stairs, atJoin, atJoin);
    assertEquals(Optional.of(JOIN), loop.looped());
    int tempo = loop.tempo();
    assertEquals(Optional.of(JOIN), stairs.after(CLEAN).looped());
    assertTrue(stairs.after(missed()).tempo() < tempo, "slower in the loop");
    assertEquals(Optional.of(JOIN), stairs.after(CLEAN).looped(), "twice in a row");
    StairStep back = stairs.after(CLEAN);
    assertEquals(Optional.empty(), back.looped());
    assertEquals(Move.UP, back.move());
  }

  @Test
  void faultsAtTwoPlacesOrApartAreNotLooped() {
    PassHeard atJoin = PassHeard.missed(Optional.of(JOIN));
    PassHeard inStream = PassHeard.missed(Optional.of(STREAM));
    assertEquals(Optional.empty(), after(at(60, 99, 99), atJoin, inStream, atJoin).looped());
    assertEquals(Optional.empty(), after(at(60, 99, 99), atJoin, CLEAN, atJoin).looped());
    assertEquals(Optional.empty(), after(at(60, 99, 99), missed(), missed()).looped());
  }

  @Test
  void whateverIsHeardTheTempoStaysInsideAndEachStepHasItsReason() {
    int loops = 0;
    for (long seed = 1; seed <= 500; seed++) {
      Random random = new Random(seed);
      int mouth = 50 + random.nextInt(60);
      Staircase stairs = at(40 + random.nextInt(60), 45 + random.nextInt(80), mouth);
      double share = random.nextDouble();
      StairStep before = stairs.first();
      for (int pass = 0; pass < 60 && !before.isDone(); pass++) {
        boolean isClean = random.nextDouble() < share;
        Optional<Spot> where =
            random.nextBoolean() ? Optional.of(JOIN) : Optional.of(STREAM).filter(x -> !isClean);
        StairStep step = stairs.after(isClean ? CLEAN : PassHeard.missed(where));
        assertTrue(step.tempo() >= 34 && step.tempo() <= mouth, "seed " + seed + ": " + step);
        assertTrue(step.reason().endsWith("."), step.reason());
        assertTrue(isClean || step.tempo() <= before.tempo(), "a miss never leads up");
        assertTrue(!isClean || step.tempo() >= before.tempo(), "clean never leads down");
        loops += step.looped().isPresent() ? 1 : 0;
        before = step;
      }
    }
    assertTrue(loops > 100, "loops were seen: " + loops);
  }

  @Test
  void settingsThatContradictThemselvesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> StairSettings.usual(60, 34, 30, 200));
    assertThrows(IllegalArgumentException.class, () -> StairSettings.usual(60, 34, 90, 20));
    assertFalse(StairSettings.usual(500, 34, 90, 80).start() > 80);
  }
}
