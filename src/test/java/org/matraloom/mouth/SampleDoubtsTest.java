package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is held against samples beside others. */
class SampleDoubtsTest {

  private static final int PERIOD = 400;

  private static KitSample sample(double lufs, IntStream marks) {
    SamplePlaces places =
        new SamplePlaces(
            0, 1000, 1000, 2000, 10_000, OptionalInt.empty(), 12_000, marks.boxed().toList());
    return new KitSample(
        "ta", "ta-1.wav", Optional.empty(), Optional.empty(), places, lufs, -6, List.of());
  }

  private static IntStream even() {
    return IntStream.range(0, 28).map(i -> 1000 + PERIOD * i);
  }

  private static List<String> doubts(KitSample one) {
    List<KitSample> all = List.of(one, sample(-20, even()), sample(-20, even()));
    return new SampleDoubts(all).judged().get(0).doubts();
  }

  @Test
  void aSampleLikeTheOthersIsNotDoubted() {
    assertEquals(List.of(), doubts(sample(-20, even())));
  }

  @Test
  void oneOfAnotherLevelIs() {
    assertEquals(List.of("it is much softer than the others"), doubts(sample(-30, even())));
    assertEquals(List.of("it is much louder than the others"), doubts(sample(-10, even())));
  }

  @Test
  void oneWhoseMarksLeavePeriodsOutIs() {
    // Every fifth mark is missing: periods of 400 and 800, whose spread is a third of their mean.
    IntStream gaps = even().filter(mark -> (mark - 1000) / PERIOD % 5 != 4);
    assertEquals(List.of("the periods of its voice are uneven"), doubts(sample(-20, gaps)));
    IntStream natural = IntStream.range(0, 28).map(i -> 1000 + PERIOD * i + 12 * (i % 2));
    assertEquals(List.of(), doubts(sample(-20, natural)), "three percent are a voice's own");
  }
}
