package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.loudness.StretchLoudness;
import org.matraloom.voice.SolluWave;
import org.matraloom.voice.SpokenLine;
import org.matraloom.voice.VoiceEffort;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.voice.VowelOnset;

/** What is said with a recorded voice, measured on the samples. */
class OwnVoiceTest {

  private static final int RATE = SpokenLine.RATE;
  private static final int MS = SpokenLine.MS;
  private static final Map<String, VowelOnset.Mark> SOLLUS =
      Map.ofEntries(
          Map.entry("ta", VowelOnset.Mark.VOICE),
          Map.entry("ka", VowelOnset.Mark.VOICE),
          Map.entry("di", VowelOnset.Mark.VOICE),
          Map.entry("mi", VowelOnset.Mark.OPENING),
          Map.entry("ki", VowelOnset.Mark.VOICE),
          Map.entry("na", VowelOnset.Mark.OPENING),
          Map.entry("jo", VowelOnset.Mark.VOICE),
          Map.entry("dhin", VowelOnset.Mark.VOICE),
          Map.entry("tom", VowelOnset.Mark.VOICE),
          Map.entry("nam", VowelOnset.Mark.OPENING),
          Map.entry("ri", VowelOnset.Mark.VOICE),
          Map.entry("la", VowelOnset.Mark.OPENING));

  @TempDir private static Path folder;
  private static Kit kit;
  private static Path place;

  @BeforeAll
  static void record() throws IOException {
    KitDraft draft = MadeMouth.draft(folder);
    KitShelf shelf = new KitShelf(folder.resolve("voices"));
    shelf.put(draft);
    kit = shelf.open("river");
    place = shelf.folderOf("river");
  }

  private static OwnVoice voice(VoiceSettings settings) {
    return new OwnVoice(RATE, SpokenLine.LEXICON, settings, kit, place, false);
  }

  private static OwnVoice plain() {
    return voice(VoiceSettings.USUAL.withAccents(0));
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 120, 171, 400})
  void theVowelOnsetLiesOnTheGrid(int ms) {
    for (Map.Entry<String, VowelOnset.Mark> sollu : SOLLUS.entrySet()) {
      SpokenLine line =
          new SpokenLine()
              .say("ta", ms)
              .say(sollu.getKey(), ms)
              .say("ka", ms)
              .say(sollu.getKey(), ms);
      float[] wave = line.render(plain());
      for (int i : new int[] {1, 3}) {
        double onset = VowelOnset.frame(wave, (int) line.gridFrame(i), sollu.getValue());
        assertEquals(0, (onset - line.gridFrame(i)) / MS, 5, sollu.getKey() + " in " + ms + " ms");
      }
    }
  }

  @Test
  void lastsAsLongAsItsMatras() {
    for (int ms : new int[] {60, 171, 400, 3200}) {
      SpokenLine line = new SpokenLine().say("dhin", ms);
      SolluWave said = line.sound(plain(), 0);
      assertEquals(ms * MS, said.samples().length - said.leadFrames(), MS, ms + " ms");
      int last = said.leadFrames() + (int) (0.85 * ms * MS);
      assertTrue(peak(said.samples(), last - 20 * MS, last) > 0.02, "it still sounds at " + ms);
    }
  }

  @Test
  void whatIsNotStretchedIsTheRecording() throws IOException {
    KitSample sample = kit.of("la").get(0);
    float[] recorded = KitSounds.read(place.resolve(sample.file()), RATE, 60);
    DrawnSample drawn = DrawnSample.of(recorded, sample.places(), Optional.empty(), RATE);
    int frames = sample.places().steadyEnd() - sample.places().vowel();
    float[] out = new float[frames];
    new PitchOverlap(drawn, RATE, 1, 1)
        .write(
            out,
            0,
            List.of(new SoundedPart(sample.places().vowel(), sample.places().steadyEnd(), frames)));
    float[] asked = new float[frames];
    System.arraycopy(recorded, sample.places().vowel(), asked, 0, frames);
    assertArrayEquals(asked, out, 1e-6f);
  }

  @Test
  void aVowelThatIsDrawnOutKeepsItsPitch() {
    SpokenLine line = new SpokenLine().say("ta", 400, 1200);
    SolluWave said = line.sound(plain(), 0);
    int from = said.leadFrames() + 45 * MS;
    int end = said.samples().length - 45 * MS;
    List<Integer> marks = PitchMarks.of(said.samples(), from, end, RATE / 205.0);
    assertTrue(marks.size() > 280, "periods: " + marks.size());
    double hz = (double) RATE * (marks.size() - 1) / (marks.get(marks.size() - 1) - marks.get(0));
    double recorded =
        kit.of("ta").stream()
            .filter(each -> each.file().equals("ta-1.wav"))
            .mapToDouble(KitSample::pitchHz)
            .findFirst()
            .orElseThrow();
    assertEquals(0, 1200 * Math.log(hz / recorded) / Math.log(2), 10, hz + " against " + recorded);
  }

  @Test
  void joinsDoNotClick() {
    for (int ms : new int[] {60, 171}) {
      SpokenLine line = new SpokenLine();
      for (int time = 0; time < 3; time++) {
        SOLLUS.keySet().stream().sorted().forEach(sollu -> line.say(sollu, ms));
      }
      OwnVoice voice = plain();
      for (int i = 0; i < line.cues().size(); i++) {
        float[] wave = line.sound(voice, i).samples();
        double edge =
            Math.max(
                Math.abs(wave[0]) + Math.abs(wave[1] - 2 * wave[0]),
                Math.abs(wave[wave.length - 1])
                    + Math.abs(wave[wave.length - 2] - 2 * wave[wave.length - 1]));
        assertTrue(20 * Math.log10(edge + 1e-9) < -54, "edge of sollu " + i + " in " + ms + " ms");
      }
    }
  }

  /** A weak, rough period, as of a trill, is not raised above what is rough in the vowel itself. */
  @Test
  void aVowelThatIsDrawnOutIsNoRougherThanItWas() {
    int period = RATE / 150;
    int periods = 24;
    float[] sound = new float[(periods + 2) * period];
    List<Integer> marks = new ArrayList<>();
    for (int k = 0; k <= periods; k++) {
      marks.add(k * period + period / 2);
    }
    for (int i = 0; i < sound.length; i++) {
      boolean weak = i / period > periods / 2;
      double tone = Math.sin(2 * Math.PI * 150 * i / RATE);
      double rough = weak ? 0.02 * Math.sin(2 * Math.PI * 9000 * i / RATE) : 0;
      sound[i] = (float) ((weak ? 0.05 : 0.5) * tone + rough);
    }
    int end = periods * period;
    SamplePlaces places =
        new SamplePlaces(0, 0, 0, period, end - period, OptionalInt.empty(), end, marks);
    DrawnSample drawn = DrawnSample.of(sound, places, Optional.empty(), RATE);
    float[] out = new float[5 * end];
    new PitchOverlap(drawn, RATE, 1, 1)
        .write(out, 0, List.of(new SoundedPart(period, end - period, out.length)));
    assertTrue(peak(out, 0, out.length) > 0.3, "it sounds");
    double own = edge(sound, 2 * period, end - period);
    assertTrue(edge(out, 2 * period, out.length - 2 * period) < 1.1 * own, "no rougher");
  }

  private static double edge(float[] wave, int from, int to) {
    double most = 0;
    for (int i = from + 1; i < to - 1; i++) {
      most = Math.max(most, Math.abs(wave[i - 1] - 2 * wave[i] + wave[i + 1]));
    }
    return most;
  }

  @Test
  void levelsAreEven() {
    for (int ms : new int[] {60, 120, 171, 400}) {
      SpokenLine line = new SpokenLine();
      SOLLUS.keySet().stream().sorted().forEach(sollu -> line.say(sollu, ms));
      OwnVoice voice = plain();
      double before = Double.NaN;
      int steps = 0;
      for (int i = 0; i < line.cues().size(); i++) {
        SolluWave said = line.sound(voice, i);
        double lufs =
            StretchLoudness.loudestLufs(
                said.samples(), said.leadFrames(), said.samples().length, 100 * MS, RATE);
        if (i > 0) {
          assertEquals(before, lufs, 1.5, "step to sollu " + i + " in " + ms + " ms");
          steps++;
        }
        before = lufs;
      }
      assertEquals(SOLLUS.size() - 1, steps);
    }
  }

  @Test
  void theSamePlaceGivesTheSameSamplesAndAnotherPlaceAnotherTake() {
    SpokenLine line = new SpokenLine();
    for (int i = 0; i < 6; i++) {
      line.say("ta", 171).say("ka", 171);
    }
    assertArrayEquals(line.render(plain()), line.render(plain()));
    OwnVoice voice = plain();
    long different =
        List.of(2, 4, 6, 8).stream()
            .filter(
                i -> !Arrays.equals(line.sound(voice, i).samples(), line.sound(voice, 0).samples()))
            .count();
    assertTrue(different > 0, "takes vary");
  }

  @Test
  void whatWasNotRecordedIsSaidByANearOneOrByTheSynthesiser() {
    SpokenLine line = new SpokenLine().say("ḍa", 200).say("jham", 200).say("ta", 200);
    OwnVoice voice = plain();
    for (int i = 0; i < 3; i++) {
      assertTrue(peak(line.sound(voice, i).samples(), 0, 5000) > 0.02, "sollu " + i + " sounds");
    }
    assertEquals(Map.of("ḍa", "ṭa", "jham", ""), voice.instead());
  }

  @Test
  void accentsAndHalfVoiceAreThoseOfTheSynthesiser() {
    SpokenLine line = new SpokenLine().say("ta", 300);
    double plainPeak = peak(line.sound(plain(), 0).samples(), 0, 10_000);
    double back = peak(line.sound(voice(VoiceSettings.USUAL), 0).samples(), 0, 10_000);
    assertEquals(-2, 20 * Math.log10(back / plainPeak), 0.1, "no stress steps back by 2 dB");
    OwnVoice half = voice(VoiceSettings.USUAL.withAccents(0).with(VoiceEffort.HALF));
    SolluWave soft = line.sound(half, 0);
    SolluWave full = line.sound(plain(), 0);
    double difference =
        StretchLoudness.loudestLufs(soft.samples(), soft.leadFrames(), 20_000, 4800, RATE)
            - StretchLoudness.loudestLufs(full.samples(), full.leadFrames(), 20_000, 4800, RATE);
    assertEquals(-6, difference, 0.5, "half voice is 6 dB softer");
  }

  @Test
  void speaksAtOtherRates() {
    OwnVoice other =
        new OwnVoice(24_000, SpokenLine.LEXICON, VoiceSettings.USUAL, kit, place, false);
    SpokenLine line = new SpokenLine().say("ta", 171).say("dhin", 171);
    SolluWave said = line.sound(other, 1);
    assertTrue(peak(said.samples(), 0, said.samples().length) > 0.1);
    assertNotEquals(0, said.leadFrames());
  }

  private static double peak(float[] wave, int from, int to) {
    double peak = 0;
    for (int i = Math.max(0, from); i < Math.min(wave.length, to); i++) {
      peak = Math.max(peak, Math.abs(wave[i]));
    }
    return peak;
  }
}
