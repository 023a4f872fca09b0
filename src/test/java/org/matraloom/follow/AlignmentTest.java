package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** Made takes of a score are paired with it, from the sound to the sollu. */
class AlignmentTest {

  private static final int RATE = 16_000;

  private static final String SCORE =
      """
      tala adi
      tempo 70
      Drip = takita , takadimi , takatakita ,
      Fall = (tadiginatom , ) x3
      Song = Drip Fall
      perform
        Song x2 nadai 4
        Song nadai 5
      """;

  private static final List<ExpectedSollu> EXPECTED =
      ExpectedSollu.of(
          ScoreTimeline.of(
              Performance.of(
                  ScoreReader.read(SCORE, "rain.loom", Lexicon.standard())
                      .composition()
                      .orElseThrow()),
              0));

  @Test
  void theScoreIsReadOff() {
    assertEquals(3 * (3 + 4 + 5 + 15), EXPECTED.size());
    assertEquals(0, EXPECTED.get(0).seconds());
    assertEquals("ta", EXPECTED.get(0).sollu().spelling());
    assertTrue(EXPECTED.get(0).entry());
    assertEquals(60.0 / 70 / 4, EXPECTED.get(1).seconds(), 1e-9);
    assertEquals(3, EXPECTED.get(EXPECTED.size() - 1).round());
  }

  @Test
  void everySolluOfACleanTakeIsPaired() throws IOException {
    for (double stretch : new double[] {0.8, 1, 1.22}) {
      SplittableRandom random = new SplittableRandom(4);
      Alignment alignment = align(times(stretch, 0.008, random), random);
      assertTrue(alignment.missed().size() <= 1, stretch + ": " + alignment.missed());
      assertTrue(alignment.added().size() <= 1, stretch + ": " + alignment.added());
      double first = alignment.secondsOf(alignment.said().get(0));
      assertEquals(0.8, first, 0.02);
    }
  }

  @Test
  void missedAndAddedSollusAreNamed() throws IOException {
    SplittableRandom random = new SplittableRandom(8);
    List<Double> times = new ArrayList<>();
    for (double time : times(1.05, 0.006, random)) {
      times.add(time);
    }
    double doubled = (times.get(25) + times.get(26)) / 2;
    times.remove(60);
    times.remove(12);
    times.add(doubled);
    double[] said = times.stream().sorted().mapToDouble(Double::doubleValue).toArray();
    Alignment alignment = align(said, random);
    assertTrue(alignment.missed().containsAll(List.of(12, 60)), "" + alignment.missed());
    assertTrue(alignment.missed().size() <= 4, "" + alignment.missed());
    assertTrue(
        alignment.added().stream()
            .anyMatch(j -> Math.abs(alignment.onsets().get(j).seconds() - doubled) < 0.03),
        "" + alignment.added());
  }

  private static double[] times(double stretch, double jitterSeconds, SplittableRandom random) {
    return EXPECTED.stream()
        .mapToDouble(
            sollu ->
                0.8 + sollu.seconds() * stretch + jitterSeconds * (2 * random.nextDouble() - 1))
        .toArray();
  }

  private static Alignment align(double[] times, SplittableRandom random) throws IOException {
    SpokenTake take = SpokenTake.syllablesAt(RATE, times, random);
    return Aligner.of(EXPECTED, OnsetCurve.of(SoundFiles.recording(take.sound(), RATE)));
  }
}
