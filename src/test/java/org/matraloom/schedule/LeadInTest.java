package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.SaidAs;
import org.matraloom.kanakku.Cycles;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** The way from samam to a start off samam, counted by hand: a word a beat. */
class LeadInTest {

  private static LeadIn lead(Ratio start, int wholeAvartanas) {
    return LeadIn.of(Cycles.ADI, start, 4, wholeAvartanas).orElseThrow();
  }

  @Test
  void aWordABeatAndAShorterOneAtTheEnd() {
    assertEquals(new LeadIn(4, List.of(4, 2)), lead(Ratio.of(3, 2), 0));
    assertEquals(new LeadIn(4, List.of(4)), lead(Ratio.of(17), 0));
    assertEquals(new LeadIn(4, List.of()), lead(Ratio.ZERO, 0));
    assertEquals(10, lead(Ratio.of(2), 1).wordMatras().size());
    assertEquals(Ratio.of(3, 2), lead(Ratio.of(3, 2), 0).beats());
  }

  /** An eighth and three sixteenths of a beat lie on halves and quarters of a matra. */
  @Test
  void aStartBetweenMatrasIsCountedInHalvesAndQuarters() {
    assertEquals(new LeadIn(8, List.of(1)), lead(Ratio.of(1, 8), 0));
    assertEquals(new LeadIn(16, List.of(16, 3)), lead(Ratio.of(19, 16), 0));
    assertEquals(Optional.empty(), LeadIn.of(Cycles.ADI, Ratio.of(1, 3), 4, 0));
    assertEquals(Optional.empty(), LeadIn.of(Cycles.ADI, Ratio.of(1, 32), 4, 0));
  }

  @Test
  void equalNeighboursAreToldTogether() {
    assertEquals("2 x 4, 2", new LeadIn(4, List.of(4, 4, 2)).said(Integer::toString));
    assertEquals("4, 2 x 3, 4", new LeadIn(4, List.of(4, 3, 3, 4)).said(Integer::toString));
    assertEquals("", new LeadIn(4, List.of()).said(Integer::toString));
  }

  private static Performance startingOn(String place) {
    String text =
        """
        tala adi
        tempo 60
        start %s
        Song = takadimi takajunu
        perform
          Song nadai 4
        """;
    return SaidAs.timeline(text.formatted(place)).performance();
  }

  @Test
  void theWordsOfAPieceAreTold() {
    String four = PlainWords.of(4).orElseThrow();
    assertEquals(Optional.of("2 x " + four), SpokenLeadIn.words(startingOn("beat 3")));
    assertEquals(Optional.empty(), SpokenLeadIn.words(startingOn("sam")));
  }

  /** Two avartanas of count-in leave room for two of words before the two beats from samam. */
  @Test
  void wholeAvartanasOfWordsAreSaidAsFarAsThereIsRoom() {
    Timeline plain = ScoreTimeline.of(startingOn("beat 3"), 2);
    assertEquals(8, words(SpokenLeadIn.before(plain, Optional.of(0))).size());
    assertEquals(Ratio.of(-16), plain.originBeat());
    assertEquals(8 + 32, words(SpokenLeadIn.before(plain, Optional.of(1))).size());
    List<Event.SolluSaid> most = words(SpokenLeadIn.before(plain, Optional.of(9)));
    assertEquals(8 + 64, most.size());
    assertEquals(plain.originBeat(), most.get(0).beat());
    Timeline onSamam = ScoreTimeline.of(startingOn("sam"), 1);
    assertSame(onSamam, SpokenLeadIn.before(onSamam, Optional.of(0)));
  }

  private static List<Event.SolluSaid> words(Timeline timeline) {
    List<Event.SolluSaid> words = new ArrayList<>();
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid said && said.round() == 0) {
        words.add(said);
      }
    }
    return words;
  }
}
