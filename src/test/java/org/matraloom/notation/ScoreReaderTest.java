package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.score.Composition;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class ScoreReaderTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static final String GUTTER_SONG =
      """
      # a note
      title   Gutter Song
      tala    rupaka               # any of the 35 by name
      kalai   1
      tempo   66                   # beats a minute
      start   sam                  # where the first round begins
      eduppu  sam                  # where the last matra must end

      Drip  = takita , takita ,
      Rain  = takadimi takajunu
      Fall  = tadiginatom .
      Tail  = 9(1)9(1)9
      Song  = Drip Rain (Fall) x3 [takadimi takadimi] Tail

      perform
        Song x2   nadai 4
        Song      nadai 5
      """;

  private static Composition read(String text) {
    Reading reading = ScoreReader.read(text, "test.loom", LEXICON);
    assertTrue(reading.composition().isPresent(), reading.format());
    return reading.composition().get();
  }

  @Test
  void aWholeScoreIsRead() {
    Composition song = read(GUTTER_SONG);
    assertEquals("Gutter Song", song.title());
    assertEquals("chatusra rupaka", song.avartana().tala().name());
    assertEquals(Ratio.of(66), song.tempo().beatsPerMinute());
    assertEquals(
        List.of("Drip", "Rain", "Fall", "Tail", "Song"), List.copyOf(song.phrases().keySet()));
    assertEquals(
        List.of(new Step.Say("Song", 2, 4, 1), new Step.Say("Song", 1, 5, 1)), song.plan());
    // 8 + 8 + 3 * 6 + 4 + 29 matras
    assertEquals(Ratio.of(67), Performance.of(song).rounds().get(0).matras());
  }

  @Test
  void whatIsLeftOutHasItsUsualValue() {
    Composition song = read("tala adi\nRain = ta\nSong = Rain");
    assertEquals("", song.title());
    assertEquals(1, song.avartana().kalai());
    assertEquals(FingerCustom.RESTART, song.avartana().custom());
    assertEquals(Tempo.of(60), song.tempo());
    assertEquals(Ratio.ZERO, song.startBeat());
    assertEquals(Ratio.ZERO, song.eduppuBeat());
    assertEquals(List.of(new Step.Say("Song", 1, 4, 1)), song.plan());
  }

  @ParameterizedTest
  @CsvSource({
    "66, 66, 1",
    "37.5, 75, 2",
    "66.667, 66667, 1000",
    "75/2, 75, 2",
    "112 1/2, 225, 2",
    "5, 5, 1",
    "600, 600, 1"
  })
  void temposAreExact(String written, long num, long den) {
    Composition song = read("tala adi\ntempo " + written + "\nSong = ta");
    assertEquals(Ratio.of(num, den), song.tempo().beatsPerMinute());
  }

  @ParameterizedTest
  @CsvSource({
    "sam, 1, 0, 1",
    "samam, 2, 0, 1",
    "beat 1, 1, 0, 1",
    "beat 5, 1, 4, 1",
    "beat 5, 2, 4, 1",
    "beat 16, 2, 15, 1",
    "beat 4 1/5, 1, 16, 5",
    "beat 8 35/36, 1, 287, 36",
    "beat 1.5, 1, 1, 2",
    "+0, 1, 0, 1",
    "+1/2, 1, 1, 2",
    "+1/2, 2, 1, 1",
    "+1/2, 4, 2, 1",
    "+1 1/2, 1, 3, 2",
    "-1/4, 1, -1, 4",
    "-1/4, 2, -1, 2",
    "−1 1/2, 1, -3, 2",
    "- 7 3/4, 1, -31, 4"
  })
  void placesAreReadInBeats(String written, int kalai, long num, long den) {
    Composition song =
        read(
            "kalai "
                + kalai
                + "\nstart "
                + written
                + "\neduppu "
                + written
                + "\ntala adi\nSong = ta");
    assertEquals(Ratio.of(num, den), song.startBeat());
    assertEquals(Ratio.of(num, den), song.eduppuBeat());
  }

  /**
   * Desadi begins 1 1/2 aksharas after samam (ajsriram.blogspot.com, January 2004): in nadai 4 that
   * is 6 matras in one kalai and 12 in two, by matras = aksharas times gati times kalai.
   */
  @ParameterizedTest
  @CsvSource({"1, 6", "2, 12"})
  void anEduppuInAksharasIsSoManyMatras(int kalai, int matras) {
    Composition song = read("tala adi\nkalai " + kalai + "\neduppu +1 1/2\nSong = ta");
    assertEquals(Ratio.of(matras), song.eduppuBeat().times(4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Song ! Say[phrase=Song, times=1, nadai=4, kalam=1]",
        "Song x2 nadai 5 kalam 3 ! Say[phrase=Song, times=2, nadai=5, kalam=3]",
        "Song kalam 2 nadai 9 x 3 ! Say[phrase=Song, times=3, nadai=9, kalam=2]",
        "Song nadai khanda ! Say[phrase=Song, times=1, nadai=5, kalam=1]",
        "Song gati Tisram ! Say[phrase=Song, times=1, nadai=3, kalam=1]",
        "Song nade mishra ! Say[phrase=Song, times=1, nadai=7, kalam=1]",
        "Song gathi chaturasra ! Say[phrase=Song, times=1, nadai=4, kalam=1]",
        "Song nadai sankeerna kaalam 2 ! Say[phrase=Song, times=1, nadai=9, kalam=2]",
        "rest 2 beats ! RestBeats[beats=2]",
        "rest 1 beat ! RestBeats[beats=1]",
        "rest 2 1/2 beats ! RestBeats[beats=5/2]",
        "Rest 1/5 beats ! RestBeats[beats=1/5]",
        "rest 16 matras nadai 5 ! RestMatras[matras=16, nadai=5]",
        "rest 1 matra nadai khanda ! RestMatras[matras=1, nadai=5]",
        "until beat 1 ! Until[place=0]",
        "until sam ! Until[place=0]",
        "until beat 4 1/5 ! Until[place=16/5]",
        "until +1/2 ! Until[place=1/2]",
        "until -1/2 ! Until[place=15/2]"
      })
  void linesOfThePlanAreRead(String line, String step) {
    Composition song = read("tala adi\nSong = ta\nPerform\n" + line + "\n  Song");
    assertEquals(step, song.plan().get(0).toString());
  }

  @Test
  void phrasesMayBeCalledLikeKeywords() {
    Composition song =
        read("tala adi\nTala = ta\nRest = ka\nPerform = Rest\n  Tala\nperform\n Rest\n Tala x2");
    assertEquals(
        List.of(new Step.Say("Rest", 1, 4, 1), new Step.Say("Tala", 2, 4, 1)), song.plan());
  }

  @Test
  void headersAreReadInAnyOrderAndCase() {
    Composition song =
        read(
            "Fingers Return\nTempo: 90\n  kalai = 2\nTITLE : Weir #1\nTala\u00a0Misra Jhampa = 10"
                + "\nSong = ta");
    assertEquals("Weir", song.title());
    assertEquals("misra jhampa", song.avartana().tala().name());
    assertEquals(2, song.avartana().kalai());
    assertEquals(FingerCustom.RETURN, song.avartana().custom());
    assertEquals(Tempo.of(90), song.tempo());
  }

  @Test
  void aPhraseNobodySaysIsAWarningOnly() {
    Reading reading =
        ScoreReader.read("tala adi\nRain = ta\nSong = ka\nperform\n Song", "a", LEXICON);
    assertTrue(reading.composition().isPresent());
    assertEquals(
        List.of(Problem.Severity.WARNING),
        reading.problems().stream().map(Problem::severity).toList());
  }

  @Test
  void aSolluListOfTheUsersIsObeyed() {
    Lexicon own = LEXICON.plus("kran : kran : k r a n\n2 = ta kran", "own.txt");
    Reading reading = ScoreReader.read("tala adi\nSong = takran 2", "a", own);
    assertTrue(reading.composition().isPresent(), reading::format);
  }
}
