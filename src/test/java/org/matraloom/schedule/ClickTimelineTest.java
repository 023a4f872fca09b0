package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class ClickTimelineTest {

  /** Five avartanas heard and three silent (a published practice track of eight bars). */
  @ParameterizedTest
  @ValueSource(strings = {"66", "71", "75/2", "200"})
  void fiveOnThreeOffComesBackOnTheExactFrame(String bpm) {
    String[] parts = bpm.split("/");
    long den = parts.length == 1 ? 1 : Long.parseLong(parts[1]);
    Timeline score = sixteenAvartanas(new Tempo(Ratio.of(Long.parseLong(parts[0]), den)), "0");
    Timeline clicks =
        new ClickTimeline(score, ClickPattern.fixed(5, 3, ClickPattern.Heard.NOTHING));
    FrameClock clock = score.clock(44_100);
    List<Event.HandBeat> all = hands(score);
    List<Event.HandBeat> heard = hands(clicks);
    assertTrue(all.containsAll(heard));
    TreeSet<Long> avartanas = new TreeSet<>();
    heard.forEach(hand -> avartanas.add(Math.floorDiv(hand.beat().floor(), 8L)));
    assertEquals(
        new TreeSet<>(List.of(-1L, 0L, 1L, 2L, 3L, 4L, 8L, 9L, 10L, 11L, 12L, 16L)), avartanas);
    Event.HandBeat back =
        heard.stream().filter(hand -> hand.beat().floor() >= 64).findFirst().orElseThrow();
    assertTrue(back.samam());
    Ratio seconds = score.performance().composition().tempo().secondsOf(Ratio.ONE).times(72);
    long expected = seconds.times(44_100).plus(Ratio.of(1, 2)).floor();
    assertEquals(expected, clock.frameAt(back.beat()), "72 beats after the count-in began");
  }

  @Test
  void onlySamamIsHeardMeanwhile() {
    Timeline score = sixteenAvartanas(Tempo.of(60), "0");
    Timeline clicks = new ClickTimeline(score, ClickPattern.fixed(1, 1, ClickPattern.Heard.SAMAM));
    List<Event.HandBeat> second =
        hands(clicks).stream()
            .filter(hand -> hand.beat().floor() >= 8 && hand.beat().floor() < 16)
            .toList();
    assertEquals(1, second.size());
    assertTrue(second.get(0).samam());
  }

  @Test
  void randomSilenceIsTheSameForTheSameSeedAndNeverInTheFirstAvartana() {
    ClickPattern pattern = ClickPattern.random(40, 5, ClickPattern.Heard.NOTHING);
    ClickPattern again = ClickPattern.random(40, 5, ClickPattern.Heard.NOTHING);
    int silent = 0;
    for (long avartana = 0; avartana < 2_000; avartana++) {
      assertEquals(pattern.in(avartana), again.in(avartana));
      silent += pattern.in(avartana) == ClickPattern.Heard.NOTHING ? 1 : 0;
    }
    assertEquals(ClickPattern.Heard.ALL, pattern.in(0));
    assertEquals(0.4, silent / 2_000.0, 0.05);
  }

  @Test
  void nothingElseChangesAndTheCountInIsHeard() {
    Timeline score = sixteenAvartanas(Tempo.of(60), "-3");
    Timeline clicks =
        new ClickTimeline(score, ClickPattern.fixed(1, 63, ClickPattern.Heard.NOTHING));
    List<Event> kept = new ArrayList<>();
    List<Event> expected = new ArrayList<>();
    clicks.forEach(event -> addUnlessHand(event, kept));
    score.forEach(event -> addUnlessHand(event, expected));
    assertFalse(expected.isEmpty());
    assertEquals(expected, kept);
    assertEquals(
        8, hands(clicks).stream().filter(hand -> hand.beat().floor() < 0).count(), "count-in");
  }

  @Test
  void refusesPatternsThatAreNone() {
    assertThrows(
        IllegalArgumentException.class, () -> ClickPattern.fixed(0, 3, ClickPattern.Heard.NOTHING));
    assertThrows(
        IllegalArgumentException.class,
        () -> ClickPattern.random(91, 1, ClickPattern.Heard.NOTHING));
  }

  private static void addUnlessHand(Event event, List<Event> events) {
    if (!(event instanceof Event.HandBeat) && !(event instanceof Event.Tick)) {
      events.add(event);
    }
  }

  private static List<Event.HandBeat> hands(Timeline timeline) {
    List<Event.HandBeat> hands = new ArrayList<>();
    timeline.forEach(
        event -> {
          if (event instanceof Event.HandBeat hand) {
            hands.add(hand);
          }
        });
    return hands;
  }

  private static Timeline sixteenAvartanas(Tempo tempo, String startBeat) {
    Avartana adi = Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);
    Sequence word =
        Sequence.of(
            new Element.Word("taka", List.of(new Sollu("ta", "ta"), new Sollu("ka", "ka"))));
    Composition composition =
        new Composition(
            "Ferry Song",
            adi,
            tempo,
            Ratio.of(Long.parseLong(startBeat)),
            Ratio.ZERO,
            Map.of("Song", Sequence.of(new Element.Repeat(word, 256))),
            List.of(new Step.Say("Song", 1, 4, 1)));
    return ScoreTimeline.of(Performance.of(composition), 1);
  }
}
