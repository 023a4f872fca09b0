package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** The one reading of a performance. */
class MomentReaderTest {

  private static final Sollu TA = new Sollu("ta", "ta");
  private static final Element SAID = new Element.Word("ta", List.of(TA));
  private static final Element COMMA = new Element.Karvai(1);
  private static final Element DOT = new Element.Silence();

  @Test
  void everySolluAndItsOwnPartAreWhereTheScoreWrittenOutHasThem() {
    int sollus = 0;
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Unrolled.Piece> expected =
          Unrolled.of(performance).stream().filter(piece -> !piece.name().equals(".")).toList();
      List<Unrolled.Piece> read =
          performance
              .spoken()
              .map(
                  spoken ->
                      new Unrolled.Piece(
                          spoken.beat(),
                          spoken.beat().plus(spoken.ownBeats()),
                          spoken.endBeat(),
                          spoken.sollu().spelling(),
                          spoken.round()))
              .toList();
      assertEquals(expected, read, composition::toString);
      sollus += read.size();
    }
    assertTrue(sollus > 20_000, "sollus were read: " + sollus);
  }

  @Test
  void momentsComeInOrderButForWhatLiesInsideAKarvai() {
    for (Composition composition : Unrolled.scores()) {
      Iterator<Moment> moments = Performance.of(composition).moments();
      Ratio reached = composition.startBeat();
      while (moments.hasNext()) {
        Moment moment = moments.next();
        Ratio before = reached;
        assertTrue(before.compareTo(moment.beat()) <= 0, () -> moment + " after " + before);
        reached = moment.beat();
      }
    }
  }

  /** A rest that goes on is silence, whatever sign it goes on with. */
  @Test
  void aCommaAfterADotIsSilence() {
    assertEquals(
        List.of("ta 0 rings 1/4", "rest 1/2 1/4", "rest 3/4 1/4", "rest 1 1/2", "ta 3/2"),
        read(SAID, COMMA, DOT, COMMA, new Element.Karvai(2), SAID));
    assertEquals(List.of("rest 0 1/4", "ta 1/4"), read(COMMA, SAID));
  }

  /** 5*3 is written out as ta , , di , , gi , , na , , tom , , (common practice). */
  @Test
  void aHeldSolluIsOneWithKarvais() {
    Element held = new Element.Group(2, 3, 1, List.of(TA, TA));
    Element written = new Element.Karvai(2);
    assertEquals(read(SAID, written, SAID, written, COMMA), read(held));
  }

  @Test
  void aKarvaiAtTheBeginningOfARoundLetsTheRoundBeforeRingOn() {
    Composition composition = composition(Sequence.of(COMMA, SAID), 2);
    assertEquals(
        List.of("rest 0 1/4", "ta 1/4 rings 1/4", "ta 3/4"), read(Performance.of(composition)));
    assertEquals(
        List.of("rest 1/2 1/4", "ta 3/4"), read(Performance.of(composition).onlyRounds(2, 2)));
  }

  /** Two million karvais are one, so that a long sound costs no memory. */
  @Test
  void aLongKarvaiIsKeptAsOne() {
    Sequence thousand = Sequence.of(new Element.Repeat(Sequence.of(COMMA), 1_000));
    Sequence million = Sequence.of(new Element.Repeat(thousand, 1_000));
    Spoken spoken =
        Performance.of(composition(Sequence.of(SAID, new Element.Repeat(million, 2)), 1))
            .spoken()
            .findFirst()
            .orElseThrow();
    assertEquals(1, spoken.rings().size());
    assertEquals(Ratio.of(2_000_001, 4), spoken.beats());
  }

  @Test
  void aSolluThatIsStoppedKeepsWhatItHasSaidByThen() {
    Spoken spoken =
        Performance.of(composition(Sequence.of(SAID, new Element.Karvai(2)), 1))
            .spoken()
            .findFirst()
            .orElseThrow();
    assertEquals(spoken, spoken.stoppedAt(Ratio.of(3, 4)));
    Spoken shorter = spoken.stoppedAt(Ratio.of(5, 8));
    assertEquals(Ratio.of(5, 8), shorter.endBeat());
    assertEquals(Ratio.of(1, 4), shorter.ownBeats());
    Spoken shortest = spoken.stoppedAt(Ratio.of(1, 8));
    assertEquals(Ratio.of(1, 8), shortest.ownBeats());
    assertTrue(!shortest.isRinging() && shorter.isRinging());
  }

  /** {@code [4*2]} is {@code [ta , ka , di , mi ,]}: half a matra and a karvai of half a matra. */
  @Test
  void aHeldSolluInBracketsIsOneWithCommas() {
    Element held = new Element.Faster(2, Sequence.of(new Element.Group(1, 2, 0, List.of(TA))));
    Element commas = new Element.Faster(2, Sequence.of(SAID, COMMA));
    Spoken one = first(held);
    assertEquals(Ratio.of(1, 8), one.ownBeats());
    assertEquals(Ratio.of(1, 4), one.beats());
    assertEquals(first(commas).rings(), one.rings());
  }

  private static Spoken first(Element element) {
    return Performance.of(composition(Sequence.of(element), 1)).spoken().findFirst().orElseThrow();
  }

  private static Composition composition(Sequence song, int times) {
    return new Composition(
        "",
        Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART),
        Tempo.of(60),
        Ratio.ZERO,
        Ratio.ZERO,
        Map.of("Song", song),
        List.of(new Step.Say("Song", times, 4, 1)));
  }

  private static List<String> read(Element... elements) {
    return read(Performance.of(composition(Sequence.of(elements), 1)));
  }

  private static List<String> read(Performance performance) {
    List<String> read = new ArrayList<>();
    performance
        .moments()
        .forEachRemaining(
            moment -> {
              if (moment instanceof Spoken spoken) {
                String rings =
                    spoken.rings().stream()
                        .map(ring -> " rings " + ring.beats())
                        .findAny()
                        .orElse("");
                read.add("ta " + spoken.beat() + rings);
              } else if (moment instanceof Moment.Rest rest) {
                read.add("rest " + rest.beat() + " " + rest.matras().beats());
              }
            });
    return read;
  }
}
