package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.TalaSections;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;

/**
 * A tala that gives way to another on samam, as in a ragatalamalika: from there on all is as in a
 * piece in that tala (common practice). Kriyas of adi, rupaka (O I4) and misra chapu as in the tala
 * tests.
 */
class TalaChangeTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final String PHRASES = "Song = (takadimi) x8\nFall = (takita takita) x4\n";
  private static final String BOTH =
      "tala adi\ntempo 72\n" + PHRASES + "perform\nSong x2\ntala rupaka\nFall x2\n";
  private static final String RUPAKA = "tala rupaka\ntempo 72\n" + PHRASES + "perform\nFall x2\n";
  private static final Ratio TURN = Ratio.of(16);

  private static Composition score(String text) {
    Reading reading = ScoreReader.read(text, "t.loom", LEXICON);
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  private static String fault(String text) {
    Reading reading = ScoreReader.read(text, "t.loom", LEXICON);
    assertTrue(reading.composition().isEmpty(), text);
    return reading.format();
  }

  /** What the hand does, with its places counted from a beat. */
  private static List<String> hand(Performance performance, Ratio from, Ratio to, int countIn) {
    List<String> hand = new ArrayList<>();
    for (Event event : ScoreTimeline.of(performance, countIn)) {
      boolean inside = event.beat().compareTo(from) >= 0 && event.beat().compareTo(to) < 0;
      if (inside && event instanceof Event.HandBeat beat) {
        String where = beat.beat().minus(from).toString();
        hand.add(where + " " + beat.kriya() + beat.samam() + beat.again());
      }
    }
    assertFalse(hand.isEmpty(), "there is a hand");
    return hand;
  }

  @Test
  void fromTheTurnOnTheHandIsThatOfTheOtherTala() {
    Performance both = Performance.of(score(BOTH));
    Performance rupaka = Performance.of(score(RUPAKA));
    assertEquals(hand(rupaka, Ratio.ZERO, Ratio.of(12), 0), hand(both, TURN, Ratio.of(28), 0));
    Performance adi = Performance.of(score(BOTH.replaceFirst("(?s)tala rupaka.*", "")));
    assertEquals(hand(adi, Ratio.ZERO, TURN, 0), hand(both, Ratio.ZERO, TURN, 0));
  }

  @Test
  void placesAndNumbersAreCountedInTheTalaThatGoesOn() {
    Avartana avartana = Performance.of(score(BOTH + "tala misra chapu\nSong\n")).avartana();
    assertEquals("beat 8", avartana.say(Ratio.of(15)));
    assertEquals("samam", avartana.say(TURN));
    assertEquals("beat 6 1/2", avartana.say(Ratio.of(43, 2)));
    assertEquals("samam", avartana.say(Ratio.of(22)));
    assertEquals("beat 7", avartana.say(Ratio.of(34)));
    long[] numbers = {-1, 0, 1, 2, 3, 4, 5};
    long[] beats = {-1, 0, 8, 16, 22, 28, 35};
    for (int index = 0; index < beats.length; index++) {
      assertEquals(
          numbers[index],
          TalaSections.numberAt(avartana, Ratio.of(beats[index])),
          "" + beats[index]);
    }
    assertEquals(22, avartana.samamBefore(Ratio.of(55, 2)));
  }

  @Test
  void itIsProvenInTheTalaInWhichItEnds() {
    Performance both = Performance.of(score(BOTH));
    assertTrue(Landing.of(both).lands(), "28 beats, of which the last 12 are in six");
    assertEquals(Ratio.of(4), Landing.of(both).avartanas());
    assertEquals(
        "2 avartanas of adi and 2 avartanas of chatusra rupaka",
        LengthWords.avartanas(both).orElseThrow());
    assertFalse(Landing.of(both).startCanMend(), "the turn must stay on samam");
    Landing late = Landing.of(Performance.of(score(BOTH + "rest 2 beats")));
    assertEquals(Ratio.of(2), late.missBeats());
    Landing five = Landing.of(Performance.of(score(BOTH + "rest 5 beats")));
    assertEquals(Ratio.of(-1), five.missBeats());
    Landing until = Landing.of(Performance.of(score(BOTH + "rest 5 beats\nuntil beat 1")));
    assertTrue(until.lands(), "until counts in the tala that goes on");
  }

  @Test
  void roundsAfterTheTurnStandByThemselves() {
    Performance later = Performance.of(score(BOTH)).onlyRounds(3, 4);
    Performance rupaka = Performance.of(score(RUPAKA));
    assertEquals(TURN, later.startBeat());
    assertEquals(
        hand(rupaka, Ratio.of(-6), Ratio.of(12), 1), hand(later, Ratio.of(10), Ratio.of(28), 1));
    Performance earlier = Performance.of(score(BOTH)).onlyRounds(2, 3);
    assertEquals("beat 6", earlier.avartana().say(Ratio.of(21)));
    assertEquals("beat 8", earlier.avartana().say(Ratio.of(15)));
  }

  @Test
  void itReadsBackAsItIsWritten() {
    Composition piece =
        score(
            "kalai 2\n"
                + BOTH.replace("x2\ntala", "x4\ntala")
                + "tala Ferry: clap clap wave\nFall");
    assertEquals(piece, score(ScorePrinter.print(piece)));
    assertEquals(3, TalaSections.of(Performance.of(piece).avartana()).size());
    assertEquals(12, Performance.of(piece).avartana().goingOnAt(Ratio.of(32)).beats());
  }

  @Test
  void theTalaChangesOnSamamOnly() {
    assertTrue(
        fault(BOTH.replace("Song x2", "Song\nFall"))
            .contains(
                "t.loom:8:1: error: the tala changes on samam only; here it stands on beat 7\n"),
        "told at its line");
    assertTrue(
        fault(BOTH.replace("tala rupaka", "tala rupka")).contains("t.loom:7:6"),
        "told at the word");
    assertTrue(
        fault("eduppu beat 7\n" + BOTH).contains("which has no place for the eduppu"), "no beat 7");
    assertTrue(
        fault("tala adi\nA = ta\ntala rupaka\n").contains("must stand before the phrases"),
        "outside perform it is a header");
  }

  @Test
  void theSameTalaAgainChangesNothing() {
    Performance plain = Performance.of(score(BOTH.replaceFirst("(?s)tala rupaka.*", "Song")));
    Performance same =
        Performance.of(score(BOTH.replaceFirst("(?s)tala rupaka.*", "tala adi\nSong")));
    assertEquals(hand(plain, Ratio.ZERO, Ratio.of(24), 1), hand(same, Ratio.ZERO, Ratio.of(24), 1));
    assertEquals(Landing.of(plain).avartanas(), Landing.of(same).avartanas());
  }
}
