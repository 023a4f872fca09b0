package org.matraloom.kanakku;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.MeasuredTempo;
import org.matraloom.time.Ratio;

/** A rhythm that is tapped is found again, however people tap. */
class TappedRhythmTest {

  private static final MeasuredTempo TEMPO = new MeasuredTempo(60);

  /** Where sounds of these lengths begin, in beats. */
  private static List<Double> taps(double start, int nadai, List<Integer> lengths) {
    List<Double> taps = new ArrayList<>();
    int matras = 0;
    for (int length : lengths) {
      taps.add(start + (double) matras / nadai);
      matras += length;
    }
    return taps;
  }

  private static List<Integer> lengths(SplittableRandom random, int count) {
    List<Integer> lengths = new ArrayList<>();
    for (int i = 0; i < count - 1; i++) {
      lengths.add(random.nextInt(10) < 7 ? 1 : random.nextInt(2, 5));
    }
    lengths.add(1);
    return lengths;
  }

  /**
   * Taps that scatter by 15 ms and come 40 ms early, as people tap (B. H. Repp, "Sensorimotor
   * synchronization", Psychonomic Bulletin and Review 12, 2005), at 60 beats a minute.
   */
  @Test
  void anyRhythmInAnyNadaiIsFoundAgain() {
    int tried = 0;
    for (int nadai : List.of(3, 4, 5, 7)) {
      for (int seed = 0; seed < 100; seed++) {
        SplittableRandom random = new SplittableRandom(100 * nadai + seed);
        List<Integer> lengths = lengths(random, 20);
        List<Double> taps = new ArrayList<>();
        for (double exact : taps(-16, nadai, lengths)) {
          taps.add(exact - 0.040 + 0.015 * gauss(random));
        }
        TappedRhythm found = TappedRhythm.of(taps, TEMPO, 4).orElseThrow();
        assertEquals(nadai, found.matrasPerBeat(), "seed " + seed + ": " + lengths);
        assertEquals(lengths, found.lengths());
        assertEquals(Ratio.of(-16), found.startBeat());
        assertTrue(found.scatterSeconds() > 0.005 && found.scatterSeconds() < 0.030);
        tried++;
      }
    }
    assertEquals(400, tried);
  }

  /**
   * The sum of twelve even numbers is nearly normal; beyond two and a half deviations none is left.
   */
  private static double gauss(SplittableRandom random) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return Math.max(-2.5, Math.min(2.5, sum));
  }

  /** Each tap is rounded from its own place, so that a slow drift of 1 ms a tap adds up to none. */
  @Test
  void roundingDoesNotAddUp() {
    List<Double> taps = new ArrayList<>();
    for (int tap = 0; tap < 60; tap++) {
      taps.add(tap * 0.25 + 0.001 * (tap - 30));
    }
    TappedRhythm found = TappedRhythm.of(taps, TEMPO, 4).orElseThrow();
    assertEquals(60, found.matras());
    assertEquals(4, found.matrasPerBeat());
  }

  @Test
  void tapsOnTheBeatAreInTheNadaiOfThePiece() {
    for (int nadai : List.of(3, 4, 5, 7, 9)) {
      TappedRhythm found =
          TappedRhythm.of(taps(0, 1, List.of(1, 1, 1, 1)), TEMPO, nadai).orElseThrow();
      assertEquals(nadai, found.matrasPerBeat());
      assertEquals(List.of(nadai, nadai, nadai, 1), found.lengths());
    }
  }

  @Test
  void whatIsNoRhythmIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> TappedRhythm.of(List.of(1.0), TEMPO, 4));
    assertThrows(
        IllegalArgumentException.class, () -> TappedRhythm.of(List.of(1.0, 1.0), TEMPO, 4));
    assertThrows(
        IllegalArgumentException.class, () -> TappedRhythm.of(List.of(1.0, Double.NaN), TEMPO, 4));
    assertTrue(TappedRhythm.of(List.of(1.0, 1.001), TEMPO, 4).isEmpty());
  }

  /** Three groups as a score of this house writes them. */
  @Test
  void wordsAreThoseOfTheTrade() {
    assertEquals("takita tom ;", words(4, List.of(1, 1, 1, 3, 1)).substring(0, 12));
    assertEquals("takadimi takita tom ; ta", words(4, List.of(1, 1, 1, 1, 1, 1, 1, 3, 1)));
    assertEquals("tadiginatom , ta", words(5, List.of(1, 1, 1, 1, 2, 1)));
    assertEquals("ta , ta , taka", words(4, List.of(2, 2, 1, 1)));
  }

  private static String words(int nadai, List<Integer> lengths) {
    TappedRhythm rhythm = TappedRhythm.of(taps(0, nadai, lengths), TEMPO, nadai).orElseThrow();
    assertEquals(lengths, rhythm.lengths());
    return TappedPhrase.of(rhythm, Lexicon.standard());
  }

  /** Whatever is tapped, its words can be read and are as long as it. */
  @Test
  void wordsAreAsLongAsTheRhythm() {
    for (int seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int nadai = List.of(3, 4, 5, 7, 9).get(seed % 5);
      TappedRhythm rhythm =
          new TappedRhythm(
              nadai,
              Ratio.of(random.nextInt(-40, 40), nadai),
              lengths(random, random.nextInt(2, 40)),
              0);
      String text =
          "tala adi\nSong = "
              + TappedPhrase.of(rhythm, Lexicon.standard())
              + "\nperform\n Song nadai "
              + nadai
              + "\n";
      Composition composition =
          ScoreReader.read(text, "", Lexicon.standard()).composition().orElseThrow();
      Ratio beats = Landing.of(Performance.of(composition)).beats();
      assertEquals(Ratio.of(rhythm.matras(), nadai), beats, text);
    }
  }
}
