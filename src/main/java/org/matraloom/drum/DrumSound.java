package org.matraloom.drum;

import java.util.List;
import java.util.SplittableRandom;
import org.matraloom.score.DrumStroke;

/** Makes the samples of strokes that fall together: sums of damped modes, and the skin. */
final class DrumSound {

  private static final double LONGEST_SECONDS = 1.6;
  private static final double ATTACK_SECONDS = 0.001;
  private static final double CONTACT_SECONDS = 0.004;
  private static final double FADE_SECONDS = 0.02;
  private static final double PEAK = 0.9;
  private static final double BLOCK_BELOW_HERTZ = 20;
  private static final double LEFT_BELOW_RIGHT = 0.5;

  private final double tonicHertz;
  private final int ratePerSecond;

  /** A drum whose right head is tuned to a tonic, and the left one an octave below. */
  DrumSound(double tonicHertz, int ratePerSecond) {
    this.tonicHertz = tonicHertz;
    this.ratePerSecond = ratePerSecond;
  }

  /** Strokes of both hands at once; the first sample is the moment of the stroke. */
  float[] together(List<DrumStroke> strokes) {
    double[] sum = new double[(int) (LONGEST_SECONDS * ratePerSecond)];
    for (DrumStroke stroke : strokes) {
      add(stroke, sum);
    }
    return finished(withoutSteadyPart(sum));
  }

  private void add(DrumStroke stroke, double[] sum) {
    double lowest = stroke.isRight() ? tonicHertz : tonicHertz * LEFT_BELOW_RIGHT;
    StrokeModes sounding = StrokeModes.of(stroke);
    SplittableRandom skin = new SplittableRandom(stroke.ordinal());
    double before = 0;
    for (int frame = 0; frame < sum.length; frame++) {
      double seconds = (double) frame / ratePerSecond;
      double level = 0;
      for (DrumMode mode : sounding.modes()) {
        double hertz = lowest * mode.ratio();
        if (hertz < ratePerSecond / 2.0) {
          level +=
              mode.level()
                  * Math.exp(-seconds / mode.decaySeconds())
                  * Math.sin(2 * Math.PI * hertz * seconds);
        }
      }
      double noise = skin.nextDouble() * 2 - 1;
      level += sounding.contact() * Math.exp(-seconds / CONTACT_SECONDS) * (noise - before) / 2;
      before = noise;
      sum[frame] += level * Math.min(1, seconds / ATTACK_SECONDS);
    }
  }

  /** Takes away what does not swing about zero. */
  private double[] withoutSteadyPart(double[] samples) {
    double keep = 1 - 2 * Math.PI * BLOCK_BELOW_HERTZ / ratePerSecond;
    double in = 0;
    double out = 0;
    for (int frame = 0; frame < samples.length; frame++) {
      out = samples[frame] - in + keep * out;
      in = samples[frame];
      samples[frame] = out;
    }
    return samples;
  }

  private float[] finished(double[] samples) {
    double peak = 0;
    for (double sample : samples) {
      peak = Math.max(peak, Math.abs(sample));
    }
    float[] finished = new float[samples.length];
    double fadeFrames = FADE_SECONDS * ratePerSecond;
    for (int frame = 0; frame < samples.length; frame++) {
      double fade = Math.min(1, (samples.length - 1 - frame) / fadeFrames);
      finished[frame] = (float) (samples[frame] / peak * PEAK * fade);
    }
    return finished;
  }
}
