package org.matraloom.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.TakeFindings;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;

/** A fault is booked to the round in which it was made: takes with a wait at a known place. */
class CleannessTest {

  private static final double WAIT_SECONDS = 0.25;
  private static final double BEFORE_SECONDS = 0.05;

  private final Timeline timeline = TakeCase.timeline(Path.of("samples-synth", "gutter-song.loom"));

  private TakeFindings findings(float[] sound, int rate) throws IOException {
    return TakeFindings.of(timeline, OnsetCurve.of(SoundFiles.recording(sound, rate)));
  }

  private MadeTake take(Flaws flaws) {
    return MadeTake.of(timeline, flaws, new Speakers(Path.of(".")).named(Speakers.LOW));
  }

  /** The sound with silence put in before a sollu of a round, counted from 0. */
  private TakeFindings waiting(MadeTake take, TakeFindings clean, int round, int sollu)
      throws IOException {
    List<ExpectedSollu> expected = clean.alignment().expected();
    int first = 0;
    while (expected.get(first).round() < round) {
      first++;
    }
    int place = first + sollu;
    double seconds =
        clean.sollus().stream()
            .filter(said -> said.place() == place)
            .findFirst()
            .orElseThrow()
            .onsetSeconds();
    int cut = (int) ((seconds - BEFORE_SECONDS) * take.rate());
    float[] sound = take.sound();
    float[] longer = new float[sound.length + (int) (WAIT_SECONDS * take.rate())];
    System.arraycopy(sound, 0, longer, 0, cut);
    System.arraycopy(sound, cut, longer, longer.length - sound.length + cut, sound.length - cut);
    return findings(longer, take.rate());
  }

  private List<Boolean> rounds(TakeFindings findings) {
    Cleanness clean = new Cleanness(findings, timeline.performance());
    List<RoundFindings> rounds = clean.rounds();
    assertEquals(3, rounds.size());
    return rounds.stream().map(clean::of).toList();
  }

  @Test
  void aWaitIsBookedToTheRoundInWhichOneWaited() throws IOException {
    MadeTake take = take(new Flaws(5));
    TakeFindings clean = findings(take.sound(), take.rate());
    assertEquals(List.of(true, true, true), rounds(clean));
    for (int round = 1; round <= 3; round++) {
      TakeFindings late = waiting(take, clean, round, 12);
      assertFalse(new Cleanness(late, timeline.performance()).ofWhole());
      assertEquals(List.of(round != 1, round != 2, round != 3), rounds(late), "round " + round);
    }
  }

  @Test
  void aNewBeginningIsBookedToTheRoundThatBrokeOff() throws IOException {
    Flaws flaws = new Flaws(5);
    flaws.restarts = true;
    MadeTake take = take(flaws);
    TakeFindings found = findings(take.sound(), take.rate());
    assertEquals(1, found.brokenOff().size());
    int broken = found.alignment().expected().get(found.brokenOff().get(0)).round();
    assertEquals(List.of(broken != 1, broken != 2, broken != 3), rounds(found));
    assertFalse(found.lands());
    assertTrue(found.landsAsBegun());
  }
}
