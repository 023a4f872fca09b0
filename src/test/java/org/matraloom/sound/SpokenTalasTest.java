package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SpokenLine;
import org.matraloom.voice.VoiceSettings;

/** The whole mix with the spoken voice, in all 35 talas and five nadais, slow and fast. */
class SpokenTalasTest {

  private static final int RATE = 44_100;
  private static final List<String> WORDS =
      List.of(
          "ta", "ka", "di", "mi", "ta", "ka", "jo", "nu", "ta", "ri", "ki", "ta", "din", "gi", "na",
          "tom", "dhim", "lan", "gu", "nam", "jham", "ku", "ding", "ṇa");

  @Test
  void nothingClipsAndEverySampleIsANumber() {
    int pieces = 0;
    for (TalaFamily family : TalaFamily.values()) {
      for (Jati jati : Jati.values()) {
        for (int nadai : new int[] {3, 4, 5, 7, 9}) {
          for (int bpm : new int[] {70, 150, 400}) {
            check(piece(family.tala(jati), nadai, bpm, pieces));
            pieces++;
          }
        }
      }
    }
    assertEquals(35 * 5 * 3, pieces);
  }

  private static void check(Timeline timeline) {
    FormantVoice voice = new FormantVoice(RATE, SpokenLine.LEXICON, VoiceSettings.USUAL);
    Renderer renderer =
        new Renderer(timeline, timeline.clock(RATE), Mix.lesson().withOutput(6), voice, 1);
    float[] block = new float[RATE];
    double power = 0;
    int frames;
    while ((frames = renderer.render(block, RATE)) > 0) {
      for (int i = 0; i < frames; i++) {
        assertTrue(Math.abs(block[i]) <= 0.8914, () -> timeline.performance().toString());
        power += block[i] * block[i];
      }
    }
    assertTrue(power > 1, "it sounds");
  }

  /** Two beats of sollus, beginning elsewhere in the list for each piece. */
  private static Timeline piece(Tala tala, int nadai, int bpm, int shift) {
    List<Sollu> sollus = new ArrayList<>();
    for (int i = 0; i < 2 * nadai; i++) {
      String word = WORDS.get((i + shift) % WORDS.size());
      sollus.add(new Sollu(word, word));
    }
    Composition composition =
        new Composition(
            "Gutter Song",
            Avartana.of(tala, 1, FingerCustom.RESTART),
            Tempo.of(bpm),
            Ratio.ZERO,
            Ratio.ZERO,
            Map.of("Song", new Sequence(List.of(new Element.Word("song", sollus)))),
            List.of(new Step.Say("Song", 1, nadai, 1)));
    return ScoreTimeline.of(Performance.of(composition), 0);
  }
}
