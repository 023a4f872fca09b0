package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Stress;
import org.matraloom.score.Sollu;
import org.matraloom.score.Spoken;

/** Each sollu fills its matras, joins without a click, and sounds the same every time. */
class FormantVoiceTest {

  private static final int MS = SpokenLine.MS;

  /** Every sound of the lexicon, in a row. */
  private static SpokenLine everySound(int ms) {
    SpokenLine line = new SpokenLine();
    SpokenLine.LEXICON.sounds().forEach(sound -> line.say(sound.spellings().get(0), ms));
    return line;
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 171, 400})
  void everySoundIsLoudEnoughAndNeverClips(int ms) {
    SpokenLine line = everySound(ms);
    for (VoicePerson person : VoicePerson.values()) {
      FormantVoice voice = SpokenLine.voice(settings(person, VoiceEffort.FULL, 0));
      for (int i = 0; i < line.cues().size(); i++) {
        String what = line.cues().get(i).said().sollu() + " by " + person;
        float peak = 0;
        double sum = 0;
        float[] samples = line.sound(voice, i).samples();
        for (float sample : samples) {
          assertTrue(Math.abs(sample) <= 1, what);
          peak = Math.max(peak, Math.abs(sample));
          sum += sample;
        }
        assertTrue(peak > 0.85, what + " peaks at " + peak);
        assertEquals(0, sum / samples.length, 1e-6, what + ", DC");
      }
    }
  }

  /**
   * A click is a jump, and a jump is a second difference as large as itself: at the edges of a
   * sollu it stays below -54 dB of full scale.
   */
  @ParameterizedTest
  @ValueSource(ints = {40, 60, 171})
  void joinsWithoutAClick(int ms) {
    SpokenLine line = everySound(ms);
    FormantVoice voice = SpokenLine.usual();
    int seen = 0;
    for (int i = 0; i < line.cues().size(); i++) {
      float[] samples = line.sound(voice, i).samples();
      String what = line.cues().get(i).said().sollu() + " in " + ms;
      double inside = bend(samples, 100, samples.length - 100);
      assertTrue(inside > 0.004, what);
      assertTrue(bend(samples, -2, 12) < 0.002, what + ", beginning");
      assertTrue(bend(samples, samples.length - 12, samples.length + 2) < 0.002, what + ", end");
      seen++;
    }
    assertTrue(seen > 60);
  }

  private static double bend(float[] samples, int from, int to) {
    double most = 0;
    for (int i = from; i < to; i++) {
      most = Math.max(most, Math.abs(at(samples, i) - 2 * at(samples, i - 1) + at(samples, i - 2)));
    }
    return most;
  }

  private static double at(float[] samples, int i) {
    return i < 0 || i >= samples.length ? 0 : samples[i];
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 125, 171, 300})
  void endsWhereTheNextConsonantBegins(int ms) {
    SpokenLine line = new SpokenLine();
    List<String> sollus = List.of("ta", "na", "ki", "dhin", "ju", "ri", "tom");
    sollus.forEach(sollu -> line.say(sollu, ms));
    FormantVoice voice = SpokenLine.usual();
    for (int i = 0; i + 1 < sollus.size(); i++) {
      PhoneSyllable next = syllable(sollus.get(i + 1));
      long lead = (long) (1000 * VoiceTiming.lead(next.onsetSeconds(), ms / 1000.0, 0) + 1e-6);
      assertEquals(ms - lead, msAfterGrid(line.sound(voice, i)), 1, sollus.get(i));
      assertTrue(ms - lead >= 0.59 * ms, "the vowel keeps the larger part");
    }
    SolluWave last = line.sound(voice, sollus.size() - 1);
    assertEquals(ms, msAfterGrid(last), 1, "the last fills its matra");
  }

  @Test
  void silenceIsSilent() {
    SpokenLine line = new SpokenLine().say("tom", 200).say(".", 400).say("na", 200);
    float[] wave = line.render(SpokenLine.usual());
    int end = (int) line.gridFrame(0) + 200 * MS;
    int begin = (int) line.gridFrame(1) - 60 * MS;
    for (int i = end; i < begin; i++) {
      assertEquals(0, wave[i]);
    }
    assertTrue(power(wave, begin, begin + 50 * MS) > 0, "the murmur of na comes before the grid");
  }

  @Test
  void aKarvaiRingsAndDecays() {
    SpokenLine line = new SpokenLine().say("ta", 200, 600).say("ka", 200);
    float[] wave = line.render(SpokenLine.usual());
    double before = db(wave, line, 50);
    for (int ms = 150; ms <= 650; ms += 100) {
      double now = db(wave, line, ms);
      assertTrue(now < before, "falls at " + ms + " ms");
      assertTrue(now > before - 9, "but goes on at " + ms + " ms");
      before = now;
    }
  }

  /** dhin , , at 60 beats a minute in nadai 4. */
  @Test
  void aRingingNasalSwellsAndFillsItsMatras() {
    SpokenLine line = new SpokenLine().say("dhin", 250, 500).say("ta", 250);
    float[] wave = line.render(SpokenLine.usual());
    double vowelEnd = db(wave, line, 190);
    double swollen = db(wave, line, 380);
    double late = db(wave, line, 640);
    assertTrue(swollen > vowelEnd, "swells from " + vowelEnd + " to " + swollen);
    assertTrue(late < swollen, "closes");
    assertTrue(late > swollen - 12, "and still fills the third matra: " + late);
    double phone = highPower(wave, (int) line.gridFrame(0) + 400 * MS, 200 * MS);
    double all =
        power(wave, (int) line.gridFrame(0) + 400 * MS, (int) line.gridFrame(0) + 600 * MS);
    assertTrue(10 * Math.log10(phone / all) > -45, "above 800 Hz, for a phone speaker");
  }

  @Test
  void theSamePieceGivesTheSameSamples() {
    SpokenLine line = everySound(150);
    assertArrayEquals(line.render(SpokenLine.usual()), line.render(SpokenLine.usual()));
  }

  @Test
  void takesDifferAndSoundAlike() {
    SpokenLine line = new SpokenLine();
    for (int i = 0; i < 24; i++) {
      line.say("ta", 150);
    }
    FormantVoice voice = SpokenLine.usual();
    List<float[]> takes =
        IntStream.range(1, 22).mapToObj(i -> line.sound(voice, i).samples()).toList();
    long different = takes.stream().map(Arrays::hashCode).distinct().count();
    assertEquals(VoiceSettings.MOST_TAKES, different, "no machine gun, and no endless work");

    double[] levels =
        takes.stream().mapToDouble(FormantVoiceTest::levelDb).distinct().sorted().toArray();
    double[] periods =
        takes.stream().mapToDouble(FormantVoiceTest::periodFrames).distinct().sorted().toArray();
    double levelsApart = levels[levels.length - 1] - levels[0];
    double periodsApart = periods[periods.length - 1] / periods[0] - 1;
    assertTrue(levelsApart > 0.3 && levelsApart < 3, "levels apart by dB " + levelsApart);
    assertTrue(periodsApart > 0.003 && periodsApart < 0.06, "pitches apart by " + periodsApart);
  }

  private static double levelDb(float[] samples) {
    double sum = 0;
    for (float sample : samples) {
      sum += sample * (double) sample;
    }
    return 10 * Math.log10(sum / samples.length);
  }

  /** The length of a glottal cycle in the vowel: where the sound is most like itself. */
  private static double periodFrames(float[] samples) {
    int from = samples.length / 4;
    int to = samples.length / 2;
    double[] like = new double[700];
    for (int lag = 200; lag < like.length; lag++) {
      double product = 0;
      double power = 0;
      double shifted = 0;
      for (int i = from; i < to; i++) {
        product += samples[i] * (double) samples[i + lag];
        power += samples[i] * (double) samples[i];
        shifted += samples[i + lag] * (double) samples[i + lag];
      }
      like[lag] = product / Math.sqrt(power * shifted);
    }
    int best =
        IntStream.range(201, like.length - 1)
            .boxed()
            .max(Comparator.comparingDouble(l -> like[l]))
            .orElseThrow();
    double bend = like[best - 1] - 2 * like[best] + like[best + 1];
    return best + (like[best - 1] - like[best + 1]) / (2 * bend);
  }

  @ParameterizedTest
  @EnumSource(Stress.class)
  void stressMovesLevelAndNeverTime(Stress stress) {
    SolluWave plain = stressed(Stress.NONE, 1);
    SolluWave said = stressed(stress, 1);
    assertEquals(plain.leadFrames(), said.leadFrames());
    assertEquals(plain.samples().length, said.samples().length);
    double gain = 20 * Math.log10(peak(said) / peak(plain));
    assertEquals(stress == Stress.NONE ? 0 : 1.5, gain, stress == Stress.NONE ? 1e-6 : 0.6);
    assertEquals(peak(stressed(Stress.NONE, 0)), peak(stressed(stress, 0)), 1e-3, "set to nothing");
  }

  private static SolluWave stressed(Stress stress, double accents) {
    SpokenLine line = new SpokenLine().stressed(stress).say("ta", 200);
    return line.sound(SpokenLine.voice(settings(VoicePerson.LOW, VoiceEffort.FULL, accents)), 0);
  }

  @Test
  void halfVoiceIsSofterAndBreathier() {
    SpokenLine line = new SpokenLine().say("ta", 400);
    SolluWave full =
        line.sound(SpokenLine.voice(settings(VoicePerson.LOW, VoiceEffort.FULL, 1)), 0);
    SolluWave half =
        line.sound(SpokenLine.voice(settings(VoicePerson.LOW, VoiceEffort.HALF, 1)), 0);
    assertEquals(-6, 20 * Math.log10(peak(half) / peak(full)), 0.1);
    assertTrue(noisiness(half) > 1.5 * noisiness(full), noisiness(half) + ", " + noisiness(full));
  }

  /** How unlike one period is to the next: what is left of a vowel after a comb at its pitch. */
  private static double noisiness(SolluWave sound) {
    float[] samples = sound.samples();
    int from = sound.leadFrames() + 150 * MS;
    double least = 1;
    for (int period = 300; period < 460; period++) {
      double rest = 0;
      double all = 0;
      for (int i = from; i < from + 60 * MS; i++) {
        double high = samples[i] - samples[i - 1];
        double highBefore = samples[i - period] - samples[i - period - 1];
        rest += (high - highBefore) * (high - highBefore);
        all += high * high + highBefore * highBefore;
      }
      least = Math.min(least, rest / all);
    }
    return least;
  }

  @Test
  void anUnknownSolluIsNamed() {
    SolluCue cue = new SpokenLine().say("ta", 200).cues().get(0);
    Event.SolluSaid said = cue.said();
    SolluCue unknown =
        new SolluCue(
            new Event.SolluSaid(
                Spoken.aside(said.beat(), new Sollu("xq", "xq"), 1, 1), said.stress()),
            0,
            100);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> SpokenLine.usual().say(Optional.empty(), unknown, Optional.empty()));
    assertEquals("the lexicon does not know the sollu \"xq\"", refused.getMessage());
  }

  private static VoiceSettings settings(VoicePerson person, VoiceEffort effort, double accents) {
    return new VoiceSettings(person, effort, VoicePlacement.VOWEL, accents, 3);
  }

  private static PhoneSyllable syllable(String spelling) {
    return PhoneSyllable.of(SpokenLine.LEXICON.sound(spelling).orElseThrow().phones());
  }

  private static double msAfterGrid(SolluWave sound) {
    return (double) (sound.samples().length - sound.leadFrames()) / MS;
  }

  private static double peak(SolluWave sound) {
    double peak = 0;
    for (float sample : sound.samples()) {
      peak = Math.max(peak, Math.abs(sample));
    }
    return peak;
  }

  private static double db(float[] wave, SpokenLine line, int ms) {
    int at = (int) line.gridFrame(0) + ms * MS;
    return 10 * Math.log10(power(wave, at - 20 * MS, at + 20 * MS));
  }

  private static double power(float[] wave, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += wave[i] * wave[i];
    }
    return sum / (to - from);
  }

  private static double highPower(float[] wave, int from, int frames) {
    double keep = Math.exp(-2 * Math.PI * 800 / SpokenLine.RATE);
    double[] low = new double[2];
    double sum = 0;
    for (int i = from - 1000; i < from + frames; i++) {
      low[0] = wave[i] + (low[0] - wave[i]) * keep;
      double high = wave[i] - low[0];
      low[1] = high + (low[1] - high) * keep;
      sum += i < from ? 0 : (high - low[1]) * (high - low[1]);
    }
    return sum / frames;
  }
}
