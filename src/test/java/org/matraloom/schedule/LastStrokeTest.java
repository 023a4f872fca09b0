package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Remarks;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** A piece that ends with its stroke on the landing: the usual way to end, common practice. */
class LastStrokeTest {

  /** 32 matras at four a beat are 8 beats, one avartana of adi. */
  private static final String ADI =
      """
      tala adi
      %s
      Song = (takadimi) x8
      """;

  private static Performance performance(String head) {
    return Performance.of(composition(String.format(ADI, head)));
  }

  private static Composition composition(String text) {
    return ScoreReader.read(text, "stroke", Lexicon.standard()).composition().orElseThrow();
  }

  private static List<String> lastEvents(Performance performance, int count) {
    List<String> events = new ArrayList<>();
    for (Event event : ScoreTimeline.of(performance, 0)) {
      if (event instanceof Event.SolluSaid said) {
        events.add(said.sollu().spelling() + " " + said.beat());
      } else if (event instanceof Event.HandBeat hand) {
        events.add(hand.kriya().words() + " " + hand.beat());
      }
    }
    return events.subList(events.size() - count, events.size());
  }

  @Test
  void theStrokeFallsOnTheLandingAndIsNoPartOfTheLength() {
    Performance struck = performance("stroke tom");
    Landing landing = Landing.of(struck);
    assertTrue(landing.lands());
    assertEquals(Ratio.of(8), landing.beats());
    assertEquals(Ratio.of(32), landing.matras());
    assertEquals(Ratio.of(8), struck.spoken().reduce((a, b) -> b).orElseThrow().beat());
    assertEquals(33, struck.spoken().count());
    assertEquals(32, performance("").spoken().count());
  }

  @Test
  void theTalaGoesOnForAnAvartanaAfterAStroke() {
    List<String> heard =
        List.of(
            "clap 8",
            "tom 8",
            "little finger 9",
            "ring finger 10",
            "middle finger 11",
            "clap 12",
            "wave 13",
            "clap 14",
            "wave 15",
            "clap 16");
    assertEquals(heard, lastEvents(performance("stroke tom"), heard.size()));
  }

  @Test
  void afterSaysForHowManyAvartanasWithAStrokeOrWithout() {
    assertEquals(List.of("mi 31/4", "clap 8"), lastEvents(performance(""), 2));
    assertEquals("clap 24", lastEvents(performance("after 2"), 1).get(0));
    assertEquals("clap 32", lastEvents(performance("stroke tom\nafter 3 avartanas"), 1).get(0));
    assertEquals(
        List.of("clap 8", "tom 8", "little finger 9"),
        lastEvents(performance("stroke tom\nafter 0"), 3));
  }

  @Test
  void commasSayHowLongItRings() {
    assertEquals(Ratio.of(9), performance("stroke tom").soundEndBeat());
    assertEquals(Ratio.of(17, 2), performance("stroke tom ,").soundEndBeat());
    assertEquals(Ratio.of(10), performance("stroke tom ; ; ; ,").soundEndBeat());
  }

  /** 4-4-5 of 80 in adi: 20 + 20 + 16 beats (kanakku of the published sum; computed by hand). */
  @Test
  void itIsCountedInTheMatrasOfTheLastRound() {
    Performance performance =
        Performance.of(
            composition(
                "tala adi\nstroke tom ; ; ; ; ,\nSong = (takadimi) x20\nperform\n"
                    + "Song x2 nadai 4\nSong nadai 5\n"));
    assertTrue(Landing.of(performance).lands());
    assertEquals(Ratio.of(58), performance.soundEndBeat());
  }

  @Test
  void roundsTakenFromTheMiddleHaveNoStroke() {
    Performance whole =
        Performance.of(
            composition("tala adi\nstroke tom\nSong = (takadimi) x8\nperform\nSong x3 nadai 4\n"));
    assertEquals(32, whole.onlyRounds(1, 1).spoken().count());
    assertEquals(33, whole.onlyRounds(3, 3).spoken().count());
    assertEquals(Ratio.of(16), whole.onlyRounds(1, 2).handEndBeat());
  }

  @Test
  void aStrokeLeftInThePhraseIsNamed() {
    Performance counted = Performance.of(composition("tala adi\nSong = (takadimi) x8 tom ; ,\n"));
    assertEquals(Ratio.ONE, Landing.of(counted).missBeats());
    assertTrue(
        Remarks.on(counted).stream()
            .anyMatch(remark -> remark.contains("write stroke tom in the head")),
        () -> Remarks.on(counted).toString());
    Performance missing = Performance.of(composition("tala adi\nSong = (takadimi) x9\n"));
    assertTrue(Remarks.on(missing).stream().noneMatch(remark -> remark.contains("stroke")));
  }
}
