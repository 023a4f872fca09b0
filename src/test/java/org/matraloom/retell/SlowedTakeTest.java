package org.matraloom.retell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.Doubt;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.TakeFindings;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.PulseLine;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.recording.SoundExtent;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

class SlowedTakeTest {

  private static final int RATE = 48_000;
  private static final double BEAT_SECONDS = 60.0 / 66;
  private static final double BEGIN = 0.7;

  @TempDir private Path folder;

  private final Timeline timeline =
      ScoreTimeline.of(
          Performance.of(
              ScoreReader.read(Path.of("samples-synth", "gutter-song.loom"), Lexicon.standard())
                  .composition()
                  .orElseThrow()),
          0);

  @Test
  void beatsRunFromTheFirstSolluToTheLanding() {
    List<SlowedTake.Beat> beats = SlowedTake.beats(findings(Optional.empty()), timeline);
    assertEquals(43, beats.size(), "42 beats, and the one it lands on");
    for (int beat = 0; beat < beats.size(); beat++) {
      assertEquals(BEGIN + beat * BEAT_SECONDS, beats.get(beat).seconds(), 1e-9);
      assertEquals(beat % 6 == 0, beats.get(beat).samam());
    }
  }

  /** What the clicks add is the file with them less the file without. */
  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.6, 1})
  void clicksFallOnTheBeatsOfTheTakesOwnPulse(double speed) throws IOException {
    Path take = tone(0.25, 42 * BEAT_SECONDS + 3);
    float[] plain = slowed(take, speed, false);
    float[] clicked = slowed(take, speed, true);
    assertEquals(plain.length, clicked.length);
    List<Integer> starts = new ArrayList<>();
    int quietSince = -RATE;
    double loudest = 0;
    for (int i = 0; i < plain.length; i++) {
      double added = Math.abs(clicked[i] - plain[i]);
      loudest = Math.max(loudest, added);
      if (added > 0.01 && i - quietSince > RATE / 10) {
        starts.add(i);
      }
      quietSince = added > 0.01 ? i : quietSince;
    }
    assertEquals(43, starts.size());
    for (int beat = 0; beat < starts.size(); beat++) {
      double wanted = (BEGIN + beat * BEAT_SECONDS) / speed * RATE;
      assertEquals(wanted, starts.get(beat), 4, "beat " + beat);
    }
    assertEquals(0.125, loudest, 0.001, "half the peak of the take");
  }

  @Test
  void aLoudTakeMakesRoomForTheClicks() throws IOException {
    Path take = tone(0.99, 20);
    SlowedTake slow = new SlowedTake(findings(Optional.empty()), timeline, 0.6, true);
    SlowedTake.Written written = slow.write(take, folder.resolve("slow.wav"));
    assertEquals(20 * Math.log10(0.891 / 1.485), written.gainDb(), 0.01);
    float peak = 0;
    for (float sample : read(folder.resolve("slow.wav"))) {
      peak = Math.max(peak, Math.abs(sample));
    }
    assertTrue(peak > 0.5 && peak < 0.9, "peak " + peak);
  }

  @Test
  void aTakeInDoubtHasNoClicks() throws IOException {
    TakeFindings unsure = findings(Optional.of(new Doubt("it may be another piece")));
    SlowedTake.Written written =
        new SlowedTake(unsure, timeline, 0.6, true)
            .write(tone(0.25, 3), folder.resolve("slow.wav"));
    assertEquals(0, written.clicks());
    assertEquals(0, written.gainDb());
    assertEquals(5, written.seconds(), 1e-3);
  }

  @Test
  void theSpeedHasARange() {
    TakeFindings findings = findings(Optional.empty());
    for (double speed : new double[] {0.2, 1.1, Double.NaN}) {
      assertThrows(
          IllegalArgumentException.class, () -> new SlowedTake(findings, timeline, speed, true));
    }
  }

  private float[] slowed(Path take, double speed, boolean clicks) throws IOException {
    Path target = folder.resolve("slow-" + clicks + ".wav");
    new SlowedTake(findings(Optional.empty()), timeline, speed, clicks).write(take, target);
    return read(target);
  }

  private static float[] read(Path file) throws IOException {
    float[] all = new float[(int) SoundExtent.of(file).frames()];
    try (Recording recording = Recordings.open(file)) {
      int done = 0;
      float[] block = new float[4096];
      int count;
      while ((count = recording.read(block)) > 0) {
        System.arraycopy(block, 0, all, done, count);
        done += count;
      }
    }
    return all;
  }

  private Path tone(double peak, double seconds) throws IOException {
    Path file = folder.resolve("tone-" + peak + ".wav");
    float[] tone = new float[(int) (seconds * RATE)];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = (float) (peak * Math.sin(2 * Math.PI * 150 * i / RATE));
    }
    try (WavWriter wav = new WavWriter(file, new PcmFormat(RATE, 16, 1), tone.length, List.of())) {
      wav.write(tone, tone.length);
      wav.finish();
    }
    return file;
  }

  private TakeFindings findings(Optional<Doubt> doubt) {
    List<ExpectedSollu> expected = ExpectedSollu.of(timeline);
    List<Onset> onsets = new ArrayList<>();
    List<Alignment.Said> aligned = new ArrayList<>();
    List<SaidSollu> sollus = new ArrayList<>();
    for (int place = 0; place < expected.size(); place++) {
      double felt = BEGIN + expected.get(place).beat().toDouble() * BEAT_SECONDS;
      aligned.add(new Alignment.Said(place, place));
      onsets.add(new Onset(felt - 0.015, 1));
      sollus.add(new SaidSollu(place, 1, felt - 0.015, felt, 0));
    }
    Pulse pulse =
        new Pulse(66, 0, 0, OptionalDouble.empty(), new PulseLine(0, BEAT_SECONDS, 0, BEGIN));
    return new TakeFindings(
        new Alignment(expected, onsets, aligned),
        sollus,
        Optional.of(pulse),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        new BreathFindings(0, 0, 0, 0, List.of()),
        doubt);
  }
}
