package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;

/** What all sounds of a take say for a pairing, on colours drawn by lot. */
class SoundEvidenceTest {

  private static final int NUMBERS = 18;

  /** Words of eight matras: takadimi takajunu, takitatadikitom ta, and one with a sollu thrice. */
  private static final List<int[]> WORDS =
      List.of(
          new int[] {0, 1, 2, 3, 0, 1, 4, 5},
          new int[] {0, 1, 0, 0, 2, 1, 3, 0},
          new int[] {0, 1, 2, 0, 1, 2, 0, 3});

  private static int[] repeated(int[] word, int times) {
    return IntStream.range(0, word.length * times).map(k -> word[k % word.length]).toArray();
  }

  /** Each sollu has a colour of its own, and every sound is off it by a share of that. */
  private static SoundColours said(int[] kinds, double blur, SplittableRandom random) {
    double[][] own = new double[Arrays.stream(kinds).max().orElseThrow() + 1][NUMBERS];
    for (double[] colour : own) {
      Arrays.setAll(colour, d -> random.nextGaussian());
    }
    double[][] colours = new double[kinds.length][NUMBERS];
    for (int j = 0; j < kinds.length; j++) {
      double[] middle = own[kinds[j]];
      Arrays.setAll(colours[j], d -> middle[d] + blur * random.nextGaussian());
    }
    return new SoundColours(colours);
  }

  /** Every onset from one on put to the sollu so many places on. */
  private static List<Alignment.Said> pairs(int count, int from, int by) {
    return IntStream.range(0, count)
        .filter(j -> j < from || j + by >= 0 && j + by < count)
        .mapToObj(j -> new Alignment.Said(j < from ? j : j + by, j))
        .toList();
  }

  @Test
  void aShiftOfWordsThatRepeatLowersIt() {
    int tried = 0;
    for (int[] word : WORDS) {
      int[] kinds = repeated(word, 12);
      for (double blur : new double[] {0.2, 0.7, 1.2}) {
        for (int number = 0; number < 10; number++) {
          SoundColours colours = said(kinds, blur, new SplittableRandom(number));
          double right = SoundEvidence.of(colours, kinds, pairs(kinds.length, 0, 0));
          assertTrue(right > 0, "blur " + blur + ": " + right);
          for (int from : new int[] {0, kinds.length / 2}) {
            for (int by : new int[] {-1, 1}) {
              double shifted = SoundEvidence.of(colours, kinds, pairs(kinds.length, from, by));
              assertTrue(shifted < right, "blur " + blur + ": " + shifted + " of " + right);
              tried++;
            }
          }
        }
      }
    }
    assertEquals(360, tried);
  }

  @Test
  void soundsWithoutOrderSayNothing() {
    int tried = 0;
    for (int count : new int[] {27, 40, 96, 400}) {
      for (int most : new int[] {1, 2, 6, 20}) {
        for (int number = 0; number < 10; number++) {
          SplittableRandom random = new SplittableRandom(number);
          int[] kinds = IntStream.range(0, count).map(k -> random.nextInt(most)).toArray();
          SoundColours colours = said(new int[count], 1, random);
          String what = count + " sounds of " + most + " sollus";
          assertEquals(0, SoundEvidence.of(colours, kinds, pairs(count, 0, 0)), what);
          tried++;
        }
      }
    }
    assertEquals(160, tried);
  }

  /** The same sample over and over, as of a machine: one colour for all, whatever was asked. */
  @Test
  void soundsThatAreAllTheSameSayNothing() {
    for (int count : new int[] {40, 96, 400}) {
      for (int most : new int[] {1, 2, 6}) {
        int[] kinds = IntStream.range(0, count).map(k -> k % most).toArray();
        SoundColours colours = said(new int[count], 0, new SplittableRandom(most));
        String what = count + " sounds of " + most + " sollus";
        assertEquals(0, SoundEvidence.of(colours, kinds, pairs(count, 0, 0)), 1e-6, what);
      }
    }
  }

  @Test
  void fewSoundsSayNothing() {
    int[] kinds = repeated(WORDS.get(0), 12);
    SoundColours colours = said(kinds, 0.2, new SplittableRandom(3));
    assertEquals(0, SoundEvidence.of(colours, kinds, List.of()));
    for (int count = 1; count < 8; count++) {
      assertEquals(0, SoundEvidence.of(colours, kinds, pairs(count, 0, 0)), count + " sounds");
    }
    assertTrue(SoundEvidence.of(colours, kinds, pairs(96, 0, 0)) > 0);
  }

  @Test
  void nothingIsSaidWhereNoSoundIsKnown() {
    int[] kinds = repeated(WORDS.get(0), 12);
    assertEquals(0, SoundEvidence.of(SoundColours.unknown(96), kinds, pairs(96, 0, 0)));
    assertEquals(0, SoundEvidence.of(SoundColours.unknown(0), kinds, List.of()));
  }

  /** Which sollu has which number is chance; so is a number that no sollu has. */
  @Test
  void otherNamesForTheSollusChangeNothing() {
    int[] kinds = repeated(WORDS.get(0), 12);
    SoundColours colours = said(kinds, 0.7, new SplittableRandom(5));
    double evidence = SoundEvidence.of(colours, kinds, pairs(96, 0, 0));
    for (int[] names : new int[][] {{5, 4, 3, 2, 1, 0}, {2, 0, 5, 1, 4, 3}, {7, 9, 1, 0, 30, 2}}) {
      int[] named = Arrays.stream(kinds).map(kind -> names[kind]).toArray();
      assertEquals(evidence, SoundEvidence.of(colours, named, pairs(96, 0, 0)), 1e-9);
    }
  }

  /** In other units, and with another zero, the colours say the same. */
  @Test
  void theUnitsOfTheColoursChangeNothing() {
    int[] kinds = repeated(WORDS.get(1), 12);
    SoundColours colours = said(kinds, 0.7, new SplittableRandom(6));
    double evidence = SoundEvidence.of(colours, kinds, pairs(96, 0, 0));
    double[][] other = new double[96][NUMBERS];
    for (int j = 0; j < other.length; j++) {
      double[] own = colours.ofOnset()[j];
      Arrays.setAll(other[j], d -> 100 - (d + 0.5) * own[d]);
    }
    assertEquals(evidence, SoundEvidence.of(new SoundColours(other), kinds, pairs(96, 0, 0)), 1e-6);
  }

  @Test
  void threeSoundsInTurnAreNoSollus() {
    for (int[] word : WORDS.subList(0, 2)) {
      int[] sollus = repeated(word, 12);
      int[] turn = SoundEvidence.inTurn(sollus.length);
      List<Alignment.Said> all = pairs(sollus.length, 0, 0);
      for (int number = 0; number < 10; number++) {
        SoundColours threes = said(turn, 0.7, new SplittableRandom(number));
        assertEquals(turn, SoundEvidence.kinds(threes, sollus, turn, all));
        assertTrue(SoundEvidence.of(threes, turn, all) > 3 * SoundEvidence.of(threes, sollus, all));
        SoundColours words = said(sollus, 0.7, new SplittableRandom(number));
        assertEquals(sollus, SoundEvidence.kinds(words, sollus, turn, all));
      }
    }
  }

  /**
   * Words that repeat, shifted by one, have sounds as much alike; what the letters say tells them.
   */
  @Test
  void theLettersTellWordsThatRepeatFromTheSameShifted() {
    List<ExpectedSollu> asked =
        SaidAs.expected("tala adi\ntempo 72\nSong = (takadimi) x6\nperform\n  Song nadai 4\n");
    int[] kinds = ExpectedSollu.kinds(asked);
    LetterColours letters = new LetterColours();
    double[][] heard =
        asked.stream().map(each -> letters.of(each.sollu().sound())).toArray(double[][]::new);
    SoundColours colours = new SoundColours(heard).withLetters(asked, Lexicon.standard());
    List<Alignment.Said> right = pairs(kinds.length, 0, 0);
    for (int by : new int[] {-1, 1}) {
      List<Alignment.Said> shifted = pairs(kinds.length, 0, by);
      double more =
          SoundEvidence.of(colours, kinds, right) - SoundEvidence.of(colours, kinds, shifted);
      double alike =
          SoundEvidence.ofLikeness(colours, kinds, right)
              - SoundEvidence.ofLikeness(colours, kinds, shifted);
      assertTrue(more - alike > 2.5, "by " + by + ": " + more + ", of which alike " + alike);
    }
    int[] turn = SoundEvidence.inTurn(kinds.length);
    assertEquals(
        SoundEvidence.ofLikeness(colours, turn, right),
        SoundEvidence.of(colours, turn, right),
        "sounds in turn have no letters");
    List<Alignment.Said> few = right.subList(0, 7);
    assertEquals(0, SoundEvidence.of(colours, kinds, few), "few sounds");
  }
}
