package org.matraloom.phonetics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;
import org.matraloom.score.SolluSound;

/** What letters say of sounds, on colours of mouths that are drawn by lot about what was learnt. */
class AnyMouthTest {

  private static final TraitTable TABLE = TraitTable.load();
  private static final int ROUNDS = 6;

  private static List<Optional<SolluSound>> sounds(String... spellings) {
    return Arrays.stream(spellings).map(Lexicon.standard()::sound).toList();
  }

  /** Each kind in turn, so many times. */
  private static int[] inTurn(int kinds, int by) {
    return IntStream.range(0, kinds * ROUNDS).map(k -> Math.floorMod(k + by, kinds)).toArray();
  }

  private static int[] onsets(int kinds) {
    return IntStream.range(0, kinds * ROUNDS).toArray();
  }

  /**
   * A mouth that speaks as the letters say, in a room that adds the same to all: every kind is off
   * by a share of how far mouths differ.
   */
  private static double[][] spoken(List<Optional<SolluSound>> sounds, double share, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SpeakingWay way = TABLE.ways().get(0);
    double[] room = new double[TABLE.size()];
    Arrays.setAll(room, d -> random.nextGaussian());
    double[][] own = new double[sounds.size()][];
    for (int kind = 0; kind < own.length; kind++) {
      own[kind] = room.clone();
      for (String trait : PhoneTraits.of(sounds.get(kind).orElseThrow(), true, true)) {
        add(own[kind], TABLE.ofTrait().getOrDefault(trait, new double[room.length]), 1);
      }
      double[] off = new double[room.length];
      Arrays.setAll(off, a -> share * Math.sqrt(way.between()[a]) * random.nextGaussian());
      add(own[kind], solved(way.axes(), off), 1);
    }
    double[][] colours = new double[sounds.size() * ROUNDS][];
    Arrays.setAll(colours, j -> own[j % own.length].clone());
    return colours;
  }

  private static void add(double[] sum, double[] more, double times) {
    for (int d = 0; d < sum.length; d++) {
      sum[d] += times * more[d];
    }
  }

  /** The colour that has such places on the axes: Gauss elimination. */
  private static double[] solved(double[][] axes, double[] places) {
    int size = places.length;
    double[][] left = new double[size][];
    for (int row = 0; row < size; row++) {
      left[row] = Arrays.copyOf(axes[row], size + 1);
      left[row][size] = places[row];
    }
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int row = column; row < size; row++) {
        pivot = Math.abs(left[row][column]) > Math.abs(left[pivot][column]) ? row : pivot;
      }
      double[] top = left[pivot];
      left[pivot] = left[column];
      left[column] = top;
      for (int row = 0; row < size; row++) {
        if (row != column) {
          add(left[row], top.clone(), -left[row][column] / top[column]);
        }
      }
    }
    return IntStream.range(0, size).mapToDouble(d -> left[d][size] / left[d][d]).toArray();
  }

  @Test
  void wordsThatRepeatAreToldFromTheSameShifted() {
    int tried = 0;
    int told = 0;
    for (String words : List.of("ta ka di mi", "ki ta ta ka", "ta ka ju nu", "ta di gi na tom")) {
      List<Optional<SolluSound>> sounds =
          sounds(Arrays.stream(words.split(" ")).distinct().toArray(String[]::new));
      for (long seed = 0; seed < 25; seed++) {
        AnyMouth mouth = AnyMouth.of(sounds, spoken(sounds, 0.8, seed));
        double right = mouth.evidence(inTurn(sounds.size(), 0), onsets(sounds.size()));
        for (int by : new int[] {-1, 1}) {
          double shifted = mouth.evidence(inTurn(sounds.size(), by), onsets(sounds.size()));
          assertTrue(shifted < right, words + " by " + by + ": " + shifted + " of " + right);
          told += right - shifted > 2.5 ? 1 : 0;
          tried++;
        }
      }
    }
    assertEquals(200, tried);
    assertTrue(told > 150, told + " of " + tried);
  }

  /** Strokes, or other words: their colours have nothing to do with the letters. */
  @Test
  void soundsThatAreNotTheLettersSayNextToNothingInAnyOrder() {
    List<Optional<SolluSound>> sounds = sounds("ta", "ka", "di", "mi");
    int tried = 0;
    for (long seed = 0; seed < 50; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double[][] own = new double[sounds.size()][TABLE.size()];
      for (double[] colour : own) {
        Arrays.setAll(colour, d -> 6 * random.nextGaussian());
      }
      double[][] colours = new double[sounds.size() * ROUNDS][];
      Arrays.setAll(colours, j -> own[j % own.length]);
      AnyMouth mouth = AnyMouth.of(sounds, colours);
      for (int by = 0; by < 4; by++) {
        double evidence = mouth.evidence(inTurn(4, by), onsets(4));
        assertTrue(evidence >= 0 && evidence < 0.5, "seed " + seed + ": " + evidence);
        tried++;
      }
    }
    assertEquals(200, tried);
  }

  /** Another microphone adds the same to all colours. */
  @Test
  void whatIsAddedToAllChangesNothing() {
    List<Optional<SolluSound>> sounds = sounds("ta", "ka", "di", "mi");
    double[][] colours = spoken(sounds, 0.5, 3);
    double evidence = AnyMouth.of(sounds, colours).evidence(inTurn(4, 0), onsets(4));
    double[][] other = Arrays.stream(colours).map(double[]::clone).toArray(double[][]::new);
    for (double[] colour : other) {
      Arrays.setAll(colour, d -> colour[d] + 3 - d);
    }
    assertTrue(evidence > 1, "" + evidence);
    assertEquals(evidence, AnyMouth.of(sounds, other).evidence(inTurn(4, 0), onsets(4)), 1e-6);
  }

  @Test
  void whatIsNotKnownSaysNothing() {
    double[][] colours = spoken(sounds("ta", "ka"), 0, 1);
    assertSame(AnyMouth.UNKNOWN, AnyMouth.of(sounds("ta", "blub"), colours), "no such sollu");
    assertSame(AnyMouth.UNKNOWN, AnyMouth.of(sounds("ta"), colours), "one sollu only");
    assertSame(AnyMouth.UNKNOWN, AnyMouth.of(sounds("ta", "ka"), new double[0][]), "no sound");
    assertSame(AnyMouth.UNKNOWN, AnyMouth.of(sounds("ta", "ka"), new double[4][3]), "other bands");
    assertEquals(0, AnyMouth.UNKNOWN.evidence(inTurn(2, 0), onsets(2)));
  }

  /**
   * Vowels as they were measured: the second formant of i stands at 2290 Hz, that of u at 870, that
   * of a (as in "father") at 1090 (G. E. Peterson and H. L. Barney, J. Acoust. Soc. Am. 24 (1952)
   * 175-184, men; from memory). So between 2 and 2.6 kHz i is the loudest of the three.
   */
  @Test
  void theVowelsThatWereLearntHaveTheirFormants() {
    double[] loud =
        List.of("vowel-i", "vowel-a", "vowel-u").stream()
            .mapToDouble(trait -> level(TABLE.ofTrait().get(trait), 2_000, 2_600))
            .toArray();
    assertTrue(loud[0] > loud[1] && loud[0] > loud[2], Arrays.toString(loud));
  }

  /** The level of the vowel between two frequencies, from its cepstra over 24 mel bands. */
  private static double level(double[] trait, double fromHz, double toHz) {
    double low = mel(200);
    double high = mel(8_000);
    int bands = 24;
    int coefficients = trait.length / 2;
    double sum = 0;
    int count = 0;
    for (int band = 0; band < bands; band++) {
      double hertz =
          700 * (Math.pow(10, (low + (high - low) * (band + 1) / (bands + 1)) / 2595) - 1);
      if (hertz >= fromHz && hertz <= toHz) {
        count++;
        for (int c = 0; c < coefficients; c++) {
          sum += trait[coefficients + c] * Math.cos(Math.PI * (c + 1) * (band + 0.5) / bands);
        }
      }
    }
    assertTrue(count > 1, count + " bands");
    return sum / count;
  }

  private static double mel(double hertz) {
    return 2595 * Math.log10(1 + hertz / 700);
  }

  /** Every consonant and vowel of the lexicon is made of something that was learnt. */
  @Test
  void everySolluOfTheLexiconHasTraits() {
    int tried = 0;
    for (SolluSound sound : Lexicon.standard().sounds()) {
      List<String> traits = PhoneTraits.of(sound, true, true);
      assertTrue(
          traits.stream().anyMatch(TABLE.ofTrait()::containsKey), sound.name() + ": " + traits);
      tried++;
    }
    assertTrue(tried > 100, tried + " sollus");
  }
}
