package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
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

  /** Sixteen sollus, none of them like the one before it, said six times. */
  private static final int[] KINDS =
      IntStream.range(0, 96).map(k -> (k % 16) * (k % 16 + 3) / 2 % 7).toArray();

  private static PairingTraining training(int[] said) {
    SplittableRandom random = new SplittableRandom(5);
    double[][] own = new double[7][18];
    for (double[] colour : own) {
      Arrays.setAll(colour, d -> random.nextGaussian());
    }
    double[][] colours = new double[said.length][18];
    for (int j = 0; j < said.length; j++) {
      double[] middle = own[said[j]];
      Arrays.setAll(colours[j], d -> middle[d] + 0.7 * random.nextGaussian());
    }
    double[] expected = IntStream.range(0, KINDS.length).mapToDouble(k -> 0.2 * k).toArray();
    double[] matras = IntStream.range(0, KINDS.length).mapToDouble(k -> 0.2).toArray();
    List<Onset> onsets =
        IntStream.range(0, said.length).mapToObj(j -> new Onset(1 + 0.2 * j, 0.8)).toList();
    double[][] ways = {expected};
    return new PairingTraining(
        new ScoreFollower(ways, matras, new boolean[KINDS.length], onsets),
        new PairingWalk(ways, matras, onsets),
        new PairingLessons(expected, KINDS, onsets, new SoundColours(colours)),
        onsets.size(),
        new boolean[KINDS.length]);
  }

  private static List<Alignment.Said> pairs(int from, int to, int by) {
    return IntStream.range(from, to).mapToObj(j -> new Alignment.Said(j + by, j)).toList();
  }

  @Test
  void aPairingThatIsShiftedAsAWholeIsMovedBack() {
    PairingTraining training = training(KINDS);
    for (int by : new int[] {-11, -5, -1, 2, 7, 12}) {
      int from = Math.max(0, -by);
      int to = KINDS.length - Math.max(0, by);
      List<Alignment.Said> shifted = pairs(from, to, by);
      assertTrue(LikerSounds.are(shifted, KINDS.length, training), "by " + by);
      assertEquals(
          pairs(from, to, 0), LikerSounds.of(shifted, KINDS.length, training).get(0), "by " + by);
    }
    assertFalse(LikerSounds.are(pairs(0, KINDS.length, 0), KINDS.length, training), "the right");
  }

  @Test
  void aPairingThatIsShiftedInPartIsMovedThere() {
    PairingTraining training = training(KINDS);
    List<Alignment.Said> half = new ArrayList<>(pairs(0, 40, 0));
    half.addAll(pairs(40, KINDS.length - 1, 1));
    assertTrue(LikerSounds.are(half, KINDS.length, training));
    List<Alignment.Said> moved = LikerSounds.of(half, KINDS.length, training).get(0);
    long right = moved.stream().filter(each -> each.sollu() == each.onset()).count();
    assertEquals(moved.size(), right);
    assertTrue(right >= half.size() - half.size() / 12, "those between two parts may fall out");
  }

  /** Each of three sounds is heard at another time before its beat. */
  @Test
  void lagsAreLearntOfThreeSoundsInTurn() {
    double[] lags = {0, 0.03, 0.05};
    int[] turn = SoundEvidence.inTurn(KINDS.length);
    double[] expected = IntStream.range(0, KINDS.length).mapToDouble(k -> 0.2 * k).toArray();
    List<Onset> onsets =
        IntStream.range(0, KINDS.length)
            .mapToObj(j -> new Onset(1 + 0.2 * j - lags[turn[j]], 0.8))
            .toList();
    SplittableRandom random = new SplittableRandom(6);
    double[][] own = new double[3][18];
    for (double[] colour : own) {
      Arrays.setAll(colour, d -> random.nextGaussian());
    }
    double[][] colours = new double[KINDS.length][18];
    for (int j = 0; j < colours.length; j++) {
      double[] middle = own[turn[j]];
      Arrays.setAll(colours[j], d -> middle[d] + 0.7 * random.nextGaussian());
    }
    PairingLessons lessons = new PairingLessons(expected, KINDS, onsets, new SoundColours(colours));
    List<Alignment.Said> all = pairs(0, KINDS.length, 0);
    assertTrue(lessons.evidence(all) > 20, "" + lessons.evidence(all));
    double[] learnt = lessons.learn(all, PairingModel.plain(KINDS.length)).lagSeconds();
    for (int k = 3; k < KINDS.length; k++) {
      assertEquals(lags[turn[k]] - lags[0], learnt[k] - learnt[0], 0.01, "place " + k);
    }
  }
}
