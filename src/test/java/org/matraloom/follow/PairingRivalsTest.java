package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** A first sollu that was not heard, or a matra left out soon after: by time alone. */
class PairingRivalsTest {

  private static final int SOLLUS = 24;
  private static final double MATRA = 0.2;

  /** So many sounds at the beginning are half a matra early. */
  private static final int EARLY = 3;

  /**
   * What cannot be told of a take without its first sollu, the first of which is heard at a moment:
   * the three after it stand half a matra from where they would be with it or without it.
   */
  private static Optional<EndAmbiguity> unsure(double firstSeconds) {
    double[] expected = IntStream.range(0, SOLLUS).mapToDouble(k -> k * MATRA).toArray();
    double[] matras = IntStream.range(0, SOLLUS).mapToDouble(k -> MATRA).toArray();
    List<Onset> onsets = new ArrayList<>();
    List<Alignment.Said> said = new ArrayList<>();
    for (int k = 1; k < SOLLUS; k++) {
      double later = k <= EARLY ? 0 : MATRA / 2;
      onsets.add(new Onset(firstSeconds + (k - 1) * MATRA + later, 0.9));
      said.add(new Alignment.Said(k, k - 1));
    }
    double[][] ways = {expected};
    int[] kinds = IntStream.range(0, SOLLUS).map(k -> k % 4).toArray();
    PairingWalk walk = new PairingWalk(ways, matras, onsets);
    PairingTraining training =
        new PairingTraining(
            new ScoreFollower(ways, matras, new boolean[SOLLUS], onsets),
            walk,
            new PairingLessons(expected, kinds, onsets, SoundColours.unknown(onsets.size())),
            onsets.size(),
            new boolean[SOLLUS]);
    return PairingRivals.of(
        walk, training, onsets, SOLLUS, said, PairingModel.plain(SOLLUS).with(0.02));
  }

  /** A matra before what is heard first, and 0.1 s for what is cut by the edge. */
  @Test
  void aFirstSolluThatWouldBeInTheRecordingMayBeAMatraLeftOut() {
    int tried = 0;
    for (double first : new double[] {0.31, 0.4, 1, 5}) {
      assertEquals(
          Optional.of(new EndAmbiguity(true, EndAmbiguity.End.FIRST)),
          unsure(first),
          "heard first at " + first);
      tried++;
    }
    assertEquals(4, tried);
  }

  @Test
  void aFirstSolluBeforeTheRecordingBeganIsNoFault() {
    for (double first : new double[] {0.02, 0.1, 0.2, 0.29}) {
      assertEquals(Optional.empty(), unsure(first), "heard first at " + first);
    }
  }
}
