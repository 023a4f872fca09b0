package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Place;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

class PhraseParserTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Composition read(String phrases) {
    Reading reading = ScoreReader.read("tala adi\ntempo 60\n" + phrases, "test.loom", LEXICON);
    assertTrue(reading.composition().isPresent(), reading::format);
    return reading.composition().get();
  }

  private static Sequence body(String written) {
    return read("Drip = takita\nSong = " + written).phrases().get("Song");
  }

  private static String shape(Sequence sequence) {
    return sequence.elements().stream()
        .map(PhraseParserTest::shape)
        .collect(Collectors.joining(" "));
  }

  private static String shape(Element element) {
    if (element instanceof Element.Word word) {
      return word.sollus().stream().map(Sollu::spelling).collect(Collectors.joining("-"));
    } else if (element instanceof Element.Karvai karvai) {
      return "karvai" + karvai.matras();
    } else if (element instanceof Element.Silence) {
      return "silence";
    } else if (element instanceof Element.Group group) {
      return "group" + group.size() + "*" + group.hold() + "+" + group.karvai();
    } else if (element instanceof Element.Faster faster) {
      return "fast" + faster.factor() + "<" + shape(faster.body()) + ">";
    } else if (element instanceof Element.Repeat repeat) {
      return "times" + repeat.times() + "<" + shape(repeat.body()) + ">";
    } else if (element instanceof Element.InnerNadai inner) {
      return "nadai" + inner.nadai() + "<" + shape(inner.body()) + ">";
    } else if (element instanceof Element.Reference reference) {
      return "@" + reference.name();
    } else if (element instanceof Element.Bar bar) {
      return bar.endsAvartana() ? "avartana" : "anga";
    } else if (element instanceof Element.BreathWish wish) {
      return wish.asks() ? "breath" : "none";
    }
    throw new AssertionError(element);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "ta ! ta",
        "ta ki ta ! ta ki ta",
        "takita ! ta-ki-ta",
        "tan-gu ! tan-gu",
        "ta, ki;. ta ! ta karvai1 ki karvai2 silence ta",
        ", ta ! karvai1 ta",
        ";, ! karvai2 karvai1",
        ". . ! silence silence",
        "[takadimi] ta ! fast2<ta-ka-di-mi> ta",
        "[[takadimi]] ! fast4<ta-ka-di-mi>",
        "[ [ta ka] ] ! fast2<fast2<ta ka>>",
        "[[ta] ka] ! fast2<fast2<ta> ka>",
        "[ta [ka]] ! fast2<ta fast2<ka>>",
        "[[ta] [ka]] ! fast2<fast2<ta> fast2<ka>>",
        "[[[ta]]] ! fast2<fast4<ta>>",
        "[[[[ta]]]] ! fast4<fast4<ta>>",
        "[[ta] ] ! fast2<fast2<ta>>",
        "(ta ka) x3 ! times3<ta ka>",
        "(ta)x3 ! times3<ta>",
        "(ta) x 3 ! times3<ta>",
        "(ta) ×3 ! times3<ta>",
        "((ta) x2 ka) x3 ! times3<times2<ta> ka>",
        "[ta ka] x2 ! times2<fast2<ta ka>>",
        "{5: ta} x2 ! times2<nadai5<ta>>",
        "Drip x2 ta ! times2<@Drip> ta",
        "Drip Drip ! @Drip @Drip",
        "7 ! group7*1+0",
        "9(1)9(1)9 ! group9*1+1 group9*1+1 group9*1+0",
        "8(0)8(5)8 ! group8*1+0 group8*1+5 group8*1+0",
        "5*6 ! group5*6+0",
        "5 * 6 ! group5*6+0",
        "5*6(2) ! group5*6+2",
        "(9) x2 ! times2<group9*1+0>",
        "(5 . 5) x2 ! times2<group5*1+0 silence group5*1+0>",
        "(9(1)) x2 ! times2<group9*1+1>",
        "9 (9) x2 ! group9*1+0 times2<group9*1+0>",
        "9(ta) x2 ! group9*1+0 times2<ta>",
        "6.6.6 ! group6*1+0 silence group6*1+0 silence group6*1+0",
        "{5: takatakita} ! nadai5<ta-ka-ta-ki-ta>",
        "{khanda: ta} {Tisra : ta} ! nadai5<ta> nadai3<ta>",
        "{3: [ta ka] {7: ta}} ! nadai3<fast2<ta ka> nadai7<ta>>",
        "ta | ka || ! ta anga ka avartana",
        "ta # ka ! ta",
        "kiTa giṇa ! ki-Ta gi-ṇa"
      })
  void marksAreRead(String written, String shape) {
    assertEquals(shape, shape(body(written)));
  }

  @Test
  void aPhraseGoesOnInIndentedLines() {
    Composition song = read("Song = ta # one\n\n  ka (di\n# two\n\tmi) x2\n  9(1)\n  9\nFall = ta");
    assertEquals("ta ka times2<di mi> group9*1+1 group9*1+0", shape(song.phrases().get("Song")));
    assertEquals("ta", shape(song.phrases().get("Fall")));
  }

  @Test
  void theBodyMayBeginOnTheNextLine() {
    assertEquals("ta ka", shape(read("Song =\n  ta ka").phrases().get("Song")));
  }

  @Test
  void namesAreEqualHoweverTheirMarksAreTyped() {
    Composition song = read("\u014cdai = ta\nSong = O\u0304dai");
    assertEquals("@\u014cdai", shape(song.phrases().get("Song")));
  }

  @Test
  void spellingsAreKeptAndSoundsFollowTheirCompany() {
    assertEquals(
        List.of(
            new Element.Word("tha", List.of(new Sollu("tha", "ta"))),
            new Element.Word("ki", List.of(new Sollu("ki", "ki"))),
            new Element.Bar(false, new Place(4, 15)),
            new Element.Word("tha", List.of(new Sollu("tha", "ṭa"))),
            new Element.Word("ki", List.of(new Sollu("ki", "ki"))),
            new Element.Silence(),
            new Element.Word("tha", List.of(new Sollu("tha", "ta")))),
        body("tha ki | tha ki . tha").elements());
  }

  @Test
  void groupsSpeakTheUsualWords() {
    Element.Group group = (Element.Group) body("5").elements().get(0);
    assertEquals(LEXICON.words(5), group.sollus());
  }

  @Test
  void barsKnowTheirPlace() {
    assertEquals(
        List.of(new Element.Bar(false, new Place(4, 8)), new Element.Bar(true, new Place(4, 10))),
        body("| || ta").elements().subList(0, 2));
  }

  /** Figures from a forum thread, "Structuring a Korvai in the thani", rasikas.org p=380684. */
  @ParameterizedTest
  @CsvSource({
    "3(1)4(1)5, 14",
    "4(1)5(1)6, 17",
    "5(1)6(1)7, 20",
    "9(1)9(1)9, 29",
    "7(4)7(4)7, 29",
    "5*6 5*4 5*3 5*2, 75",
    "5*6 5*5 5*4 5*3 5*2, 100",
    "5*6 5*4 5*2, 60"
  })
  void publishedSumsComeOut(String written, int matras) {
    assertEquals(Ratio.of(matras), Length.of(body(written), read("Song = ta").phrases()).matras());
  }
}
