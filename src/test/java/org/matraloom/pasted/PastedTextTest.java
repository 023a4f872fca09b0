package org.matraloom.pasted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Landing;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Texts as people send them; what is meant by each is common practice of typed lists. */
class PastedTextTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Composition piece(TidyScore tidy) {
    Reading reading = ScoreReader.read(tidy.score(), "tidy", LEXICON);
    assertEquals("", reading.format(), tidy::score);
    return reading.composition().orElseThrow();
  }

  private static Ratio matras(String text) {
    return Performance.of(piece(PastedText.tidy(text, LEXICON))).rounds().get(0).matras();
  }

  private static String guesses(String text) {
    return String.join("\n", PastedText.tidy(text, LEXICON).guesses());
  }

  /** 12 and 5 matras, each with its total behind it; said twice in four and once in five. */
  @Test
  void totalsStandInSquareBracketsTooAndRoundsInTheHeading() {
    String text = "Puddle (adi, 4-4-5)\n1) takadimi takajunu takita ,  [12]\ntadiginatom [5]\n";
    assertEquals(Ratio.of(17), matras(text));
    Composition piece = piece(PastedText.tidy(text, LEXICON));
    assertEquals("Puddle", piece.title());
    assertEquals(
        List.of(4, 4, 5), Performance.of(piece).rounds().stream().map(Span.Round::nadai).toList());
    assertTrue(guesses("takita [7]\n").contains("7"), guesses("takita [7]\n"));
  }

  @Test
  void aSentenceBeforeTheLinesTellsTitleAndSetting() {
    TidyScore tidy =
        PastedText.tidy(
            "A korvai for the rainy evening at Heron Stairs, in misra chapu tala, khanda nadai\n\n"
                + "takadimi takajunu\n",
            LEXICON);
    Composition piece = piece(tidy);
    assertEquals("A korvai for the rainy evening at Heron Stairs", piece.title());
    assertEquals("misra chapu", piece.avartana().tala().name());
    assertEquals(5, Performance.of(piece).rounds().get(0).nadai());
    assertTrue(String.join("\n", tidy.guesses()).contains("the title, from a sentence"));
    Composition named =
        piece(PastedText.tidy("Korvai \"Lantern Ferry\" in Rupaka\ntakadimi\n", LEXICON));
    assertEquals("Korvai Lantern Ferry", named.title());
    assertEquals("chatusra rupaka", named.avartana().tala().name());
    Composition greeted =
        piece(
            PastedText.tidy(
                "Hello, here is the korvai we did on Tuesday.\nGutter Korvai\ntakadimi\n",
                LEXICON));
    assertEquals("Gutter Korvai", greeted.title());
    Composition rain = piece(PastedText.tidy("Steps in the rain\ntakadimi\n", LEXICON));
    assertEquals("Steps in the rain", rain.title());
  }

  /** 6 + 10 + 14 and 8 + 3 + 8 + 3 + 8 are 60 matras: 15 beats of rupaka in four, 12 in five. */
  @Test
  void aMessageBecomesAScore() {
    TidyScore tidy =
        PastedText.tidy(
            """
            [28/11/26, 7:14 pm] Rain Teacher: Gutter song \ud83c\udf27\ufe0f
            Rupaka talam, khanda nadai
            1. takita tom , , (6)
            2) Takadimi takita tom - - (10)
            3. TAKADIMI takajunu takita tom _ _ (14)
            Mora:
            takita tadiginatom (3) x3 (30)
            """,
            LEXICON);
    Composition piece = piece(tidy);
    assertEquals("Gutter song", piece.title());
    assertEquals("chatusra rupaka", piece.avartana().tala().name());
    Span.Round round = Performance.of(piece).rounds().get(0);
    assertEquals(Ratio.of(60), round.matras());
    assertEquals(5, round.nadai());
    assertEquals(List.of("Line1", "Line2", "Line3", "Mora", "Song"), names(piece));
    assertTrue(Landing.of(Performance.of(piece)).lands());
    assertEquals(0, tidy.unread());
  }

  @Test
  void aHeadingMayHoldTalaKalaiAndTempoInBrackets() {
    String lines = "1) takadimi takita (7)\n2) ta , di , gi na tom\n";
    for (String heading :
        List.of(
            "Korvai for Tuesday (adi, 2 kalai, tempo 66)",
            "Korvai for Tuesday\nadi; kalai 2; 66 bpm")) {
      TidyScore tidy = PastedText.tidy(heading + "\n" + lines, LEXICON);
      Composition piece = piece(tidy);
      assertEquals("Korvai for Tuesday", piece.title());
      assertEquals(2, piece.avartana().kalai());
      assertEquals(Ratio.of(66), piece.tempo().beatsPerMinute());
      assertEquals(0, tidy.unread(), tidy.score());
    }
    TidyScore plain = PastedText.tidy("takita (3)\ntakadimi, takita, takadimi", LEXICON);
    assertEquals(1, piece(plain).avartana().kalai());
    assertEquals("", piece(plain).title());
  }

  private static List<String> names(Composition piece) {
    return List.copyOf(piece.phrases().keySet());
  }

  @Test
  void capitalsAmongSmallLettersAreLongUnlessTheTotalSaysOtherwise() {
    assertEquals(Ratio.of(6), matras("TA KA dimi"));
    assertEquals(Ratio.of(4), matras("TA KA DI MI"));
    assertEquals(Ratio.of(4), matras("Ta ka Di mi"));
    assertEquals(Ratio.of(9), matras("TAKA dimi takita (9)"));
    assertEquals(Ratio.of(7), matras("TAKA dimi takita (7)"));
  }

  @Test
  void barsStayWhereTheyAreTrueAndGoWhereTheyAreNot() {
    String eight = "takadimi takadimi takadimi takadimi ";
    assertTrue(
        PastedText.tidy(eight + "/ " + "takadimi takadimi // ta", LEXICON).guesses().stream()
            .anyMatch(guess -> guess.startsWith("bars are left out")));
    String whole = eight + "| takadimi takadimi / takadimi takadimi //";
    assertTrue(PastedText.tidy(whole, LEXICON).score().contains("takadimi | takadimi"));
    assertEquals(Ratio.of(32), matras(whole));
  }

  @Test
  void repeatsAreReadHoweverTheyAreWritten() {
    for (String times : List.of("x3", "X 3", "x 3", "(x3)", "3 times", "(3 times)", "3x", "* 3")) {
      assertEquals(Ratio.of(15), matras("ta di gi na tom " + times), times);
    }
    assertEquals(Ratio.of(13), matras("(takita) x3 takadimi"));
    assertEquals(Ratio.of(7), matras("(takita) takadimi"));
  }

  @Test
  void equalLinesAreOnePhraseAndNamesAreKept() {
    TidyScore tidy = PastedText.tidy("A: takita\nB = takadimi\nA: takita\n", LEXICON);
    assertEquals(List.of("A", "B", "Song"), names(piece(tidy)));
    assertEquals(Ratio.of(10), Performance.of(piece(tidy)).rounds().get(0).matras());
  }

  @Test
  void everyGuessIsSaid() {
    assertTrue(guesses("takita").contains("tala adi, for the text names none"));
    assertTrue(guesses("takita").contains("60 beats a minute"));
    assertTrue(guesses("takita - takita").contains("a dash is taken as a matra of karvai"));
    assertTrue(guesses("takita (9)").contains("line 1 says 9 matras, and has 3"));
    assertTrue(guesses("takita\ntakita zzzz\n").contains("line 2 is left out, for zzzz"));
  }

  @Test
  void aTextWithoutSollusIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> PastedText.tidy("rain on tin", LEXICON));
    assertThrows(IllegalArgumentException.class, () -> PastedText.tidy("", LEXICON));
  }

  /** Whatever is pasted, the answer is a score that can be read, or a refusal. */
  @Test
  void anyTextGivesAScoreOrARefusal() {
    String[] bits = {
      "ta", "takita", "TOM", "x3", "(4)", "(14)", "-", "_", "/", "//", "|", "9", "99", "[", "]",
          "(",
      ")", "{5:", "}", ",", ";", ".", ":", "=", "\n", "\n", "1.", "Mora", "tala", "adi", "#",
          "\u2026",
      "perform", "nadai", "Song", "\u0ba4\u0b95", "*", "+", "5*3", "9(1)9", "\"", "zz"
    };
    SplittableRandom random = new SplittableRandom(7);
    int scores = 0;
    for (int number = 0; number < 2_000; number++) {
      StringBuilder text = new StringBuilder();
      for (int bit = random.nextInt(25); bit > 0; bit--) {
        text.append(bits[random.nextInt(bits.length)]).append(random.nextInt(4) == 0 ? "" : " ");
      }
      try {
        TidyScore tidy = PastedText.tidy(text.toString(), LEXICON);
        Reading reading = ScoreReader.read(tidy.score(), "tidy", LEXICON);
        assertTrue(reading.composition().isPresent(), () -> text + "\n" + tidy.score());
        scores++;
      } catch (IllegalArgumentException refused) {
        assertTrue(refused.getMessage().contains("no line of the text"), text::toString);
      }
    }
    assertTrue(scores > 200, "scores were made: " + scores);
  }

  /** Each of the lines is good, but no piece has such a tempo. */
  @Test
  void linesThatMakeNoScoreTogetherAreToldAndAreNoFaultOfTheProgram() {
    for (String tempo : List.of("0", "999")) {
      String told =
          assertThrows(
                  IllegalArgumentException.class,
                  () -> PastedText.tidy("tempo " + tempo + "\ntakadimi\n", LEXICON))
              .getMessage();
      assertTrue(told.startsWith("the lines can be read one by one"), told);
      assertTrue(told.contains("tempo"), told);
    }
  }
}
