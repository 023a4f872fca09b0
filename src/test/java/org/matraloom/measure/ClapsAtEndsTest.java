package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.clap.HeardBeat;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.EndAmbiguity;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.PulseLine;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/** A sound left over at an end is in doubt only if it is no clap. */
class ClapsAtEndsTest {

  private static final int SOLLUS = 16;
  private static final double MATRA = 0.2;
  private static final PulseLine LINE = new PulseLine(0, 4 * MATRA, 0, 1.0);

  /** Sollus in time from 1 s on, and sounds at other moments. */
  private static Alignment take(EndAmbiguity.End doubt, double... others) {
    List<ExpectedSollu> expected =
        IntStream.range(0, SOLLUS)
            .mapToObj(
                k ->
                    new ExpectedSollu(
                        Ratio.of(k, 4),
                        k * MATRA,
                        new Sollu("ta", "ta"),
                        1,
                        "Rain",
                        4,
                        k % 4 + 1,
                        k == 0))
            .toList();
    List<Double> at = new ArrayList<>();
    IntStream.range(0, SOLLUS).forEach(k -> at.add(1 + k * MATRA));
    for (double other : others) {
      at.add(other);
    }
    Collections.sort(at);
    List<Alignment.Said> said =
        IntStream.range(0, SOLLUS)
            .mapToObj(k -> new Alignment.Said(k, at.indexOf(1 + k * MATRA)))
            .toList();
    return new Alignment(
        expected,
        at.stream().map(seconds -> new Onset(seconds, 0.9)).toList(),
        said,
        Set.of(),
        RecordedRange.whole(SOLLUS),
        Optional.of(new EndAmbiguity(false, doubt)),
        Set.of(),
        List.of());
  }

  /** Whether it is still in doubt if these of the onsets are claps. */
  private static boolean isInDoubt(Alignment take, Integer... claps) {
    return isInDoubt(take, false, claps);
  }

  private static boolean isInDoubt(Alignment take, boolean other, Integer... claps) {
    List<SaidSollu> sollus =
        take.said().stream()
            .map(said -> new SaidSollu(said.sollu(), 1, take.secondsOf(said), 0, 0))
            .toList();
    HeardBeat beat =
        new HeardBeat(List.of(0.2, 1.0, 1.8), 1, 1, List.of(true, true, true), Set.of(claps), 0.01);
    return ClapsAtEnds.decided(
            take, sollus, LINE, Optional.of(new HeardClaps(beat, 0)), all -> other)
        .unsure()
        .isPresent();
  }

  @Test
  void aClapAMatraAfterTheEndIsNoSollu() {
    Alignment take = take(EndAmbiguity.End.LAST, 1 + SOLLUS * MATRA);
    assertEquals(false, isInDoubt(take, SOLLUS));
    assertEquals(true, isInDoubt(take), "a sound that is no clap");
  }

  /** As far after the end as a sound is asked about, a clap answers for it. */
  @Test
  void aClapTwoMatrasAfterTheEndIsNoSollu() {
    Alignment take = take(EndAmbiguity.End.LAST, 1 + (SOLLUS + 1) * MATRA);
    assertEquals(false, isInDoubt(take, SOLLUS));
    assertEquals(true, isInDoubt(take), "a sound that is no clap");
    Alignment before = take(EndAmbiguity.End.FIRST, 1 - 2 * MATRA);
    assertEquals(true, isInDoubt(before, 0), "before the first it is too far");
  }

  @Test
  void aClapBeforeTheBeginningIsNoSollu() {
    Alignment take = take(EndAmbiguity.End.FIRST, 1 - MATRA);
    assertEquals(false, isInDoubt(take, 0));
    assertEquals(true, isInDoubt(take, SOLLUS), "no clap there");
  }

  @Test
  void aClapBesideAnotherSoundDecidesNothing() {
    double end = 1 + SOLLUS * MATRA;
    Alignment take = take(EndAmbiguity.End.LAST, end - 0.02, end + 0.05);
    assertEquals(true, isInDoubt(take, SOLLUS + 1));
    assertEquals(false, isInDoubt(take, SOLLUS, SOLLUS + 1));
  }

  @Test
  void bothEndsMustBeClaps() {
    Alignment take = take(EndAmbiguity.End.EITHER, 1 - MATRA, 1 + SOLLUS * MATRA);
    assertEquals(true, isInDoubt(take, 0));
    assertEquals(false, isInDoubt(take, 0, SOLLUS + 1));
  }

  /** If the last sollu sounds like another, the one with the clap may be the last. */
  @Test
  void aClapAfterAnEndThatSoundsLikeAnotherSolluDecidesNothing() {
    Alignment take = take(EndAmbiguity.End.LAST, 1 + SOLLUS * MATRA);
    assertEquals(true, isInDoubt(take, true, SOLLUS));
    Alignment before = take(EndAmbiguity.End.FIRST, 1 - MATRA);
    assertEquals(false, isInDoubt(before, true, 0), "the first is another matter");
  }
}
