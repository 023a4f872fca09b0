package org.matraloom.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;
import org.matraloom.measure.TakeFindings;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;

/** Two made takes of which it is known which has what fault. */
class CleanerTakeTest {

  private final Timeline timeline = TakeCase.timeline(Path.of("samples-synth", "gutter-song.loom"));

  private TakeFindings take(Consumer<Flaws> faults) throws IOException {
    Flaws flaws = new Flaws(5);
    faults.accept(flaws);
    MadeTake made = MadeTake.of(timeline, flaws, new Speakers(Path.of(".")).named(Speakers.LOW));
    return TakeFindings.of(
        timeline, OnsetCurve.of(SoundFiles.recording(made.sound(), made.rate())));
  }

  private String verdict(TakeFindings first, TakeFindings second) {
    return new CleanerTake(first, second, timeline.performance()).verdict();
  }

  @Test
  void theTakeWithoutTheFaultIsCleaner() throws IOException {
    TakeFindings clean = take(flaws -> {});
    TakeFindings drifts = take(flaws -> flaws.driftPercent = 6);
    TakeFindings breaks = take(flaws -> flaws.restarts = true);
    assertEquals(
        "The first take is cleaner: it is free of a pulse that runs or drags.",
        verdict(clean, drifts));
    assertEquals("The second take is cleaner: it is free of a break.", verdict(breaks, clean));
    assertEquals(
        "The first take is cleaner: it is free of a break; new in it: a pulse that runs or drags.",
        verdict(drifts, breaks));
  }

  @Test
  void ofTwoWithTheSameWorstFaultTheOneWithFewerIsCleaner() throws IOException {
    TakeFindings breaks = take(flaws -> flaws.restarts = true);
    TakeFindings both =
        take(
            flaws -> {
              flaws.restarts = true;
              flaws.driftPercent = 6;
            });
    assertEquals(
        "The first take is cleaner: it is free of a pulse that runs or drags; both have a break.",
        verdict(breaks, both));
  }

  @Test
  void withoutFaultsTheSpreadDecides() throws IOException {
    TakeFindings close = take(flaws -> flaws.jitterSeconds = 0.002);
    TakeFindings loose = take(flaws -> flaws.jitterSeconds = 0.010);
    String words = verdict(loose, close);
    assertTrue(
        words.matches(
            "The second take is cleaner: its sollus lie [0-9] ms from their pulse,"
                + " those of the other [0-9]+ ms\\."),
        words);
    assertEquals("Neither take is cleaner than the other.", verdict(close, close));
  }

  @Test
  void whatCannotBeJudgedIsSaid() throws IOException {
    TakeFindings clean = take(flaws -> {});
    TakeFindings silent =
        TakeFindings.of(timeline, OnsetCurve.of(SoundFiles.recording(new float[441_000], 44_100)));
    assertEquals(
        "Which take is cleaner cannot be told: the second cannot be judged.",
        verdict(clean, silent));
    assertEquals(
        "Which take is cleaner cannot be told: neither can be judged.", verdict(silent, silent));
  }
}
