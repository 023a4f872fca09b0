package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The vowel onset lies on the grid, as measured from the rendered wave. */
class FormantVoiceOnsetTest {

  /**
   * One sollu or more of every class: dental, retroflex and velar stops with and without voice,
   * breathy stops, affricates, nasals, tap, lateral and the closed ones.
   */
  @ParameterizedTest
  @CsvSource({
    "ta, VOICE",
    "ka, VOICE",
    "ki, VOICE",
    "ku, VOICE",
    "da, VOICE",
    "di, VOICE",
    "du, VOICE",
    "ga, VOICE",
    "gi, VOICE",
    "ṭa, VOICE",
    "ḍa, VOICE",
    "dhin, VOICE",
    "ju, VOICE",
    "jo, VOICE",
    "jham, VOICE",
    "tom, VOICE",
    "tam, VOICE",
    "tei, VOICE",
    "na, OPENING",
    "nu, OPENING",
    "mi, OPENING",
    "ma, OPENING",
    "ṇa, OPENING",
    "nam, OPENING",
    "ri, VOICE",
    "ru, VOICE",
    "la, OPENING"
  })
  void isWithinFiveMilliseconds(String sollu, VowelOnset.Mark mark) {
    for (VoicePerson person : VoicePerson.values()) {
      for (int ms : new int[] {60, 171}) {
        VoiceSettings settings =
            new VoiceSettings(person, VoiceEffort.FULL, VoicePlacement.VOWEL, 1, 3);
        SpokenLine line =
            new SpokenLine().say("ta", ms).say(sollu, ms).say("ka", ms).say(sollu, ms);
        float[] wave = line.render(SpokenLine.voice(settings));
        for (int i : new int[] {1, 3}) {
          double onset = VowelOnset.frame(wave, (int) line.gridFrame(i), mark);
          double error = (onset - line.gridFrame(i)) / SpokenLine.MS;
          assertEquals(0, error, 5, sollu + " by " + person + " in " + ms + " ms");
        }
      }
    }
  }
}
