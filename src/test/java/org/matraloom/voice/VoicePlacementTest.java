package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where a sollu lies: by its vowel, by its consonant, or as Marcus (1981) estimates. */
class VoicePlacementTest {

  private static final PhoneSyllable TA = PhoneSyllable.of(List.of("t", "a"));
  private static final PhoneSyllable NA = PhoneSyllable.of(List.of("n", "a"));

  @Test
  void theVowelIsOnTheGridByDefault() {
    assertEquals(VoicePlacement.VOWEL, VoiceSettings.USUAL.placement());
    assertEquals(0, VoicePlacement.VOWEL.vowelDelay(NA, 0.171));
  }

  @Test
  void theConsonantComesFirstWhenItIsOnTheGrid() {
    assertEquals(0.013, VoicePlacement.CONSONANT.vowelDelay(TA, 0.3), 1e-9);
    assertEquals(0.060, VoicePlacement.CONSONANT.vowelDelay(NA, 0.3), 1e-9);
  }

  /** P = 0.65 x + 0.25 y: for x 15 and 70 ms with equal y, the shift is 0.35 times 55 ms. */
  @Test
  void marcusPutsALongConsonantEarlier() {
    double x = 0.013 - 0.060;
    double ta = VoicePlacement.MARCUS.vowelDelay(TA, 0.100 + 0.013);
    double na = VoicePlacement.MARCUS.vowelDelay(NA, 0.100 + 0.060);
    assertEquals(0.35 * x, ta - na, 1e-9);
    assertEquals(0, ta, 0.001, "a short ta stays");
  }

  @Test
  void aLongKarvaiDoesNotDragTheBeatAlong() {
    double plain = VoicePlacement.MARCUS.vowelDelay(TA, 0.5);
    assertEquals(plain, VoicePlacement.MARCUS.vowelDelay(TA, 5), 1e-9);
    assertTrue(-plain <= VoicePlacement.MARCUS.mostAheadSeconds());
  }

  @ParameterizedTest
  @EnumSource(VoicePlacement.class)
  void theLeadNeverExceedsWhatTheVoicePromises(VoicePlacement placement) {
    FormantVoice voice =
        SpokenLine.voice(new VoiceSettings(VoicePerson.LOW, VoiceEffort.FULL, placement, 1, 3));
    SpokenLine line = new SpokenLine();
    List.of("jham", "ta", "na", "ri", "ka", "dhin").forEach(sollu -> line.say(sollu, 300));
    for (int i = 0; i < line.cues().size(); i++) {
      SolluWave sound = line.sound(voice, i);
      assertTrue(sound.leadFrames() >= 0 && sound.leadFrames() <= voice.longestLeadFrames());
    }
  }

  @Test
  void placementMovesTheWaveAndNothingElse() {
    SpokenLine line = new SpokenLine().say("na", 300);
    SolluWave vowel = sound(line, VoicePlacement.VOWEL);
    SolluWave consonant = sound(line, VoicePlacement.CONSONANT);
    assertEquals(60 * SpokenLine.MS, vowel.leadFrames() - consonant.leadFrames());
  }

  private static SolluWave sound(SpokenLine line, VoicePlacement placement) {
    VoiceSettings settings = new VoiceSettings(VoicePerson.LOW, VoiceEffort.FULL, placement, 1, 3);
    return SpokenLine.voice(settings).say(Optional.empty(), line.cues().get(0), Optional.empty());
  }
}
