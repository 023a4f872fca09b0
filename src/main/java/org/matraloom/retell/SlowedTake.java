package org.matraloom.retell;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.GuideGaps;
import org.matraloom.measure.TakeFindings;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.pulse.PulseLine;
import org.matraloom.recording.Recording;
import org.matraloom.recording.RecordingException;
import org.matraloom.recording.Recordings;
import org.matraloom.recording.ResampledRecording;
import org.matraloom.recording.SoundExtent;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/** A take slowed without changing its pitch, with clicks where the beats of its own pulse fall. */
public final class SlowedTake {

  /** The slowest speed made: a quarter. */
  public static final double SLOWEST = 0.25;

  private static final int BLOCK_FRAMES = 8192;

  /** The highest peak written, 1 dB under full scale. */
  private static final double HIGHEST_PEAK = 0.891;

  /** Clicks against the peak of the take. */
  private static final double CLICK_SHARE = 0.5;

  private static final Set<Integer> KEPT_RATES = Set.of(44_100, 48_000, 96_000);
  private static final int OTHER_RATE = 48_000;

  /**
   * What was written.
   *
   * @param seconds how long it is
   * @param clicks how many clicks were laid over it
   * @param gainDb how much the level was changed to leave room for them, in dB, at most 0
   */
  public record Written(double seconds, int clicks, double gainDb) {}

  /** A beat of the pulse, in seconds of the take. */
  record Beat(double seconds, boolean samam) {}

  private final TakeFindings findings;
  private final double speed;
  private final List<Beat> beats;

  /**
   * Prepares a slowed take.
   *
   * @param findings what was measured in it
   * @param timeline what was to be said
   * @param speed its new speed, from {@value #SLOWEST} to 1
   * @param withClicks whether clicks are laid over it; there are none if the take cannot be judged
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public SlowedTake(TakeFindings findings, Timeline timeline, double speed, boolean withClicks) {
    if (!(speed >= SLOWEST && speed <= 1)) {
      throw new IllegalArgumentException("the speed is " + SLOWEST + " to 1, given " + speed);
    }
    this.findings = findings;
    this.speed = speed;
    this.beats = withClicks && findings.doubt().isEmpty() ? beats(findings, timeline) : List.of();
  }

  /**
   * Writes it as a mono WAVE file of 16 bits, at the rate of the recording where that is 44100,
   * 48000 or 96000 frames a second, and at 48000 otherwise.
   *
   * @param recording the file that was measured
   * @param target where it goes; an older file is replaced
   * @return what was written
   * @throws RecordingException if the recording cannot be read
   * @throws IOException if the disk fails
   */
  public Written write(Path recording, Path target) throws IOException {
    SoundExtent extent = SoundExtent.of(recording);
    double clickPeak = beats.isEmpty() ? 0 : CLICK_SHARE * extent.peak();
    double gain = Math.min(1, HIGHEST_PEAK / Math.max(HIGHEST_PEAK, extent.peak() + clickPeak));
    gain = beats.isEmpty() ? 1 : gain;
    SlowMap map = new SlowMap(speed, anchors(findings));
    GuideGaps gaps = GuideGaps.of(recording);
    long taken = extent.frames() - gaps.frames();
    Recording measured = gaps.leftOutOf(Recordings.open(recording));
    try (Recording source = atOfferedRate(measured, taken)) {
      int rate = source.ratePerSecond();
      double seconds = (double) taken / extent.ratePerSecond() / speed;
      long frames = Math.round(seconds * rate);
      List<BeatClicks.Click> clicks = clicks(map, rate, frames);
      BeatClicks laid = new BeatClicks(clicks, rate, clickPeak * gain);
      PcmFormat format = new PcmFormat(rate, 16, 1);
      try (WavWriter file = new WavWriter(target, format, frames, List.of())) {
        copy(new SlowSound(source, map, frames), gain, laid, file);
        file.finish();
      }
      return new Written(seconds, clicks.size(), 20 * Math.log10(gain));
    }
  }

  private static Recording atOfferedRate(Recording source, long frames) {
    return KEPT_RATES.contains(source.ratePerSecond())
        ? source
        : new ResampledRecording(source, frames, OTHER_RATE);
  }

  private static void copy(SlowSound slow, double gain, BeatClicks clicks, WavWriter file)
      throws IOException {
    float[] block = new float[BLOCK_FRAMES];
    long done = 0;
    int count;
    while ((count = slow.read(block)) > 0) {
      for (int i = 0; i < count; i++) {
        block[i] *= (float) gain;
      }
      clicks.addTo(block, count, done);
      file.write(block, count);
      done += count;
    }
  }

  private List<BeatClicks.Click> clicks(SlowMap map, int rate, long frames) {
    return beats.stream()
        .map(
            beat ->
                new BeatClicks.Click(Math.round(map.slowed(beat.seconds()) * rate), beat.samam()))
        .filter(click -> click.frame() >= 0 && click.frame() < frames)
        .toList();
  }

  /** Sollus are kept with their felt beats, other sounds by their onsets. */
  static List<SlowMap.AnchorPoint> anchors(TakeFindings findings) {
    List<SlowMap.AnchorPoint> anchors = new ArrayList<>();
    Set<Double> taken = new HashSet<>();
    for (SaidSollu sollu : findings.sollus()) {
      taken.add(sollu.onsetSeconds());
      anchors.add(
          new SlowMap.AnchorPoint(
              sollu.onsetSeconds(), Math.max(sollu.onsetSeconds(), sollu.feltSeconds())));
    }
    for (Onset onset : findings.alignment().onsets()) {
      if (onset.confidence() >= OnsetCurve.SURE_CONFIDENCE && !taken.contains(onset.seconds())) {
        anchors.add(new SlowMap.AnchorPoint(onset.seconds(), onset.seconds()));
      }
    }
    return anchors;
  }

  /** The beats of every run, from the one under its first sollu; the last run up to its landing. */
  static List<Beat> beats(TakeFindings findings, Timeline timeline) {
    List<Beat> beats = new ArrayList<>();
    findings.pulse().ifPresent(pulse -> addBeats(findings, timeline, pulse.line(), beats));
    return beats;
  }

  private static void addBeats(
      TakeFindings findings, Timeline timeline, PulseLine line, List<Beat> beats) {
    Avartana avartana = timeline.performance().avartana();
    List<ExpectedSollu> expected = findings.alignment().expected();
    for (int run = 1; run <= line.runs(); run++) {
      int number = run;
      double[] said =
          findings.sollus().stream()
              .filter(sollu -> sollu.run() == number)
              .mapToDouble(sollu -> expected.get(sollu.place()).beat().toDouble())
              .sorted()
              .toArray();
      if (said.length > 0) {
        boolean isLast = run == line.runs();
        double end =
            isLast ? timeline.performance().soundEndBeat().toDouble() : said[said.length - 1];
        for (long beat = (long) Math.floor(said[0]); beat <= end; beat++) {
          beats.add(new Beat(line.secondsAt(beat, run), avartana.isSamam(beat)));
        }
      }
    }
  }
}
