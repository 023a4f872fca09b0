package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.breath.BreathSettings;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.live.Rivers;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Tempo;

/** Marks of sollus that are heard at known times, and how they are set in lines. */
class SaidMarksTest {

  private static final double START = 2.5;
  private static final long START_FRAME = (long) (START * Rivers.RATE);

  private final Timeline timeline = Rivers.timeline(Tempo.of(60), 1);
  private final List<ExpectedSollu> expected = ExpectedSollu.of(timeline);

  private SaidMarks marks(boolean knowsDelay) {
    return new SaidMarks(timeline, Lexicon.standard(), knowsDelay, Rivers.RATE);
  }

  /** A sollu whose vowel is so much late. */
  private Onset said(int place, double lateSeconds) {
    ExpectedSollu asked = expected.get(place);
    double lag = FeltBeat.of(asked.sollu(), Lexicon.standard()).usualLagSeconds();
    double felt = START + timeline.secondsAt(asked.beat()).toDouble() + lateSeconds;
    return new Onset(felt - lag, 0.9);
  }

  @Test
  void eachSoundBelongsToTheNearestSolluAndIsAsLateAsItIs() {
    SaidMarks marks = marks(true);
    double[] late = {0, 0.03, -0.05, 0.012, -0.02};
    for (int k = 0; k < late.length; k++) {
      SaidMark mark = marks.hear(said(k, late[k]), START_FRAME).orElseThrow();
      assertEquals(k, mark.place());
      assertEquals(expected.get(k).beat(), mark.beat());
      assertEquals(late[k], mark.lateSeconds(), 1e-6);
    }
    assertEquals(4, marks.ofBeat(0).size(), "four matras a beat");
  }

  @Test
  void ofTwoSoundsForOneSolluTheNearerCountsAndFarOnesBelongToNone() {
    SaidMarks marks = marks(true);
    assertTrue(marks.hear(said(3, 0.06), START_FRAME).isPresent());
    assertTrue(marks.hear(said(3, -0.02), START_FRAME).isPresent());
    assertEquals(Optional.empty(), marks.hear(said(3, 0.08), START_FRAME));
    assertEquals(-0.02, marks.ofBeat(0).get(0).lateSeconds(), 1e-6);
    assertEquals(Optional.empty(), marks.hear(said(0, -1.0), START_FRAME), "before the first");
    int last = expected.size() - 1;
    assertEquals(Optional.empty(), marks.hear(said(last, 0.4), START_FRAME), "after the last");
  }

  @Test
  void whereTheDelayWasNeverMeasuredItIsTakenFromTheLastSollus() {
    SaidMarks marks = marks(false);
    for (int k = 0; k < 12; k++) {
      marks.hear(said(k, 0.07), START_FRAME);
    }
    assertEquals(0.03, marks.hear(said(12, 0.10), START_FRAME).orElseThrow().lateSeconds(), 1e-6);
    SaidMarks knowing = marks(true);
    assertEquals(0.1, knowing.hear(said(12, 0.10), START_FRAME).orElseThrow().lateSeconds(), 1e-6);
  }

  /** Who keeps the old speed in five is elsewhere in each cell, and not at the end yet. */
  @Test
  void whoIsBehindDoesNotEndWithTheGuide() {
    int last = expected.size() - 1;
    SaidMarks even = marks(true);
    SaidMarks behind = marks(true);
    for (int k = last - 9; k <= last; k++) {
      even.hear(said(k, 0.004 * (k % 3 - 1)), START_FRAME);
      assertEquals(k == last, even.endWithTheGuide());
      behind.hear(said(k, 0.04 * (k % 5 - 2)), START_FRAME);
      assertFalse(behind.endWithTheGuide());
    }
  }

  @Test
  void marksStandOverOrUnderTheSolluTheyAreOf() {
    BeatSheet sheet = BeatSheet.of(timeline, Tempo.of(60), BreathSettings.study());
    SaidMarks marks = marks(true);
    marks.hear(said(3, 0.03), START_FRAME);
    marks.hear(said(4, -0.01), START_FRAME);
    marks.hear(said(6, 0.08), START_FRAME);
    marks.hear(said(7, -0.05), START_FRAME);
    List<String> words = List.of(sheet.at(0).words(), sheet.at(1).words());
    SaidLines lines = SaidLines.of(sheet, marks, 1, words, 68);
    assertEquals(words.get(0) + "  |  " + words.get(1), lines.words());
    assertUnder(lines, lines.late(), 'o', sheet, 3);
    assertUnder(lines, lines.early(), '.', sheet, 4);
    assertUnder(lines, lines.late(), 'O', sheet, 6);
    assertUnder(lines, lines.early(), 'O', sheet, 7);
    assertEquals(2, lines.early().replace(" ", "").length());
    assertEquals(2, lines.late().replace(" ", "").length());
    SaidLines narrow = SaidLines.of(sheet, marks, 1, words, words.get(1).length() + 7);
    assertTrue(narrow.words().endsWith("  |  " + words.get(1)), narrow.words());
    assertEquals(lines.early().charAt(lines.early().length() - 1), 'O');
    assertEquals(
        lines.words().length() - lines.early().length(),
        narrow.words().length() - narrow.early().length(),
        "marks move with their words");
  }

  private void assertUnder(SaidLines lines, String marks, char sign, BeatSheet sheet, int place) {
    int before = place < 4 ? 0 : sheet.at(0).words().length() + 5;
    int column = before + sheet.columnOf(expected.get(place).beat()).orElseThrow();
    assertEquals(sign, marks.charAt(column), marks);
    String spelling = expected.get(place).sollu().spelling();
    assertTrue(lines.words().startsWith(spelling, column), lines.words());
  }
}
