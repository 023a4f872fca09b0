package org.matraloom.kanakku;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Place;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.spell.ChapuTala;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Where performances land, against tables added up apart from the program.
 *
 * <p>The rule is common practice: start + rounds + silences = eduppu, whole avartanas left aside.
 */
class LandingTest {

  private static final Avartana ADI = cycle(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA));
  private static final Avartana RUPAKA = cycle(TalaFamily.RUPAKA.tala(Jati.CHATUSRA));
  private static final Avartana MISRA = cycle(ChapuTala.MISRA.tala());
  private static final Avartana KHANDA = cycle(ChapuTala.KHANDA.tala());

  /** Rupaka shown over three units, as clap, clap, wave: lvnaga.wordpress.com, August 2014. */
  private static final Avartana RUPAKA_OF_THREE =
      cycle(new Tala("U O", List.of(new Anga.Anudrutam(), new Anga.Drutam())));

  /** Twice at 4 and once at 5, to land on samam: where the rounds begin. */
  @ParameterizedTest
  @CsvSource({
    // matras, beats, start, round 2, round 3, each as it is counted
    "10, 7, beat 2, beat 4 1/2, beat 7",
    "20, 14, beat 3, beat 8, beat 5",
    "30, 21, beat 4, beat 3 1/2, beat 3",
    "40, 28, beat 5, beat 7, samam",
    "60, 42, beat 7, beat 6, beat 5",
    "70, 49, beat 8, beat 1 1/2, beat 3",
    "80, 56, samam, beat 5, samam"
  })
  void freeStartsInAdi(int matras, int beats, String start, String second, String third) {
    Landing fromSamam = landing(ADI, Ratio.ZERO, matras, 4, 4, 5);
    assertEquals(start, ADI.say(fromSamam.startThatLands()));
    Landing landing = landing(ADI, fromSamam.startThatLands(), matras, 4, 4, 5);
    assertTrue(landing.lands());
    assertEquals(Ratio.of(beats), landing.beats());
    assertEquals(Ratio.of(beats, 8), landing.avartanas());
    assertEquals(Ratio.of(3L * matras), landing.matras());
    List<String> places =
        landing.performance().rounds().stream().map(round -> ADI.say(round.startBeat())).toList();
    assertEquals(List.of(start, second, third), places);
  }

  /** A phrase of an odd multiple of 5 starts inside a beat; its round at 5 begins on a beat. */
  @Test
  void aMultipleOfFiveChangesNadaiOnABeat() {
    for (int matras = 5; matras <= 400; matras += 5) {
      Ratio start = landing(ADI, Ratio.ZERO, matras, 4, 4, 5).startThatLands();
      Landing landing = landing(ADI, start, matras, 4, 4, 5);
      assertTrue(landing.lands());
      assertEquals(matras % 2 == 0, start.isWhole());
      List<Entrance> entrances = Entrance.of(landing.performance());
      assertEquals(
          List.of(false, false, true), entrances.stream().map(Entrance::changesNadai).toList());
      assertFalse(entrances.get(2).insideBeat());
    }
  }

  /** The shortest phrase that fits from samam to samam. */
  @ParameterizedTest
  @CsvSource({
    // nadais, adi, misra chapu, khanda chapu, rupaka of three beats, rupaka of six
    "4 4 4, 32, 28, 20, 4, 8",
    "4 4 5, 80, 10, 50, 30, 60",
    "4 4 3, 48, 42, 6, 18, 36",
    "4 4 6, 12, 21, 15, 9, 9",
    "4 4 7, 112, 98, 70, 14, 28",
    "4 4 9, 144, 126, 90, 54, 108",
    "3 4 6, 32, 28, 20, 4, 8",
    "4 3 5, 480, 420, 300, 180, 360",
    "4 5 6, 480, 420, 300, 180, 360"
  })
  void shortestPhrasesFromSamamToSamam(
      String nadais, int adi, int misra, int khanda, int three, int six) {
    int[] rounds = List.of(nadais.split(" ")).stream().mapToInt(Integer::parseInt).toArray();
    assertEquals(adi, shortest(ADI, rounds));
    assertEquals(misra, shortest(MISRA, rounds));
    assertEquals(khanda, shortest(KHANDA, rounds));
    assertEquals(three, shortest(RUPAKA_OF_THREE, rounds));
    assertEquals(six, shortest(RUPAKA, rounds));
  }

  private static int shortest(Avartana avartana, int... nadais) {
    int matras = 1;
    while (!landing(avartana, Ratio.ZERO, matras, nadais).lands()) {
      matras++;
    }
    return matras;
  }

  @Test
  void everyRoundIsWholeAvartanasAtOneHundredAndSixty() {
    Landing landing = landing(ADI, Ratio.ZERO, 160, 4, 4, 5);
    assertTrue(landing.lands());
    assertEquals(
        List.of(Ratio.of(5), Ratio.of(5), Ratio.of(4)),
        landing.performance().rounds().stream().map(round -> round.beats().dividedBy(8)).toList());
    assertTrue(
        Entrance.of(landing.performance()).stream()
            .noneMatch(entrance -> entrance.insideAvartana() || entrance.insideBeat()));
  }

  @ParameterizedTest
  @CsvSource({
    // matras at 4 a beat, miss in quarter beats: the nearer side, late where both are equal
    "32, 0",
    "33, 1",
    "31, -1",
    "48, 16",
    "47, 15",
    "49, -15",
    "1, 1",
    "64, 0"
  })
  void theMissIsTheNearerSide(int matras, int missQuarters) {
    Landing landing = landing(ADI, Ratio.ZERO, matras, 4);
    assertEquals(Ratio.of(missQuarters, 4), landing.missBeats());
    assertEquals(Ratio.of(missQuarters), landing.missMatras());
    assertEquals(missQuarters == 0, landing.lands());
  }

  @Test
  void theMissIsCountedInMatrasOfTheLastRound() {
    Landing landing = landing(ADI, Ratio.ZERO, 64, 4, 4, 5);
    assertEquals(Ratio.of(224, 5), landing.beats());
    assertEquals(Ratio.of(-16, 5), landing.missBeats());
    assertEquals(Ratio.of(-16), landing.missMatras());
    assertEquals(Ratio.of(28, 5), landing.avartanas());
  }

  /** Whatever misses lands from the start that is offered, with every start and eduppu. */
  @Test
  void theStartThatLandsLands() {
    int missed = 0;
    for (int matras = 1; matras < 200; matras++) {
      Ratio start = Ratio.of(matras % 11 - 4, 4);
      Ratio eduppu = Ratio.of(matras % 7 - 2, 2);
      Avartana avartana = matras % 2 == 0 ? MISRA : ADI;
      Step[] plan = {say(2, 4, 1), new Step.RestMatras(3, 5), say(1, 5, 2)};
      Landing landing = Landing.of(perform(avartana, start, eduppu, matras, plan));
      assertTrue(landing.startCanMend());
      missed += landing.lands() ? 0 : 1;
      Ratio better = landing.startThatLands();
      assertTrue(better.signum() >= 0 && better.compareTo(Ratio.of(avartana.beats())) < 0);
      assertTrue(Landing.of(perform(avartana, better, eduppu, matras, plan)).lands());
    }
    assertTrue(missed > 100, "misses were met: " + missed);
  }

  /** The end is fixed by the place waited for, so no start can be offered. */
  @Test
  void noStartMendsAPlanThatWaits() {
    Step[] plan = {say(1, 4, 1), new Step.Until(Ratio.ZERO), say(1, 4, 1)};
    Landing landing = Landing.of(perform(ADI, Ratio.ZERO, Ratio.ZERO, 33, plan));
    assertFalse(landing.lands());
    assertFalse(landing.startCanMend());
    for (int quarter = 0; quarter < 32; quarter++) {
      Ratio start = Ratio.of(quarter, 4);
      assertFalse(Landing.of(perform(ADI, start, Ratio.ZERO, 33, plan)).lands());
    }
  }

  @Test
  void aRoundThatBeginsInsideABeatOrAnAvartanaIsSeen() {
    List<Entrance> entrances = Entrance.of(landing(ADI, Ratio.ZERO, 25, 4, 4, 5).performance());
    assertEquals(List.of(false, true, true), entrances.stream().map(Entrance::insideBeat).toList());
    assertEquals(
        List.of(false, true, true), entrances.stream().map(Entrance::insideAvartana).toList());
    assertEquals(
        List.of(false, false, true), entrances.stream().map(Entrance::changesNadai).toList());
  }

  @Test
  void barsAreClaimsAboutTheFirstRound() {
    assertEquals(List.of(), claims(matras(16), bar(false, 1), matras(16), bar(true, 2)));
    List<FalseClaim> claims =
        claims(matras(16), bar(true, 1), matras(15), bar(false, 2), matras(2), bar(true, 3));
    assertEquals(
        List.of("1 at 4 misses by 4", "2 at 31/4 misses by -1/4", "3 at 33/4 misses by 1/4"),
        claims.stream()
            .map(
                claim ->
                    claim.bar().place().column()
                        + " at "
                        + claim.atBeat()
                        + " misses by "
                        + claim.missBeats())
            .toList());
  }

  @Test
  void onlyTheFirstFalseClaimsAreListed() {
    Element many = new Element.Repeat(Sequence.of(matras(3), bar(true, 1)), 500);
    assertEquals(FalseClaim.MOST, claims(many).size());
  }

  /** Arithmetic: 80 beats a minute at 5 a beat are 6 2/3 sollus a second. */
  @ParameterizedTest
  @CsvSource({
    "40, 2.7, 3.3",
    "50, 3.3, 4.2",
    "60, 4.0, 5.0",
    "70, 4.7, 5.8",
    "80, 5.3, 6.7",
    "90, 6.0, 7.5",
    "100, 6.7, 8.3",
    "110, 7.3, 9.2"
  })
  void sollusASecond(int beatsPerMinute, double inFour, double inFive) {
    Composition composition = landing(ADI, Ratio.ZERO, 80, 4, 4, 5).performance().composition();
    List<SpeechRate> rates =
        SpeechRate.of(Performance.of(composition.at(Tempo.of(beatsPerMinute))));
    assertEquals(List.of(4, 5), rates.stream().map(SpeechRate::matrasPerBeat).toList());
    assertEquals(inFour, rates.get(0).matrasPerSecond(), 0.051);
    assertEquals(inFive, rates.get(1).matrasPerSecond(), 0.051);
    assertEquals(rates.get(1).matrasPerSecond(), rates.get(1).fastestPerSecond(), 1e-12);
  }

  /** By hand: braces of five in kalam 2 hold 10 matras a beat, whatever the round holds. */
  @Test
  void bracesHaveARateOfTheirOwn() {
    assertEquals(
        List.of("10: 10.0, 10.0"), rates("tala adi\nA = {5: 5}\nperform\n  A nadai 4 kalam 2\n"));
    assertEquals(
        List.of("4: 4.0, 4.0", "7: 7.0, 14.0"),
        rates("tala adi\nA = 4 {7: 5 [taka]} 4\nperform\n  A nadai 4\n"));
    assertEquals(
        List.of("5: 5.0, 0.5"), rates("tala adi\nA = . ; ; ; . ; .\nperform\n  A nadai 5\n"));
  }

  /** 38 sollus a second are no longer hard; the terms are those of the constants. */
  @ParameterizedTest
  @CsvSource({
    "60, ''",
    "90, 'hard to say: up to 12.0'",
    "91, 'very hard to say: up to 12.1'",
    "120, 'very hard to say: up to 16.0'",
    "121, 'impossible to say: up to 16.1'",
    "288, 'impossible to say: up to 38.4'"
  })
  void whatNobodySaysIsCalledImpossible(int tempo, String told) {
    Performance performance =
        performance("tala adi\ntempo " + tempo + "\nA = 8\nperform\n  A nadai 4 kalam 2\n");
    assertEquals(
        told.isEmpty() ? "" : told + " sollus a second where a beat holds 8 matras",
        Remarks.onFastest(List.of(performance), SpeechRate.HARD_PER_SECOND).orElse(""));
  }

  private static List<String> rates(String score) {
    return SpeechRate.of(performance(score)).stream()
        .map(
            rate ->
                String.format(
                    Locale.ROOT,
                    "%d: %.1f, %.1f",
                    rate.matrasPerBeat(),
                    rate.matrasPerSecond(),
                    rate.fastestPerSecond()))
        .toList();
  }

  private static Performance performance(String score) {
    return Performance.of(
        ScoreReader.read(score, "", Lexicon.standard()).composition().orElseThrow());
  }

  private static List<FalseClaim> claims(Element... elements) {
    Composition composition =
        new Composition(
            "",
            ADI,
            Tempo.of(60),
            Ratio.ZERO,
            Ratio.ZERO,
            Map.of("Song", Sequence.of(elements)),
            List.of(say(2, 4, 1)));
    return FalseClaim.in(Performance.of(composition));
  }

  private static Element bar(boolean endsAvartana, int column) {
    return new Element.Bar(endsAvartana, new Place(1, column));
  }

  private static Element matras(int count) {
    return new Element.Word("ta", Collections.nCopies(count, new Sollu("ta", "ta")));
  }

  private static Step say(int times, int nadai, int kalam) {
    return new Step.Say("Song", times, nadai, kalam);
  }

  private static Landing landing(Avartana avartana, Ratio start, int matras, int... nadais) {
    List<Step> plan = new ArrayList<>();
    for (int nadai : nadais) {
      plan.add(say(1, nadai, 1));
    }
    return Landing.of(perform(avartana, start, Ratio.ZERO, matras, plan.toArray(Step[]::new)));
  }

  private static Performance perform(
      Avartana avartana, Ratio start, Ratio eduppu, int matras, Step... plan) {
    return Performance.of(
        new Composition(
            "",
            avartana,
            Tempo.of(60),
            start,
            eduppu,
            Map.of("Song", Sequence.of(matras(matras))),
            List.of(plan)));
  }

  private static Avartana cycle(Tala tala) {
    return Avartana.of(tala, 1, FingerCustom.RESTART);
  }
}
