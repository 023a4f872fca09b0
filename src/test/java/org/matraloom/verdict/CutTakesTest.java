package org.matraloom.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;
import org.matraloom.madetake.TakeCases;
import org.matraloom.measure.TakeFindings;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;

/** Takes that were cut, so that it is known which sollus are in them. */
class CutTakesTest {

  private static final double[] INTO_SOLLU = {-0.05, 0.08};

  private static final Timeline TIMELINE =
      TakeCase.timeline(Path.of("samples-synth", "gutter-song.loom"));

  /** Made once for all tests; who cuts it copies it. */
  private static final MadeTake TAKE = made();

  private final List<ExpectedSollu> expected = ExpectedSollu.of(TIMELINE);

  private static MadeTake made() {
    Flaws flaws = new Flaws(7);
    flaws.startSeconds = 3.0;
    return MadeTake.of(TIMELINE, flaws, new Speakers(Path.of(".")).named(Speakers.LOW));
  }

  private int frame(int place, double later) {
    return (int) ((TAKE.plan().sollus().get(place).onsetSeconds() + later) * TAKE.rate());
  }

  private TakeFindings measured(float[] sound) throws IOException {
    TakeFindings found =
        TakeFindings.of(TIMELINE, OnsetCurve.of(SoundFiles.recording(sound, TAKE.rate())));
    assertTrue(found.doubt().isEmpty(), "" + found.doubt());
    return found;
  }

  private Judgement judged(TakeFindings found) {
    return Judgement.of(found, TIMELINE.performance());
  }

  private String place(int place) {
    return new TakePlaces(TIMELINE.performance(), expected).of(place);
  }

  /** In the midst of a beat, at a phrase, after one round, in the second and in the last. */
  @Test
  void aRecordingThatBeginsLateIsNotToldAsMissedSollus() throws IOException {
    int secondRound = firstOf(2);
    for (int place : new int[] {1, 3, 10, 23, secondRound, secondRound + 7, firstOf(3)}) {
      for (double later : INTO_SOLLU) {
        float[] sound = Arrays.copyOfRange(TAKE.sound(), frame(place, later), TAKE.sound().length);
        TakeFindings found = measured(sound);
        String what = place + " " + later + ": " + found.alignment().recorded();
        int first = later > 0 ? place + 1 : place;
        assertEquals(expected.size(), found.alignment().recorded().to(), what);
        int begin = found.alignment().recorded().from();
        assertTrue(begin == first || begin == first + 1, what + ", begins with " + first);
        assertTrue(found.alignment().missed().size() <= 1, what + found.alignment().missed());
        assertTrue(found.landing().orElseThrow().lands(), what);
        String words = judged(found).recorded().orElseThrow();
        assertTrue(words.startsWith("The recording begins at " + place(begin) + "; "), words);
        assertTrue(
            judged(found).wrong().startsWith("Nothing is out of"), what + judged(found).wrong());
      }
    }
  }

  @Test
  void aRecordingThatEndsEarlyIsNotToldAsMissedSollus() throws IOException {
    for (int place : new int[] {firstOf(2), firstOf(2) + 9, firstOf(3) + 20, expected.size() - 2}) {
      TakeFindings found = measured(Arrays.copyOf(TAKE.sound(), frame(place, 0)));
      String what = place + ": " + found.alignment().recorded();
      assertEquals(new RecordedRange(0, place), found.alignment().recorded(), what);
      assertTrue(found.landing().isEmpty());
      assertTrue(found.alignment().missed().size() <= 1, what + found.alignment().missed());
      String words = judged(found).recorded().orElseThrow();
      assertTrue(words.startsWith("The recording ends at " + place(place - 1) + "; "), words);
      assertEquals("The landing was not heard: it is not in the recording.", judged(found).wrong());
    }
  }

  @Test
  void bothEndsMayBeMissing() throws IOException {
    int from = firstOf(2) + 12;
    int to = firstOf(3) + 30;
    TakeFindings found =
        measured(Arrays.copyOfRange(TAKE.sound(), frame(from, -0.05), frame(to, 0)));
    assertEquals(new RecordedRange(from, to), found.alignment().recorded());
    assertTrue(
        judged(found).recorded().orElseThrow().contains(" and ends at " + place(to - 1)),
        "" + judged(found).recorded());
  }

  /** Silence before: the recorder was on for so long that all would have been heard. */
  @Test
  void whoComesInLateHasMissedSollus() throws IOException {
    float[] sound = TAKE.sound().clone();
    int place = 12;
    Arrays.fill(sound, 0, frame(place, -0.05), 0.0001f);
    TakeFindings found = measured(sound);
    assertEquals(RecordedRange.whole(expected.size()), found.alignment().recorded());
    assertEquals(place, found.alignment().missed().size(), "" + found.alignment().missed());
    assertEquals(
        "The first 12 sollus were not heard, though the recording was on: you came in at "
            + place(place)
            + ", or began there.",
        judged(found).wrong());
  }

  /** The second round is the first again: one of them alone may be either. */
  @Test
  void onePassageOfTwoThatAreAlikeMayBeEither() throws IOException {
    TakeFindings found = measured(Arrays.copyOf(TAKE.sound(), frame(firstOf(2), -0.02)));
    String words = judged(found).recorded().orElseThrow();
    assertTrue(words.contains("It may as well begin at " + place(firstOf(2))), words);
  }

  /** A short piece may fit the times of the end of a longer one; its sounds do not. */
  @Test
  void anotherPieceIsNotTakenForAPart() throws IOException {
    Timeline other = TakeCase.timeline(Path.of("samples-synth", "lantern-ferry.loom"));
    List<TakeCase> pieces =
        TakeCases.with(List.of(), 1).stream()
            .filter(made -> List.of(34L, 35L).contains(made.flaws().seed))
            .toList();
    assertEquals(2, pieces.size());
    for (TakeCase made : pieces) {
      MadeTake said = made.make(new Speakers(Path.of(".")));
      OnsetCurve curve = OnsetCurve.of(SoundFiles.recording(said.sound(), said.rate()));
      assertTrue(TakeFindings.of(other, curve).doubt().isPresent(), made.toString());
      assertTrue(TakeFindings.of(made.timeline(), curve).doubt().isEmpty(), made.toString());
    }
  }

  private int firstOf(int round) {
    int place = 0;
    while (expected.get(place).round() < round) {
      place++;
    }
    return place;
  }
}
