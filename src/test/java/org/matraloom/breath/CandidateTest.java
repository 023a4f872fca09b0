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

  /** The breaths that could be taken, stop by stop, from late to early. */
  private static List<Breath> breaths(Composition song) {
    return candidates(song).stream()
        .flatMap(
            each -> each.starts().stream().map(start -> each.breath(start, song.tempo(), STUDY)))
        .toList();
  }

  @Test
  void oneSilentMatraIsACatchBreathInFourAndNoneInFive() {
    Breath only = only(song("ta-ka . di-mi", 4, 60));
    assertEquals(Ratio.of(1, 2), only.startBeat());
    assertEquals(Ratio.of(1, 4), only.beats());
    assertEquals(Ratio.of(1, 4), only.seconds());
    assertEquals(Breath.Kind.CATCH, only.kind());
    assertEquals(Breath.Source.SILENCE, only.air().source());
    assertEquals(Ratio.ZERO, only.air().cutBeats());
    assertEquals("ka", only.after().sollu());
    assertTrue(candidates(song("ta-ka . di-mi", 5, 60)).isEmpty());
  }

  /** The worked example of the planning rules: two matras at 80 are 375 ms in 4, 300 ms in 5. */
  @Test
  void twoSilentMatrasAt80AreCatchBreathsInBoth() {
    assertEquals(Ratio.of(375, 1000), only(song("ta . . ka", 4, 80)).seconds());
    assertEquals(Ratio.of(300, 1000), only(song("ta . . ka", 5, 80)).seconds());
  }

  @Test
  void aThreeMatraNasalIsSaidShortAndTheRestUsedForAir() {
    Breath full = breaths(song("din , , ta", 4, 60)).get(0);
    assertEquals(Breath.Source.KARVAI, full.air().source());
    assertEquals(Ratio.of(3, 20), full.startBeat(), "a full breath leaves it 150 ms");
    assertEquals(Ratio.of(6, 10), full.seconds());
    assertEquals(Breath.Kind.FULL, full.kind());
  }

  @Test
  void aCutKeepsHalfAMatraOr80MillisecondsWhicheverIsLonger() {
    Breath slow = breaths(song("din , ta", 4, 60)).get(0);
    assertEquals(Ratio.of(1, 8), slow.startBeat(), "half a matra of 250 ms");
    Breath quick = breaths(song("din , , , , ta", 9, 90)).get(0);
    assertEquals(Ratio.of(8, 100), quick.startBeat().times(60).dividedBy(90));
  }

  @Test
  void longKarvaisOfferAFullBreathAndAllTheTimeThereIs() {
    List<Breath> both = breaths(song("tom , , , , , , , ta", 4, 60));
    assertEquals(2, both.size());
    assertEquals(Ratio.of(6, 10), both.get(0).seconds());
    assertEquals(Ratio.of(15, 8), both.get(1).seconds());
    Candidate tom = candidates(song("tom , , , , , , , ta", 4, 60)).get(0);
    assertEquals(both.get(0).startBeat(), tom.usualStart());
    assertEquals(both.get(1).startBeat(), tom.earliestStart());
    assertFalse(tom.free(), "a long sound that begins a phrase is no joint");
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
    assertEquals(1, candidates(song).size(), "one stop");
    assertEquals(2, breaths(song).size(), "two ways to use it");
    assertEquals(Breath.Source.KARVAI, breaths(song).get(0).air().source());
  }

  @Test
  void aJoinOfRoundsIsAPlaceWhereASlowLastSolluCanBeCut() {
    Composition slow = new Pieces().phrase("Song", "ta-ka-di-mi").say("Song", 2, 3).at(40);
    Breath join = only(slow);
    assertEquals(Breath.Source.SOLLU, join.air().source());
    assertEquals(Ratio.of(1, 4), join.seconds(), "half of a matra of 500 ms");
    Composition quick = new Pieces().phrase("Song", "ta-ka-di-mi").say("Song", 2, 3).at(45);
    assertTrue(candidates(quick).isEmpty());
    Voice voice = VoiceReader.read(Performance.of(slow)).orElseThrow();
    assertTrue(
        Candidate.of(voice, slow.tempo(), STUDY.withCutKarvai(false)).isEmpty(),
        "what is to ring out is not cut at the end of a round either");
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
    List<Breath> all = breaths(song);
    assertEquals(Ratio.of(1), all.get(0).seconds(), "the rest alone");
    assertEquals(Ratio.of(11, 8), all.get(all.size() - 1).seconds(), "tom said short");
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
        breaths(song).stream().map(breath -> breath.joint().endsPhrase()).toList());
  }

  @Test
  void tellsTheBeatBeforeANadaiChange() {
    Composition song =
        new Pieces().phrase("Song", "ta . . . ta . . .").say("Song", 1, 4).say("Song", 1, 5).at(60);
    assertEquals(
        List.of(false, true, true, false),
        breaths(song).stream().map(Breath::beforeChange).toList());
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
    assertTrue(only(inner).beforeChange());
  }

  private static Composition song(String text, int nadai, int tempo) {
    return new Pieces().phrase("Song", text).say("Song", 1, nadai).at(tempo);
  }

  private static List<Candidate> candidates(Composition song) {
    Voice voice = VoiceReader.read(Performance.of(song)).orElseThrow();
    return Candidate.of(voice, song.tempo(), STUDY);
  }

  private static Breath only(Composition song) {
    List<Breath> all = breaths(song);
    assertEquals(1, all.size());
    return all.get(0);
  }
}
