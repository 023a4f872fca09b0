package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.recording.SoundFiles;
import org.matraloom.score.Lexicon;

/** Takes in which the rounds of five keep the speed of four. */
class OldSpeedTest {

  private static final String HALF = score("(takadimi) x12", "Five nadai 5");

  private static final String TWO_ROUNDS = score("(takadimi takajunu) x12", "Five x2 nadai 5");

  /** What comes after the five is late as a whole. */
  private static final String BETWEEN =
      score("(takadimi takajunu) x8", "Five nadai 5\n  Four nadai 4");

  private static String score(String four, String fives) {
    return "title Puddle Count\ntala adi\ntempo 80\nFour = "
        + four
        + "\nFive = (takatakita) x8\nperform\n  Four nadai 4\n  "
        + fives
        + "\n";
  }

  /** Of the sound nothing is known. */
  private static SoundLevels silence() throws IOException {
    return OnsetCurve.of(SoundFiles.recording(new float[16_000], 16_000)).levels();
  }

  /** A take in which some rounds have so much longer matras; what comes after them comes later. */
  private static Alignment take(String score, Set<Integer> slow, double slower, long number) {
    SplittableRandom random = new SplittableRandom(number);
    List<ExpectedSollu> expected = SaidAs.expected(score);
    List<Onset> onsets = new ArrayList<>();
    double at = 1;
    for (int k = 0; k < expected.size(); k++) {
      onsets.add(new Onset(at + 0.006 * random.nextGaussian(), 0.9));
      if (k + 1 < expected.size()) {
        double step = expected.get(k + 1).seconds() - expected.get(k).seconds();
        at += step * (slow.contains(expected.get(k).round()) ? slower : 1);
      }
    }
    List<Alignment.Said> said =
        IntStream.range(0, expected.size()).mapToObj(k -> new Alignment.Said(k, k)).toList();
    return new Alignment(expected, onsets, said);
  }

  @Test
  void onlyRoundsAtTheOldSpeedAreThose() {
    HabitFound old = new HabitFound(Habit.OLD_SPEED_KEPT, 3, 1, 0.9, 8);
    HabitFound again = new HabitFound(Habit.OLD_SPEED_KEPT, 5, 0.8, 0.7, 6);
    HabitFound limping = new HabitFound(Habit.LIMPING, 4, 1, 0.9, 8);
    assertEquals(Set.of(3, 5), HabitFound.atOldSpeed(List.of(old, limping, again)));
    assertEquals(Set.of(), HabitFound.atOldSpeed(List.of(limping)));
    assertEquals(Set.of(), HabitFound.atOldSpeed(List.of()));
  }

  @Test
  void aTakeHalfOfWhichKeepsTheOldSpeedIsNotDoubted() throws IOException {
    int doubtedWithout = 0;
    int tried = 0;
    for (String score : List.of(HALF, TWO_ROUNDS, BETWEEN)) {
      Set<Integer> fives = score.equals(TWO_ROUNDS) ? Set.of(2, 3) : Set.of(2);
      for (long number = 0; number < 10; number++) {
        String what = "take " + number + " of " + fives;
        Alignment alignment = take(score, fives, 1.25, number);
        List<ExpectedSollu> expected = alignment.expected();
        SaidSollus first = SaidSollus.of(alignment, Lexicon.standard());
        List<HabitFound> habits = HabitMeasure.of(expected, first.sollus(), first.line());
        assertTrue(fives.containsAll(HabitFound.atOldSpeed(habits)), what + habits);
        assertTrue(HabitFound.atOldSpeed(habits).contains(2), what + habits);
        SaidSollus said = first.without(expected, habits);
        Pulse pulse = PulseMeasure.of(expected, said, Optional.empty());
        assertEquals(
            Optional.empty(),
            DoubtMeasure.after(alignment, said, habits, silence(), Optional.empty()),
            what);
        assertEquals(SaidAs.BEAT, said.line().beatSeconds(0), 0.01, what + pulse);
        boolean doubted =
            DoubtMeasure.after(alignment, said, List.of(), silence(), Optional.empty()).isPresent();
        doubtedWithout += doubted ? 1 : 0;
        tried++;
      }
    }
    assertEquals(30, tried);
    assertTrue(doubtedWithout > 0, "none would be doubted anyway");
  }

  /** The four alone tell the pulse: an old speed does not bend it. */
  @Test
  void thePulseIsThatOfTheOtherRounds() {
    for (long number = 0; number < 10; number++) {
      Alignment alignment = take(SaidAs.FOUR_AND_FIVE, Set.of(2), 1.25, number);
      List<ExpectedSollu> expected = alignment.expected();
      SaidSollus first = SaidSollus.of(alignment, Lexicon.standard());
      HabitFound old = new HabitFound(Habit.OLD_SPEED_KEPT, 2, 1, 0.9, 8);
      SaidSollus said = first.without(expected, List.of(old));
      for (int k = 0; k < 32; k++) {
        assertEquals(0, said.sollus().get(k).deviationSeconds(), 0.045, "sollu " + k);
      }
      double last = said.sollus().get(71).deviationSeconds();
      assertEquals(39 * 0.15 * 0.25, last, 0.15, "the last of 39 matras of 0.15 s, 25 % longer");
    }
  }

  @Test
  void withoutHabitsNothingChanges() {
    Alignment alignment = take(SaidAs.FOUR_AND_FIVE, Set.of(), 1, 1);
    SaidSollus first = SaidSollus.of(alignment, Lexicon.standard());
    assertSame(first, first.without(alignment.expected(), List.of()));
  }

  /** Where no other round is left to tell the pulse, it stays as it was found. */
  @Test
  void ifAllIsAtTheOldSpeedThePulseStays() throws IOException {
    Alignment alignment = take(SaidAs.FOUR_AND_FIVE, Set.of(), 1, 2);
    SaidSollus first = SaidSollus.of(alignment, Lexicon.standard());
    List<HabitFound> all =
        List.of(
            new HabitFound(Habit.OLD_SPEED_KEPT, 1, 1, 0.9, 8),
            new HabitFound(Habit.OLD_SPEED_KEPT, 2, 1, 0.9, 8));
    assertSame(first, first.without(alignment.expected(), all));
    assertEquals(
        Optional.empty(), DoubtMeasure.after(alignment, first, all, silence(), Optional.empty()));
  }

  /** Of a round that limps the sollus on the beat still tell the pulse. */
  @Test
  void ofAnotherHabitTheBeatsCount() {
    Alignment alignment = take(SaidAs.FOUR_AND_FIVE, Set.of(), 1, 3);
    SaidSollus first = SaidSollus.of(alignment, Lexicon.standard());
    HabitFound limping = new HabitFound(Habit.LIMPING, 2, 1, 0.9, 8);
    SaidSollus said = first.without(alignment.expected(), List.of(limping));
    assertEquals(0.75, said.line().beatSeconds(12), 0.004);
    assertEquals(0, said.sollus().get(71).deviationSeconds(), 0.030);
  }
}
