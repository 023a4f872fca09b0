package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.time.Ratio;

/** Lengths worked out by hand: at 60 beats a minute a matra of four is 250 ms, of five 200 ms. */
class CandidateTest {

  private static final BreathSettings STUDY = BreathSettings.study();

  @Test
  void oneSilentMatraIsACatchBreathInFourAndNoneInFive() {
    Candidate only = only(song("ta-ka . di-mi", 4, 60));
    assertEquals(Ratio.of(1, 2), only.breath().startBeat());
    assertEquals(Ratio.of(1, 4), only.breath().beats());
    assertEquals(Ratio.of(1, 4), only.breath().seconds());
    assertEquals(Breath.Kind.CATCH, only.breath().kind());
    assertEquals(Breath.Source.SILENCE, only.breath().source());
    assertEquals(Ratio.ZERO, only.breath().cutBeats());
    assertEquals("ka", only.breath().after());
    assertTrue(candidates(song("ta-ka . di-mi", 5, 60)).isEmpty());
  }

  /** The worked example of the planning rules: two matras at 80 are 375 ms in 4, 300 ms in 5. */
  @Test
  void twoSilentMatrasAt80AreCatchBreathsInBoth() {
    assertEquals(Ratio.of(375, 1000), only(song("ta . . ka", 4, 80)).breath().seconds());
    assertEquals(Ratio.of(300, 1000), only(song("ta . . ka", 5, 80)).breath().seconds());
  }

  @Test
  void aThreeMatraNasalIsSaidShortAndTheRestUsedForAir() {
    Breath full = candidates(song("din , , ta", 4, 60)).get(0).breath();
    assertEquals(Breath.Source.KARVAI, full.source());
    assertEquals(Ratio.of(3, 20), full.startBeat(), "a full breath leaves it 150 ms");
    assertEquals(Ratio.of(6, 10), full.seconds());
    assertEquals(Breath.Kind.FULL, full.kind());
  }

  @Test
  void aCutKeepsHalfAMatraOr80MillisecondsWhicheverIsLonger() {
    Candidate slow = candidates(song("din , ta", 4, 60)).get(0);
    assertEquals(Ratio.of(1, 8), slow.breath().startBeat(), "half a matra of 250 ms");
    Candidate quick = candidates(song("din , , , , ta", 9, 90)).get(0);
    assertEquals(Ratio.of(8, 100), quick.breath().startBeat().times(60).dividedBy(90));
  }

  @Test
  void longKarvaisOfferAFullBreathAndAllTheTimeThereIs() {
    List<Candidate> both = candidates(song("tom , , , , , , , ta", 4, 60));
    assertEquals(2, both.size());
    assertEquals(Ratio.of(6, 10), both.get(0).breath().seconds());
    assertEquals(Ratio.of(15, 8), both.get(1).breath().seconds());
    assertFalse(both.get(0).earliest());
    assertTrue(both.get(1).earliest());
  }

  @Test
  void karvaisStayWholeIfTheSettingsSaySo() {
    Composition song = song("tom , , , , ta", 4, 60);
    Voice voice = VoiceReader.read(Performance.of(song)).orElseThrow();
    assertTrue(Candidate.of(voice, song.tempo(), STUDY.withCutKarvai(false)).isEmpty());
  }

  @Test
  void heldSollusRingAndCanBeCut() {
    Element held = new Element.Group(2, 6, 0, Pieces.word("ta", "ka").sollus());
    Composition song = new Pieces().phrase("Song", held).say("Song", 1, 4).at(60);
    assertEquals(2, candidates(song).size(), "one stop, two ways to use it");
    assertEquals(Breath.Source.KARVAI, candidates(song).get(0).breath().source());
  }

  @Test
  void aJoinOfRoundsIsAPlaceWhereASlowLastSolluCanBeCut() {
    Composition slow = new Pieces().phrase("Song", "ta-ka-di-mi").say("Song", 2, 3).at(40);
    Candidate join = only(slow);
    assertEquals(Breath.Source.JOIN, join.breath().source());
    assertEquals(Ratio.of(1, 4), join.breath().seconds(), "half of a matra of 500 ms");
    Composition quick = new Pieces().phrase("Song", "ta-ka-di-mi").say("Song", 2, 3).at(45);
    assertTrue(candidates(quick).isEmpty());
  }

  @Test
  void restsBetweenRoundsAddToTheKarvaiBeforeThem() {
    Composition song =
        new Pieces()
            .phrase("Song", "ta-ka tom ,")
            .say("Song", 1, 4)
            .rest(1)
            .say("Song", 1, 4)
            .at(60);
    List<Candidate> all = candidates(song);
    assertEquals(Ratio.of(1), all.get(0).breath().seconds(), "the rest alone");
    assertEquals(Ratio.of(11, 8), all.get(all.size() - 1).breath().seconds(), "tom said short");
  }

  @Test
  void tellsPhraseEndsFromPhraseMiddles() {
    Composition song =
        new Pieces()
            .phrase("Drip", "ta . . . ka . . .")
            .phrase("Song", "Drip di . . . mi . . . Drip")
            .say("Song", 1, 4)
            .at(60);
    assertEquals(
        List.of(false, true, false, true, false),
        candidates(song).stream().map(candidate -> candidate.breath().endsPhrase()).toList());
  }

  @Test
  void tellsTheBeatBeforeANadaiChange() {
    Composition song =
        new Pieces().phrase("Song", "ta . . . ta . . .").say("Song", 1, 4).say("Song", 1, 5).at(60);
    assertEquals(
        List.of(false, true, true, false),
        candidates(song).stream().map(candidate -> candidate.breath().beforeChange()).toList());
    Composition inner =
        new Pieces()
            .phrase(
                "Song",
                Pieces.word("ta"),
                new Element.Silence(),
                new Element.Silence(),
                new Element.Silence(),
                new Element.InnerNadai(5, Sequence.of(Pieces.word("ta", "ka"))))
            .say("Song", 1, 4)
            .at(60);
    assertTrue(only(inner).breath().beforeChange());
  }

  private static Composition song(String text, int nadai, int tempo) {
    return new Pieces().phrase("Song", text).say("Song", 1, nadai).at(tempo);
  }

  private static List<Candidate> candidates(Composition song) {
    Voice voice = VoiceReader.read(Performance.of(song)).orElseThrow();
    return Candidate.of(voice, song.tempo(), STUDY);
  }

  private static Candidate only(Composition song) {
    List<Candidate> all = candidates(song);
    assertEquals(1, all.size());
    return all.get(0);
  }
}
