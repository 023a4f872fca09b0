package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** The tempo of a take is guessed from its spans alone. */
class TempoGuessesTest {

  /** Two rounds of 64 in fours and one in fives at 72 beats a minute. */
  private static final double[] SCORE =
      IntStream.range(0, 192)
          .mapToDouble(k -> k < 128 ? k / 4.0 : 32 + (k - 128) / 5.0)
          .map(beats -> beats * 60 / 72)
          .toArray();

  private static List<Onset> played(double stretch, double jitterSeconds, double missing) {
    SplittableRandom random = new SplittableRandom(7);
    return DoubleStream.of(SCORE)
        .filter(at -> random.nextDouble() >= missing)
        .map(at -> 3 + at * stretch + jitterSeconds * random.nextGaussian())
        .sorted()
        .mapToObj(at -> new Onset(at, 0.9))
        .toList();
  }

  @Test
  void aTakeIsFoundAtItsTempoHoweverSlow() {
    for (double stretch : new double[] {0.75, 0.8, 0.9, 1, 1.1, 1.25, 1.35}) {
      List<Double> guesses =
          TempoGuesses.of(SCORE, played(stretch, 0.012, 0.05), 1 / 1.4, 1 / 0.72, 3);
      assertEquals(stretch, guesses.get(0), 0.02 * stretch, guesses + "");
    }
  }

  @Test
  void theBeginningAndTheOrderDoNotMatter() {
    List<Onset> all = played(1.1, 0.010, 0);
    List<Double> ofAPart =
        TempoGuesses.of(SCORE, all.subList(70, all.size()), 1 / 1.4, 1 / 0.72, 3);
    assertEquals(1.1, ofAPart.get(0), 0.022);
  }

  @Test
  void noMoreGuessesThanAskedForAndEachOnItsOwn() {
    List<Double> guesses = TempoGuesses.of(SCORE, played(1, 0.025, 0.2), 1 / 1.4, 1 / 0.72, 2);
    assertTrue(guesses.size() <= 2, guesses + "");
    assertTrue(guesses.size() < 2 || Math.abs(guesses.get(0) / guesses.get(1) - 1) > 0.04);
  }

  @Test
  void ofNothingNothingIsGuessed() {
    assertEquals(List.of(1.0), TempoGuesses.of(SCORE, List.of(), 1 / 1.4, 1 / 0.72, 3));
    assertEquals(
        List.of(1.0),
        TempoGuesses.of(new double[] {0}, List.of(new Onset(1, 1)), 1 / 1.4, 1 / 0.72, 3));
  }
}
