package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.SoundLevels;

/** What is known beforehand of a mouth, and what it says of a pairing. */
class KnownSoundsTest {

  private static final int NUMBERS = 6;
  private static final double[][] CENTRES = {
    {2, 0, 0, 1, 0, 0}, {0, 2, 0, 0, 1, 0}, {0, 0, 2, 0, 0, 1}
  };

  private final Random random = new Random(11);

  @Test
  void theMeanOfWhatWasHeardIsKnownAboutTheMeanOfItsBands() {
    KnownSounds mouth =
        KnownSounds.of(
            List.of(
                new KnownSounds.Heard("ta", new double[] {1, 2, 3, 4, 5, 6, 7, 8}, 0.010),
                new KnownSounds.Heard("ta", new double[] {3, 4, 5, 6, 7, 8, 9, 10}, 0.020)));
    assertEquals(2, SoundLevels.COLOUR_PARTS, "a burst and a vowel");
    // By hand: means 2 3 4 5 | 6 7 8 9; of a take with three bands the lower three, about theirs.
    assertArrayEquals(new double[] {-1, 0, 1, -1, 0, 1}, mouth.colour("ta", NUMBERS), 1e-12);
    assertEquals(0, mouth.colour("ka", NUMBERS).length, "ka was not recorded");
    assertEquals(0, mouth.colour("ta", 10).length, "in fewer bands than the take has");
    assertEquals(0.015, mouth.lagSeconds("ta", 0.5), 1e-12);
    assertEquals(0.5, mouth.lagSeconds("ka", 0.5), 1e-12);
    assertTrue(KnownSounds.NONE.isUnknown());
  }

  /** Sounds of three sollus in turn, said by another microphone than that of the recording. */
  private double[][] said(int sounds, int first) {
    double[][] colours = new double[sounds][NUMBERS];
    for (int i = 0; i < sounds; i++) {
      for (int d = 0; d < NUMBERS; d++) {
        colours[i][d] = CENTRES[(i + first) % 3][d] + 5 * d + 0.8 * random.nextGaussian();
      }
    }
    return colours;
  }

  private static List<Alignment.Said> inOrder(int sounds) {
    return IntStream.range(0, sounds).mapToObj(i -> new Alignment.Said(i, i)).toList();
  }

  @Test
  void wordsThatRepeatAreToldFromThemselvesShiftedOnlyByWhatIsKnown() {
    int[] kinds = IntStream.range(0, 24).map(place -> place % 3).toArray();
    double[][] heard = said(24, 0);
    double[][] shifted = said(24, 1);
    double plainGap =
        SoundEvidence.of(new SoundColours(heard), kinds, inOrder(24))
            - SoundEvidence.of(new SoundColours(shifted), kinds, inOrder(24));
    assertEquals(0, plainGap, 4, "alike among themselves in either case");
    double known = SoundEvidence.of(new SoundColours(heard, CENTRES, kinds), kinds, inOrder(24));
    double wrong = SoundEvidence.of(new SoundColours(shifted, CENTRES, kinds), kinds, inOrder(24));
    assertTrue(known > wrong + 3, known + " beside " + wrong);
  }

  @Test
  void aSolluThatWasHeardOnceIsKnownAllTheSame() {
    int[] kinds = {0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 2};
    double[][] heard = new double[11][];
    for (int i = 0; i < 11; i++) {
      heard[i] = said(1, kinds[i])[0];
    }
    SolluModels without = SolluModels.of(new SoundColours(heard), kinds, inOrder(11));
    SolluModels with = SolluModels.of(new SoundColours(heard, CENTRES, kinds), kinds, inOrder(11));
    assertTrue(!without.isKnown(10) && with.isKnown(10));
    assertTrue(with.gain(10, 10) > 0, "its own sound speaks for it");
    assertTrue(with.gain(10, 0) < 0, "another does not");
  }

  @Test
  void whatIsKnownOfOtherKindsSaysNothing() {
    int[] kinds = IntStream.range(0, 24).map(place -> place % 3).toArray();
    int[] turned = IntStream.range(0, 24).map(place -> place % 2).toArray();
    double[][] heard = said(24, 0);
    assertEquals(
        SoundEvidence.of(new SoundColours(heard), turned, inOrder(24)),
        SoundEvidence.of(new SoundColours(heard, CENTRES, kinds), turned, inOrder(24)));
  }
}
