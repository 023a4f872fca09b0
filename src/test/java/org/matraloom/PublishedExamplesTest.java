package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.kanakku.Landing;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * Worked examples printed by others, written as scores and checked.
 *
 * <p>Figures are quoted as figures; the words are the lexicon's. Two of the examples are misprints,
 * and the check must find them.
 */
class PublishedExamplesTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final String ADI = "tala adi\ntempo 60\n";
  private static final String ADI_TWO_KALAI = "tala adi\nkalai 2\ntempo 60\n";

  /** Lecture "Seamless Korvais - The Elegance of Numbers": (3+3, 5+3, 7) x 3, begun after 1. */
  @Test
  void threeTimesTwentyOneBegunAfterOne() {
    String song = "Song = (3 3  5 3  7) x3\n";
    Landing oneKalai = check(ADI + "start +1/4\n" + song);
    assertLands(oneKalai, 63);
    assertEquals(Ratio.of(16), oneKalai.performance().endBeat());
    Landing twoKalai = check(ADI_TWO_KALAI + "start +1/8\n" + song);
    assertLands(twoKalai, 63);
    assertEquals(Ratio.of(16), twoKalai.performance().endBeat());
    assertMisses(check(ADI + song), -1);
  }

  /** Forum thread "Structuring a Korvai in the thani", rasikas.org p=380684. */
  @ParameterizedTest
  @CsvSource({
    // figures, matras, cycles of 64
    "24 5*3 5*2 15, 64, 1",
    "24 5*6 5*4 5*3 5*2 9(1)9(1)9, 128, 2",
    "24 5*6 5*4 5*3 5*2 7(4)7(4)7, 128, 2",
    "24 5*6 5*4 5*3 4*2 1 (10) x3, 128, 2"
  })
  void cyclesOfSixtyFour(String figures, int matras, int cycles) {
    Landing landing = check(ADI_TWO_KALAI + "Song = " + figures + "\n");
    assertLands(landing, matras);
    assertEquals(Ratio.of(cycles), landing.avartanas());
    assertLands(check(ADI + "Song = " + figures + "\n"), matras);
  }

  /** The same thread: what the parts come to. */
  @ParameterizedTest
  @CsvSource({
    "5*3 5*2, 25",
    "5*6 5*4 5*3 5*2, 75",
    "9(1)9(1)9, 29",
    "7(4)7(4)7, 29",
    "5*6 5*4 5*3 4*2 1, 74",
    "(10) x3, 30",
    "3(1)4(1)5, 14",
    "4(1)5(1)6, 17",
    "5(1)6(1)7, 20",
    "5*6 5*5 5*4 5*3 5*2, 100",
    "5*6 5*4 5*2, 60"
  })
  void partsOfAKorvai(String figures, int matras) {
    assertEquals(Ratio.of(matras), check(ADI + "Song = " + figures + "\n").matras());
  }

  /**
   * Lesson page yogeswaran.in/000013-2: three times 70 with karvais of 7 between, 224 matras, 56
   * aksharas, 7 avartanas. The page prints the last line of the 70 as 2 2 5; only 7 gives its sum.
   */
  @Test
  void theLastLineOfTheSevensIsMisprinted() {
    assertLands(check(ADI + sevens("2 2 3")), 224);
    assertEquals(Ratio.of(7), check(ADI + sevens("2 2 3")).avartanas());
    Landing printed = check(ADI + sevens("2 2 5"));
    assertEquals(Ratio.of(230), printed.matras());
    assertMisses(printed, 6);
    assertEquals(Ratio.of(3, 2), printed.missBeats());
  }

  private static String sevens(String lastLine) {
    return "Part = 8 8 4 4 4  6 6 3 3 3  4 4 2 2 2  "
        + lastLine
        + "\n"
        + "Song = Part ; ; ; , Part ; ; ; , Part\n";
  }

  /**
   * Lesson page yogeswaran.in, "Adi tala: 2 avartana vilamba tisra korvai": the second line begins
   * on akshara 6, the first turn, the third on the ring finger of the second avartana.
   */
  @Test
  void twoLinesAtFourAndOneAtThree() {
    Landing landing =
        check(
            ADI
                + "Line = (5) x4\nLast = (6) x3\n"
                + "perform\n  Line x2 nadai 4\n  Last nadai 3\n");
    assertTrue(landing.lands());
    assertEquals(List.of("20", "20", "18"), matrasOf(landing));
    assertEquals(List.of("5", "5", "6"), beatsOf(landing));
    assertEquals(Ratio.of(2), landing.avartanas());
    assertEquals(List.of("samam", "beat 6", "beat 3"), placesOf(landing));
  }

  /**
   * Forum post rasikas.org p=225235. Rupaka of 12 matras is shown over three units, as clap, clap,
   * wave (lvnaga.wordpress.com, August 2014), which is the formula U O.
   */
  @Test
  void threeAvartanasOfRupaka() {
    Landing landing = check("tala U O\ntempo 60\nSong = 4 4 4 1 3  3 3 3 1 3  2 2 2 1\n");
    assertLands(landing, 36);
    assertEquals(Ratio.of(3), landing.avartanas());
  }

  /** The same post, khanda chapu of 10 matras; its dots are karvais of 1. */
  @Test
  void sixCyclesOfKhandaChapu() {
    Landing landing =
        check(
            "tala khanda chapu\ntempo 60\n"
                + "Song = 6(1)6(1)6 1 3  5(1)5(1)5 1 3  4(1)4(1)4 1\nperform\n  Song nadai 2\n");
    assertLands(landing, 60);
    assertEquals(Ratio.of(6), landing.avartanas());
  }

  /** A vishama yati of one avartana: mridangams.com, chapter 5. */
  @Test
  void anIrregularShapeThatFillsAdi() {
    Landing landing = check(ADI + "Song = 5 4 7 9 3 4 ||\n");
    assertLands(landing, 32);
    assertEquals(Ratio.ONE, landing.avartanas());
  }

  /**
   * Exam answer on questions.collegedunia.com, "Adi Tala korvai notation": 14 and 5(2)5(2)5 are
   * placed in 32 with a start 1 matra late. They are 33, so that they overshoot by 1 from samam and
   * end at 34 from the start given; the start that lands is 1 matra before samam.
   */
  @Test
  void theExamAnswerOvershoots() {
    String song = "Song = 14  5(2)5(2)5\n";
    Landing fromSamam = check(ADI + song);
    assertEquals(Ratio.of(33), fromSamam.matras());
    assertMisses(fromSamam, 1);
    Landing asPrinted = check(ADI + "start +1/4\n" + song);
    assertEquals(Ratio.of(34), asPrinted.performance().endBeat().times(4));
    assertMisses(asPrinted, 2);
    assertEquals(Ratio.of(31, 4), asPrinted.startThatLands());
    assertLands(check(ADI + "start -1/4\n" + song), 33);
    assertLands(check(ADI + "Song = 13  5(2)5(2)5\n"), 32);
  }

  /** Common practice: 20 + 20 + 16 beats; at 80 beats a minute 0, 15, 30 and 42 seconds. */
  @Test
  void eightyIsTheOnlyLengthNearItThatFits() {
    for (int matras = 70; matras <= 90; matras++) {
      assertEquals(matras == 80, check(ADI + matras(matras) + rounds(4, 4, 5)).lands());
    }
    Landing landing = check("tala adi\ntempo 80\n" + matras(80) + rounds(4, 4, 5));
    assertEquals(List.of("20", "20", "16"), beatsOf(landing));
    Ratio secondsPerBeat = landing.performance().composition().tempo().secondsOf(Ratio.ONE);
    List<String> seconds =
        landing.performance().spans().stream()
            .map(span -> span.endBeat().times(secondsPerBeat).toString())
            .toList();
    assertEquals(List.of("15", "30", "42"), seconds);
  }

  /** Common practice: tadiginatom three times, with the gap between chosen to fit the start. */
  @ParameterizedTest
  @CsvSource({
    // gap, matras, start
    "0, 15, beat 5 1/4",
    "1, 17, beat 4 3/4",
    "2, 19, beat 4 1/4",
    "3, 21, beat 3 3/4",
    "4, 23, beat 3 1/4"
  })
  void tadiginatomThreeTimesWithAGap(int gap, int matras, String start) {
    String song = "Song = 5(" + gap + ")5(" + gap + ")5\n";
    Landing landing = check(ADI + "start " + start + "\n" + song);
    assertLands(landing, matras);
    assertEquals(Ratio.of(8), landing.performance().endBeat());
    Avartana adi = landing.performance().composition().avartana();
    assertTrue(adi.say(check(ADI + song).startThatLands()).startsWith(start));
  }

  /** Arithmetic: a korvai of 64 made for 4-4-4, said 4-4-5, and four ways to mend it. */
  @Test
  void anOldSixtyFourSaidWithTheLastRoundAtFive() {
    assertTrue(check(ADI + matras(64) + rounds(4, 4, 4)).lands());
    Landing landing = check(ADI + matras(64) + rounds(4, 4, 5));
    assertFalse(landing.lands());
    assertEquals("44 4/5", landing.beats().toMixed());
    assertEquals(List.of("16", "16", "64/5"), beatsOf(landing));
    assertEquals(
        "beat 5 4/5",
        landing.performance().composition().avartana().say(landing.performance().endBeat()));
    assertTrue(check(ADI + matras(80) + rounds(4, 4, 5)).lands());
    assertTrue(check(ADI + "start beat 7\n" + matras(60) + rounds(4, 4, 5)).lands());
    assertTrue(
        check(
                ADI
                    + matras(64)
                    + "perform\n  Song x2 nadai 4\n  rest 16 matras nadai 5\n  Song nadai 5\n")
            .lands());
    assertTrue(check(ADI + "start beat 4 1/5\n" + matras(64) + rounds(5)).lands());
  }

  /** Arithmetic: the same with the last round in tisra. */
  @Test
  void theTisraVersion() {
    Landing landing = check(ADI + matras(64) + rounds(4, 4, 3));
    assertFalse(landing.lands());
    assertEquals(List.of("16", "16", "64/3"), beatsOf(landing));
    assertLands(check(ADI + matras(48) + rounds(4, 4, 3)), 144);
    Landing longer = check(ADI + matras(96) + rounds(4, 4, 3));
    assertLands(longer, 288);
    assertEquals(List.of("24", "24", "32"), beatsOf(longer));
    assertEquals(Ratio.of(10), longer.avartanas());
    for (int between = 49; between < 96; between++) {
      assertFalse(check(ADI + matras(between) + rounds(4, 4, 3)).lands());
    }
  }

  /** Arithmetic: the lengths up to 160 that end on an eduppu after samam, from samam. */
  @ParameterizedTest
  @CsvSource({
    // eduppu, nadais of the rounds, lengths that land
    "+1/2, 4 4 5, 35 115",
    "+1 1/2, 4 4 5, 25 105",
    "+1, 4 4 5, 70 150",
    "+1/4, 4 4 5, ''",
    "+3/4, 4 4 5, ''",
    "+1/2, 4 4 4, 22 54 86 118 150",
    "+1 1/2, 4 4 4, 2 34 66 98 130",
    "+3/4, 4 4 4, 1 33 65 97 129"
  })
  void lengthsThatEndOnAnEduppu(String eduppu, String nadais, String lengths) {
    int[] rounds = List.of(nadais.split(" ")).stream().mapToInt(Integer::parseInt).toArray();
    StringBuilder landing = new StringBuilder();
    for (int matras = 1; matras <= 160; matras++) {
      String score = ADI + "eduppu " + eduppu + "\n" + matras(matras) + rounds(rounds);
      landing.append(check(score).lands() ? " " + matras : "");
    }
    assertEquals(lengths, landing.toString().strip());
  }

  /** Arithmetic: where a quarter cannot be reached from samam, another start reaches it. */
  @Test
  void quartersAreReachedFromQuarters() {
    for (String quarter : List.of("+1/4", "+3/4")) {
      String places = "start " + quarter + "\neduppu " + quarter + "\n";
      assertTrue(check(ADI + places + matras(80) + rounds(4, 4, 5)).lands());
    }
    assertTrue(check(ADI + "start +1/4\neduppu +3/4\n" + matras(35) + rounds(4, 4, 5)).lands());
  }

  /** "4-3-6" Adi korvai, an article on three renditions of 96 units. */
  @Test
  void threeDensitiesOfNinetySix() {
    Landing landing = check(ADI + matras(96) + rounds(3, 4, 6));
    assertTrue(landing.lands());
    assertEquals(List.of("32", "24", "16"), beatsOf(landing));
    assertEquals(Ratio.of(9), landing.avartanas());
    assertEquals(List.of("samam", "samam", "samam"), placesOf(landing));
  }

  /** Tamil lesson page on adi: 32 misra groups are 224 matras, 56 beats, 7 avartanas. */
  @Test
  void thirtyTwoGroupsOfSeven() {
    Landing landing = check(ADI + "Song = (7) x32\n");
    assertLands(landing, 224);
    assertEquals(Ratio.of(56), landing.beats());
    assertEquals(Ratio.of(7), landing.avartanas());
  }

  /**
   * Tamil lesson page on misra chapu: a phrase of 5 beats ends on samam when it starts after 2
   * beats, led in by two takitas, or by nine in one cycle more.
   */
  @ParameterizedTest
  @CsvSource({"2, 1", "9, 2"})
  void aPhraseOfFiveBeatsLedInByTakita(int takitas, int cycles) {
    Landing alone =
        check("tala misra chapu\ntempo 60\nstart beat 3\nSong = (3) x5\nperform\n  Song nadai 3\n");
    assertLands(alone, 15);
    assertEquals(Ratio.of(5), alone.beats());
    Landing led =
        check(
            "tala misra chapu\ntempo 60\nLead = (takita) x"
                + takitas
                + "\nSong = (3) x5\nperform\n  Lead nadai 3\n  Song nadai 3\n");
    assertTrue(led.lands());
    assertEquals(Ratio.of(cycles), led.avartanas());
  }

  /** Arithmetic: 7 + 6 + 5 are 4 1/2 beats at four and 3 3/5 at five. */
  @Test
  void onePhraseBarredTwice() {
    Landing landing = check(ADI + "Song = 7 6 5\n" + rounds(4, 5));
    assertEquals(List.of("18", "18"), matrasOf(landing));
    assertEquals(List.of("9/2", "18/5"), beatsOf(landing));
  }

  /** Arithmetic: 10 matras fill one cycle of seven beats in 4-4-5, and 80 fill eight. */
  @ParameterizedTest
  @CsvSource({"10, 7, 1", "80, 56, 8"})
  void sevenBeatsInFourFourFive(int matras, int beats, int cycles) {
    Landing landing = check("tala misra chapu\ntempo 60\n" + matras(matras) + rounds(4, 4, 5));
    assertTrue(landing.lands());
    assertEquals(Ratio.of(beats), landing.beats());
    assertEquals(Ratio.of(cycles), landing.avartanas());
  }

  /** The tala chart, scribd.com document 501086532, spells adi as 4+2+4=8; the claim is caught. */
  @Test
  void theMisprintedSumOfAdiIsCaught() {
    assertTrue(read("tala 4+2+2 = 8\ntempo 60\nSong = 4\n").composition().isPresent());
    Reading misprint = read("tala 4+2+4 = 8\ntempo 60\nSong = 4\n");
    assertTrue(misprint.composition().isEmpty());
    assertTrue(misprint.format().contains("10 aksharas, not 8"), misprint.format());
  }

  /** Lengths of any size, written as groups that the lexicon has words for. */
  private static String matras(int matras) {
    return "Song = " + "9 ".repeat(matras / 9) + (matras % 9 == 0 ? "" : matras % 9) + "\n";
  }

  private static String rounds(int... nadais) {
    StringBuilder plan = new StringBuilder("perform\n");
    for (int nadai : nadais) {
      plan.append("  Song nadai ").append(nadai).append('\n');
    }
    return plan.toString();
  }

  private static void assertLands(Landing landing, int matras) {
    assertEquals(Ratio.ZERO, landing.missMatras());
    assertTrue(landing.lands());
    assertEquals(Ratio.of(matras), landing.matras());
  }

  private static void assertMisses(Landing landing, int missMatras) {
    assertFalse(landing.lands());
    assertEquals(Ratio.of(missMatras), landing.missMatras());
  }

  private static List<String> matrasOf(Landing landing) {
    return landing.performance().rounds().stream().map(r -> r.matras().toString()).toList();
  }

  private static List<String> beatsOf(Landing landing) {
    return landing.performance().rounds().stream().map(r -> r.beats().toString()).toList();
  }

  private static List<String> placesOf(Landing landing) {
    Avartana avartana = landing.performance().composition().avartana();
    return landing.performance().rounds().stream()
        .map(Span.Round::startBeat)
        .map(avartana::say)
        .toList();
  }

  private static Landing check(String score) {
    Reading reading = read(score);
    assertEquals("", reading.format(), score);
    return Landing.of(Performance.of(reading.composition().orElseThrow()));
  }

  private static Reading read(String score) {
    return ScoreReader.read(score, "example.loom", LEXICON);
  }
}
