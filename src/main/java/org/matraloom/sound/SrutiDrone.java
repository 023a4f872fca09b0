package org.matraloom.sound;

import java.util.List;

/**
 * A drone of four strokes, pa, sa, sa and the low sa, over and over, like a tanpura in the
 * background.
 *
 * <p>It keeps its own even pace and knows nothing of beats, so that no change of nadai or tempo can
 * break it. What sounds depends only on the frame: blocks of any size and parts of a track made
 * apart give the same samples. Immutable, so that threads may share it. The pattern is common
 * practice; pace and levels are choices of our own.
 */
public final class SrutiDrone {

  private static final double CYCLE_SECONDS = 4.2;
  private static final double STROKE_SECONDS = 6.3;
  private static final double FALL_SECONDS = 10;
  private static final double FADE_SECONDS = 0.8;
  private static final double ATTACK_SECONDS = 0.015;

  /** Four periods of sa are three of pa and two of the low sa. */
  private static final int PERIODS_IN_COMMON = 4;

  /**
   * One of the four strings.
   *
   * @param ratio its pitch against the tonic
   * @param atSeconds when it is struck, after the beginning of the cycle
   * @param gain its strength
   */
  private record StringOf(double ratio, double atSeconds, double gain, long seed) {}

  private static final List<StringOf> STRINGS =
      List.of(
          new StringOf(0.75, 0, 0.8, 0x7061L),
          new StringOf(1, 1.1, 1, 0x7361_31L),
          new StringOf(1, 2.0, 0.9, 0x7361_31L),
          new StringOf(0.5, 2.9, 1, 0x7361_33L));

  private final int ratePerSecond;
  private final float[][] strokes = new float[STRINGS.size()][];
  private final long[] offsetFrames = new long[STRINGS.size()];
  private final long cycleFrames;

  /**
   * Strings and tunes.
   *
   * @param sruti the tonic
   * @param ratePerSecond frames a second
   */
  public SrutiDrone(Sruti sruti, int ratePerSecond) {
    this.ratePerSecond = ratePerSecond;
    this.cycleFrames = wholePeriodFrames(CYCLE_SECONDS, sruti);
    int frames = (int) Math.round(STROKE_SECONDS * ratePerSecond);
    for (int string = 0; string < strokes.length; string++) {
      StringOf of = STRINGS.get(string);
      offsetFrames[string] = wholePeriodFrames(of.atSeconds, sruti);
      strokes[string] =
          PluckedString.stroke(
              sruti.hertz() * of.ratio, FALL_SECONDS, ratePerSecond, frames, of.seed);
      shape(strokes[string], of.gain);
    }
    scaleToPeak();
  }

  /**
   * The rate it is tuned for.
   *
   * @return frames a second
   */
  public int ratePerSecond() {
    return ratePerSecond;
  }

  /**
   * The frames nearest to a time that is a whole number of periods for every string, so that each
   * stroke meets the one before it in phase and the pitch stays put.
   */
  private long wholePeriodFrames(double seconds, Sruti sruti) {
    double commonHertz = sruti.hertz() / PERIODS_IN_COMMON;
    return Math.round(Math.round(seconds * commonHertz) / commonHertz * ratePerSecond);
  }

  /** The sum of all strokes that sound at a frame, the older one of a string first. */
  float sampleAt(long frame) {
    float sum = 0;
    for (int string = 0; string < strokes.length; string++) {
      long since = frame - offsetFrames[string];
      if (since >= 0) {
        int intoCycle = (int) (since % cycleFrames);
        if (since >= cycleFrames && intoCycle + cycleFrames < strokes[string].length) {
          sum += strokes[string][(int) (intoCycle + cycleFrames)];
        }
        sum += strokes[string][intoCycle];
      }
    }
    return sum;
  }

  private void shape(float[] stroke, double gain) {
    double loudest = 0;
    for (float sample : stroke) {
      loudest = Math.max(loudest, Math.abs(sample));
    }
    int attack = (int) (ATTACK_SECONDS * ratePerSecond);
    int fade = (int) (FADE_SECONDS * ratePerSecond);
    for (int i = 0; i < stroke.length; i++) {
      double edge = Math.min(1, Math.min((double) i / attack, (double) (stroke.length - i) / fade));
      double smooth = 0.5 - 0.5 * StrictMath.cos(StrictMath.PI * edge);
      stroke[i] = (float) (stroke[i] * smooth * gain / loudest);
    }
  }

  private void scaleToPeak() {
    double peak = 0;
    for (long frame = 0; frame < 3 * cycleFrames; frame++) {
      peak = Math.max(peak, Math.abs(sampleAt(frame)));
    }
    for (float[] stroke : strokes) {
      for (int i = 0; i < stroke.length; i++) {
        stroke[i] = (float) (stroke[i] / peak);
      }
    }
  }
}
