package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.Pieces;
import org.matraloom.sound.Renderer;
import org.matraloom.time.Ratio;

/** Words in place of ticks: one for each tick, a word to a beat, and no tick left. */
class SpokenTicksTest {

  private static final int RATE = SpokenLine.RATE;
  private static final SpokenTicks TICKS = new SpokenTicks(SpokenLine.usual(), SpokenLine.LEXICON);

  /** Words of the nadais: common practice. */
  @ParameterizedTest
  @CsvSource({
    "3, 1, ta ki ta",
    "4, 1, ta ka di mi",
    "5, 1, ta ka ta ki ta",
    "7, 1, ta ki ta ta ka di mi",
    "9, 1, ta ka di mi ta ka ta ki ta",
    "4, 2, ta ka di mi ta ka ju nu",
    "3, 2, ta ki ta ta ki ta",
    "5, 2, ta ka ta ki ta ta ka ta ki ta"
  })
  void aWordFillsABeat(int nadai, int kalam, String beat) {
    Timeline timeline = timeline("Song = (ta) x" + 8 * nadai, "Song nadai " + nadai, kalam);
    List<Event.SolluSaid> words = words(timeline);
    List<Event.Tick> ticks = Pieces.events(timeline, Event.Tick.class);
    assertEquals(ticks.size(), words.size());
    int matras = beat.split(" ").length;
    for (int i = 0; i < words.size(); i++) {
      assertEquals(ticks.get(i).beat(), words.get(i).beat());
      assertEquals(Ratio.of(1, matras), words.get(i).beats());
    }
    assertEquals(
        beat,
        words.stream()
            .limit(matras)
            .map(word -> word.sollu().spelling())
            .collect(Collectors.joining(" ")));
  }

  @Test
  void theWordBeginsOnTheBeatWhereverThePieceDoes() {
    Timeline timeline = timeline("start beat 2 1/2\nSong = (ta) x8", "Song nadai 4", 1);
    Event.SolluSaid first = words(timeline).stream().filter(w -> w.round() == 1).findFirst().get();
    assertEquals("di", first.sollu().spelling(), "half way through the beat");
  }

  @Test
  void wordsTakeThePlaceOfTicks() {
    Timeline timeline = timeline("Song = ta , , , ka , , ,", "Song nadai 4", 1);
    Mix ticksOnly = Mix.lesson().only(Set.of(MixPart.TICK));
    float[] clicked = render(timeline, ticksOnly, SpokenLine.usual());
    FormantVoice speaking =
        FormantVoice.withSpokenTicks(RATE, SpokenLine.LEXICON, VoiceSettings.USUAL);
    float[] spoken = render(timeline, ticksOnly, speaking);
    assertTrue(energy(clicked) > 0);
    assertTrue(energy(spoken) > 20 * energy(clicked), "words last, clicks do not");
    assertNotEquals(0, peakDb(spoken));
    assertEquals(-6 - 18 + 6 - 6, peakDb(spoken), 1.5, "soft: half voice, under the clap");
    assertEquals(0, energy(render(timeline, Mix.lesson().only(Set.of()), speaking)));
  }

  @Test
  void theWordsAreSaidByTheOtherVoiceSoftly() {
    VoiceSettings under = VoiceSettings.USUAL.underneath();
    assertEquals(VoicePerson.HIGH, under.person());
    assertEquals(VoiceEffort.HALF, under.effort());
    assertEquals(VoicePerson.LOW, under.underneath().person());
  }

  private static Timeline timeline(String head, String plan, int kalam) {
    String text = "tala adi\ntempo 60\n" + head + "\nperform\n  " + plan + " kalam " + kalam + "\n";
    return ScoreTimeline.of(
        Performance.of(ScoreReader.read(text, "", SpokenLine.LEXICON).composition().orElseThrow()),
        0);
  }

  private static List<Event.SolluSaid> words(Timeline timeline) {
    List<Event.SolluSaid> words = new ArrayList<>();
    Iterator<Event.SolluSaid> each = TICKS.words(timeline);
    each.forEachRemaining(words::add);
    return words;
  }

  private static float[] render(Timeline timeline, Mix mix, SolluVoice voice) {
    Renderer renderer = new Renderer(timeline, timeline.clock(RATE), mix, voice, 1);
    float[] all = new float[(int) Renderer.lengthFrames(timeline, timeline.clock(RATE))];
    assertEquals(all.length, renderer.render(all, all.length));
    return all;
  }

  private static double energy(float[] wave) {
    double sum = 0;
    for (float sample : wave) {
      sum += sample * sample;
    }
    return sum;
  }

  private static double peakDb(float[] wave) {
    double peak = 0;
    for (int i = RATE; i < wave.length; i++) {
      peak = Math.max(peak, Math.abs(wave[i]));
    }
    return 20 * Math.log10(peak);
  }
}
