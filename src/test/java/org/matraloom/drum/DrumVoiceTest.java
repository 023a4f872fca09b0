package org.matraloom.drum;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.DrumStroke;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sollu;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluWave;

/**
 * Strokes of a drum of two heads.
 *
 * <p>The loaded right head sounds five harmonics of its lowest mode, and a rim stroke with a finger
 * resting lacks the first (C. V. Raman, "The Indian musical drums", 1934; from memory). The left
 * head is held against the zeros of Bessel functions, 2.4048, 3.8317, 5.1356 and 5.5201 (from
 * memory), whose ratios are 1, 1.593, 2.136 and 2.295.
 */
class DrumVoiceTest {

  private static final int RATE = 48_000;
  private static final double TONIC = 150;
  private static final Lexicon LEXICON = Lexicon.standard();
  private static final StrokeTable USUAL = StrokeTable.usual(LEXICON);

  private static float[] struck(DrumStroke... strokes) {
    return new DrumSound(TONIC, RATE).together(List.of(strokes));
  }

  /** How much of a frequency is in the first half second (Goertzel's sum, written out). */
  private static double part(float[] samples, double hertz) {
    double cosine = 0;
    double sine = 0;
    int length = RATE / 2;
    for (int frame = 0; frame < length; frame++) {
      double angle = 2 * Math.PI * hertz * frame / RATE;
      cosine += samples[frame] * Math.cos(angle);
      sine += samples[frame] * Math.sin(angle);
    }
    return Math.hypot(cosine, sine) / length;
  }

  @Test
  void anOpenRightHeadSoundsItsFirstHarmonicAndARimStrokeDoesNot() {
    float[] open = struck(DrumStroke.DIN);
    float[] rim = struck(DrumStroke.NAM);
    assertTrue(part(open, TONIC) > 3 * part(open, 2 * TONIC), "open: the first above the second");
    assertTrue(part(rim, TONIC) < part(rim, 2 * TONIC) / 20, "rim: no first");
    for (int harmonic = 2; harmonic <= 5; harmonic++) {
      double between = part(rim, (harmonic + 0.5) * TONIC);
      assertTrue(part(rim, harmonic * TONIC) > 5 * between, "rim: harmonic " + harmonic);
    }
  }

  @Test
  void theLeftHeadSoundsLowerAndNotInHarmonics() {
    float[] low = struck(DrumStroke.THOM);
    double lowest = TONIC / 2;
    assertTrue(part(low, lowest) > 10 * part(low, TONIC * 1.25), "its lowest mode");
    double[] zeros = {2.4048, 3.8317, 5.1356, 5.5201};
    for (int mode = 0; mode < zeros.length; mode++) {
      double ratio = StrokeModes.of(DrumStroke.THOM).modes().get(mode).ratio();
      assertEquals(zeros[mode] / zeros[0], ratio, 0.002, "mode " + mode);
    }
    assertTrue(part(low, 1.594 * lowest) > 2 * part(low, 1.8 * lowest), "an uneven second mode");
  }

  @ParameterizedTest
  @EnumSource(DrumStroke.class)
  void everyStrokeBeginsAtOnceAndEndsQuietly(DrumStroke stroke) {
    float[] samples = struck(stroke);
    float peak = 0;
    double sum = 0;
    int loudest = 0;
    for (int frame = 0; frame < samples.length; frame++) {
      sum += samples[frame];
      if (Math.abs(samples[frame]) > peak) {
        peak = Math.abs(samples[frame]);
        loudest = frame;
      }
    }
    assertEquals(0.9, peak, 1e-6);
    float early = 0;
    for (int frame = 0; frame < RATE / 200; frame++) {
      early = Math.max(early, Math.abs(samples[frame]));
    }
    assertTrue(early > peak / 3, stroke + " is there within 5 ms: " + early);
    double twoSwings = 2 * RATE / (TONIC / 2);
    assertTrue(loudest < twoSwings, stroke + " is loudest within two swings: frame " + loudest);
    assertEquals(0, sum / samples.length, 1e-3, "no steady part");
    assertEquals(0, samples[0], 1e-6);
    assertEquals(0, samples[samples.length - 1], 1e-6);
    assertArrayEquals(samples, struck(stroke), "the same each time");
    boolean damped = stroke == DrumStroke.TA || stroke == DrumStroke.KI || stroke == DrumStroke.THA;
    double late = Math.abs(samples[RATE / 4]) + Math.abs(samples[RATE / 4 + 50]);
    assertEquals(damped, late < 1e-3, stroke + " rings on: " + late);
  }

  @Test
  void aSolluIsPlayedOnItsBeatAndSamamStandsOut() {
    Composition piece =
        ScoreReader.read("tala adi\ntempo 75\nA = (takadimi) x8\n", "d", LEXICON)
            .composition()
            .orElseThrow();
    DrumVoice drum = new DrumVoice(RATE, TONIC, USUAL);
    ScoreTimeline timeline = ScoreTimeline.of(Performance.of(piece), 0);
    int said = 0;
    float[] first = {};
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid sollu) {
        SolluCue cue = SolluCue.of(sollu, timeline.clock(RATE));
        SolluWave wave = drum.say(Optional.empty(), cue, Optional.empty());
        assertEquals(0, wave.leadFrames(), "the stroke is the beat");
        first = said == 0 ? wave.samples() : first;
        if (said == 4) {
          assertEquals(0.75 * first[200], wave.samples()[200], 1e-5, "ta inside the round");
        }
        said++;
      }
    }
    assertEquals(32, said);
  }

  @ParameterizedTest
  @CsvSource({
    "ta, ta",
    "ka, ki",
    "dhim, din+thom",
    "tom, thom",
    "tham, nam+thom",
    "jhonu, ''",
    "lan, nam"
  })
  void sollusHaveStrokes(String word, String written) {
    List<Sollu> sollus = LEXICON.split(word).orElseThrow();
    if (!written.isEmpty()) {
      assertEquals(written, USUAL.written(sollus.get(0)));
    }
    for (SolluAnd each : all()) {
      assertTrue(!USUAL.of(each.sollu()).isEmpty(), each.toString());
    }
  }

  private record SolluAnd(Sollu sollu) {}

  private static List<SolluAnd> all() {
    List<SolluAnd> all =
        LEXICON.sounds().stream()
            .map(sound -> new SolluAnd(new Sollu(sound.name(), sound.name())))
            .toList();
    assertTrue(all.size() > 50, "the sollus of the lexicon");
    return all;
  }

  @Test
  void aListOfOnesOwnGoesBefore() {
    StrokeTable mine = USUAL.plus("# mine\nta = nam + tha  # both\n", "mine.txt", LEXICON);
    assertEquals("nam+tha", mine.written(LEXICON.split("tha").orElseThrow().get(0)));
    assertEquals("ki", mine.written(LEXICON.split("ka").orElseThrow().get(0)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ta nam | mine.txt:1: a line is a sollu, =, and its strokes, as in dhim = din + thom",
        "ta = nan | mine.txt:1: no stroke is called \"nan\"; the nearest is nam",
        "taka = nam | mine.txt:1: \"taka\" is 2 sollus; write a line for each",
        "dhjim = nam | mine.txt:1: \"dhjim\" is no known sollu; the nearest is dhiim",
        "ta = nam + din | mine.txt:1: a sollu has one stroke, or one of each hand, as in din + thom"
      })
  void aWrongLineSaysWhatIsMeant(String line, String message) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> USUAL.plus(line, "mine.txt", LEXICON));
    assertEquals(message, refused.getMessage());
  }
}
