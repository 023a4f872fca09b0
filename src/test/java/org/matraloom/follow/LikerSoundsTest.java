package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** Pairings beside the right one are left for it, however far they are off. */
class LikerSoundsTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nSong = (takadimi takajunu) x8\nperform\n  Song nadai 4\n  Song nadai 4\n";

  /**
   * Who begins in the midst of words that repeat is found by their sounds; but for every fourth
   * place, from which the words are the same, or others as regularly.
   */
  @Test
  void aTakeThatBeginsLateIsPairedFromWhereItBegins() {
    for (int from = 33; from < 56; from++) {
      if (from % 4 != 0) {
        HeardTake take = new HeardTake(SCORE, from, 0.03);
        take.say(from, take.expected.size(), 0.3);
        assertTrue(take.share(take.paired()) >= 0.95, "from " + from);
      }
    }
  }

  @Test
  void aPairingGoesOnAtItsEndsAsFarAsSoundsDo() {
    double[] expected = IntStream.range(0, 10).mapToDouble(k -> 0.2 * k).toArray();
    List<Onset> onsets =
        IntStream.range(0, 9).mapToObj(j -> new Onset(1 + 0.2 * j + 0.01 * (j % 2), 0.8)).toList();
    List<Alignment.Said> middle =
        IntStream.range(3, 6).mapToObj(j -> new Alignment.Said(j + 1, j)).toList();
    assertEquals(
        IntStream.range(0, 9).mapToObj(j -> new Alignment.Said(j + 1, j)).toList(),
        new PairingGaps(expected, onsets, PairingModel.plain(10)).extended(middle));
    List<Onset> apart = List.of(new Onset(1, 0.8), new Onset(1.2, 0.8), new Onset(2.1, 0.8));
    List<Alignment.Said> two = List.of(new Alignment.Said(4, 0), new Alignment.Said(5, 1));
    assertEquals(
        two, new PairingGaps(expected, apart, PairingModel.plain(10)).extended(two), "none near");
  }
}
