package org.matraloom.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.WavReader;

/**
 * Whether the guide is heard in the microphone: while it is counted in nobody speaks, so what rises
 * above the quiet at each counted beat is the hand.
 */
public final class GuideHeard {

  private static final double EARLY_SECONDS = 0.03;
  private static final double LATE_SECONDS = 0.15;
  private static final double QUIET_FROM = 0.5;
  private static final double QUIET_TO = 0.9;
  private static final double QUIET_PARTS = 8;
  private static final double LEAST_RISE_DB = 12;
  private static final double LEAST_DBFS = -50;
  private static final double LEAST_SHARE = 0.6;

  private GuideHeard() {}

  /**
   * Looks at the count-in of a take.
   *
   * @param take a take of this program
   * @param tempo the tempo of its guide
   * @return whether most of the counted beats are heard; false if the take does not tell where they
   *     are
   * @throws IOException if it cannot be read
   */
  public static boolean in(Path take, Tempo tempo) throws IOException {
    return peakDbfs(take, tempo).isPresent();
  }

  /**
   * How loud the hand is in the count-in of a take.
   *
   * @param take a take of this program
   * @param tempo the tempo of its guide
   * @return its peak in dB of full scale, the median of the beats; empty if most of them are not
   *     heard, or the take does not tell where they are
   * @throws IOException if it cannot be read
   */
  public static OptionalDouble peakDbfs(Path take, Tempo tempo) throws IOException {
    try (WavReader reader = new WavReader(take)) {
      Optional<CuePoint> from =
          reader.cues().stream().filter(cue -> cue.label().equals("count-in")).findFirst();
      Optional<CuePoint> to =
          from.flatMap(
              first ->
                  reader.cues().stream().filter(cue -> cue.frame() > first.frame()).findFirst());
      if (to.isEmpty() || to.get().frame() > reader.lengthFrames() || reader.channels() != 1) {
        return OptionalDouble.empty();
      }
      float[] samples = new float[Math.toIntExact(to.get().frame())];
      reader.read(samples, samples.length);
      int rate = reader.ratePerSecond();
      double beat = tempo.unitsOf(Ratio.ONE, rate);
      return countedDb(samples, from.get().frame(), beat, rate);
    }
  }

  /**
   * How loud the hand is while it is counted in.
   *
   * @return decibels below full scale, the median of the beats at which it is heard; empty if most
   *     of them are quiet
   */
  static OptionalDouble countedDb(float[] samples, long first, double framesPerBeat, int rate) {
    int beats = 0;
    List<Double> heard = new ArrayList<>();
    for (double at = first; at + framesPerBeat <= samples.length; at += framesPerBeat) {
      int from = (int) Math.max(0, at - EARLY_SECONDS * rate);
      double stroke = peakDb(samples, from, (int) (at + LATE_SECONDS * rate));
      double quiet = quietDb(samples, at, framesPerBeat);
      beats++;
      if (stroke > LEAST_DBFS && stroke > quiet + LEAST_RISE_DB) {
        heard.add(stroke);
      }
    }
    return beats > 1 && heard.size() >= LEAST_SHARE * beats
        ? OptionalDouble.of(
            RobustStatistics.median(heard.stream().mapToDouble(Double::doubleValue).toArray()))
        : OptionalDouble.empty();
  }

  /** The quietest part of the second half of a beat, where ticks may fall. */
  private static double quietDb(float[] samples, double at, double framesPerBeat) {
    double part = (QUIET_TO - QUIET_FROM) / QUIET_PARTS * framesPerBeat;
    double quietest = 0;
    for (int i = 0; i < QUIET_PARTS; i++) {
      double from = at + QUIET_FROM * framesPerBeat + i * part;
      quietest = Math.min(quietest, peakDb(samples, (int) from, (int) (from + part)));
    }
    return quietest;
  }

  private static double peakDb(float[] samples, int from, int to) {
    float peak = 0;
    for (float sample : Arrays.copyOfRange(samples, from, Math.max(from + 1, to))) {
      peak = Math.max(peak, Math.abs(sample));
    }
    return 20 * Math.log10(Math.max(1e-6, peak));
  }
}
