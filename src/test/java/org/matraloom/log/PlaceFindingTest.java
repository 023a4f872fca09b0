package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.log.PlaceFinding.Habitual;

class PlaceFindingTest {

  private static final ScorePlace INTO = new ScorePlace(ScorePlace.Kind.INTO, 3, "4>5");

  /** One take a day, at one place. */
  private static PlaceFinding of(double... late) {
    List<LogEntry> entries = new ArrayList<>();
    for (int i = 0; i < late.length; i++) {
      entries.add(Entries.late(Entries.EVENING.plusDays(i), INTO, late[i]));
    }
    List<PlaceFinding> findings = findings(entries);
    assertEquals(1, findings.size());
    return findings.get(0);
  }

  private static List<PlaceFinding> findings(List<LogEntry> entries) {
    return PlaceFinding.of(new History(entries, List.of()), Entries.PIECE);
  }

  /** Mean 31, spread 1, standard error 0.577: 53.7 of them, a chance of 0.0003 with 2 degrees. */
  @Test
  void threeTakesThatAgreeAreAHabitAndTwoAreNot() {
    PlaceFinding finding = of(30, 31, 32);
    assertEquals(31, finding.history().mean(), 1e-9);
    assertEquals(1, finding.history().spread(), 1e-9);
    assertEquals(Habitual.ALL, finding.habit());
    assertFalse(finding.trendWasSought());
    assertEquals(Habitual.NEVER, of(31, 31).habit());
    assertEquals(Habitual.NEVER, of(31).habit());
    assertEquals(0, of(31).history().spread(), 0);
  }

  /**
   * 10, 20 and 30: mean 20, standard error 5.77, so 3.46 of them; but with 2 degrees of freedom
   * that is a chance of 0.074. 18, 20 and 22: 17.3 of them, a chance of 0.0033.
   */
  @Test
  void twoStandardErrorsOfFewTakesAreNotEnough() {
    assertEquals(Habitual.NEVER, of(10, 20, 30).habit());
    assertEquals(Habitual.ALL, of(18, 20, 22).habit());
  }

  @ParameterizedTest
  @CsvSource({"3, 30", "4, -25", "5, 10", "12, 60", "200, -11.5"})
  void aConstantLatenessIsToldWithItsSize(int takes, double late) {
    double[] all = new double[takes];
    Arrays.fill(all, late);
    PlaceFinding finding = of(all);
    assertEquals(Habitual.ALL, finding.habit());
    assertEquals(late, finding.part().mean(), 1e-9);
    assertEquals(takes, finding.part().sameSide());
    assertTrue(finding.trend().isEmpty());
  }

  @Test
  void whatTheMeasurementMayHaveMadeIsNotTold() {
    assertEquals(Habitual.NEVER, of(9, 9, 9, 9, 9).habit());
    assertEquals(Habitual.NEVER, of(0, 0, 0, 0).habit());
  }

  /**
   * As a whole 20.1 with a standard error of 8.7, a chance of 0.07; the first three 40, of 0.58.
   */
  @Test
  void aHabitThatHasGoneWasOneAndIsBetter() {
    PlaceFinding finding = of(41, 40, 39, 1, 0.5, -0.2);
    assertEquals(Habitual.EARLIER, finding.habit());
    assertEquals(40, finding.part().mean(), 1e-9);
    assertEquals(1.3 / 3, finding.rest().orElseThrow().mean(), 1e-9);
    PlaceTrend trend = finding.trend().orElseThrow();
    assertTrue(trend.better());
    assertEquals(Entries.EVENING.plusDays(3), trend.since());
    assertEquals(40, trend.offBefore(), 1e-9);
    assertEquals(1.7 / 3, trend.offAfter(), 1e-9);
  }

  @Test
  void aHabitThatIsNewIsWorse() {
    PlaceFinding finding = of(0.2, -0.5, 1, 39, 40, 41);
    assertEquals(Habitual.LATER, finding.habit());
    assertFalse(finding.trend().orElseThrow().better());
    assertEquals(Entries.EVENING.plusDays(3), finding.trend().orElseThrow().since());
  }

  /** Nearer to right is better, from whichever side. */
  @Test
  void earlyBecomesBetterToo() {
    PlaceTrend trend = of(-60, -58, -55, -31, -30, -28).trend().orElseThrow();
    assertTrue(trend.better());
    assertEquals(3, trend.before().points().size());
    assertEquals(57.667, trend.offBefore(), 0.001);
    assertEquals(29.667, trend.offAfter(), 0.001);
  }

  /** The takes of one day stay together; if there is but one day the clock parts them. */
  @Test
  void aTrendBeginsWithADayIfThereAreSeveral() {
    double[] late = {60, 58, 31, 30, 28, 27};
    List<LogEntry> entries = new ArrayList<>();
    List<LogEntry> ofOneDay = new ArrayList<>();
    for (int i = 0; i < late.length; i++) {
      entries.add(Entries.late(Entries.EVENING.plusDays(i / 3).plusMinutes(i), INTO, late[i]));
      ofOneDay.add(Entries.late(Entries.EVENING.plusMinutes(i), INTO, late[i]));
    }
    PlaceTrend trend = findings(entries).get(0).trend().orElseThrow();
    assertFalse(trend.ofOneDay());
    assertEquals(Entries.EVENING.plusDays(1).plusMinutes(3), trend.since());
    PlaceTrend within = findings(ofOneDay).get(0).trend().orElseThrow();
    assertTrue(within.ofOneDay());
    assertEquals(Entries.EVENING.plusMinutes(2), within.since());
  }

  @Test
  void theOrderOfRecordsDoesNotMatter() {
    List<LogEntry> entries = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      entries.add(Entries.late(Entries.EVENING.plusDays(i), noisy(new Random(i), 20)));
    }
    List<PlaceFinding> findings = findings(entries);
    assertEquals(9, findings.size());
    for (int i = 0; i < 5; i++) {
      Collections.shuffle(entries, new Random(i));
      assertEquals(findings, findings(entries));
    }
  }

  /** Nine places of ten takes, with scatter far beyond what is too small to be told. */
  @Test
  void chanceAloneTellsNoHabit() {
    for (int takes : new int[] {3, 5, 10, 20}) {
      int without = 0;
      for (int draw = 0; draw < 100; draw++) {
        Random random = new Random(1_000 * takes + draw);
        List<LogEntry> entries = new ArrayList<>();
        for (int i = 0; i < takes; i++) {
          entries.add(Entries.late(Entries.EVENING.plusDays(i), noisy(random, 200)));
        }
        List<PlaceFinding> findings = findings(entries);
        assertEquals(9, findings.size());
        without += findings.stream().noneMatch(PlaceFinding::isTold) ? 1 : 0;
      }
      assertTrue(without >= 97, without + " of 100 logs of " + takes + " takes");
    }
  }

  private static List<PlaceNote> noisy(Random random, double spread) {
    List<PlaceNote> notes = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      double off = Math.round(10 * spread * random.nextGaussian()) / 10.0;
      notes.add(new PlaceNote(new ScorePlace(ScorePlace.Kind.PHRASE, i, "pool"), off));
    }
    return notes;
  }

  /** 61.4 against 60 is 2.33 % fast; the line keeps tempo 61, and 61.4 / 61 is 0.66 %. */
  @Test
  void landingAndRoundsAreKnownOfRecordsThatKeepNoPlaces() {
    LogEntry full = Entries.numbered(1);
    LogEntry old =
        new LogEntry(
            full.when(),
            full.kind(),
            full.piece(),
            full.tempo(),
            new LogEntry.Outcome(full.clean(), full.landingErrorMs(), full.rounds()),
            full.voicedSeconds(),
            full.recording(),
            "");
    List<PlaceFinding> findings = findings(List.of(old));
    assertEquals(3, findings.size());
    assertEquals(-12.5, findings.get(0).history().mean(), 1e-9);
    assertEquals(100 * (61.4 / 61 - 1), findings.get(2).history().mean(), 1e-9);
    assertEquals(5, findings(List.of(full)).size());
  }

  @Test
  void notesByHandAndEmptyLogsHaveNoPlaces() {
    assertEquals(List.of(), findings(List.of()));
    assertEquals(List.of(), findings(List.of(Entries.voiced(Entries.EVENING, 5))));
    assertEquals(List.of(), PlaceFinding.of(new History(List.of(), List.of()), "Rain"));
  }
}
