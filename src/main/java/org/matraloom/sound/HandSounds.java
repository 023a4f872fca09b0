package org.matraloom.sound;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Finger;
import org.matraloom.voice.Noise;

/**
 * The strokes of the hand, made once for a rate; each peaks at exactly 1.0.
 *
 * <p>Their energy lies between 800 Hz and 4 kHz, which a phone speaker carries (common practice),
 * and none has a pitch that could fight the sruti. They are told apart by length, by where their
 * band lies and by how sharply they begin.
 */
final class HandSounds {

  private static final double FADE = 0.3;

  private final float[] clap;
  private final float[] samamClap;
  private final Map<Finger, float[]> taps = new EnumMap<>(Finger.class);
  private final float[] wave;
  private final float[] tick;

  HandSounds(int ratePerSecond) {
    clap =
        stroke(
            ratePerSecond,
            90,
            0x6c61_7063L,
            new NoiseLayer(0, 1, 0, 2.5, 2300, 0.8),
            new NoiseLayer(5, 0.5, 0.3, 3, 1900, 0.8),
            new NoiseLayer(9, 0.4, 0.5, 14, 1700, 0.9));
    samamClap =
        stroke(
            ratePerSecond,
            140,
            0x6d61_6d61L,
            new NoiseLayer(0, 1, 0, 3, 2300, 0.8),
            new NoiseLayer(0, 0.7, 0, 5, 1250, 1.2),
            new NoiseLayer(6, 0.45, 0.3, 4, 2000, 0.8),
            new NoiseLayer(12, 0.35, 0.5, 25, 1500, 0.9));
    taps.put(Finger.LITTLE, tap(ratePerSecond, 3000));
    taps.put(Finger.RING, tap(ratePerSecond, 2600));
    taps.put(Finger.MIDDLE, tap(ratePerSecond, 2250));
    taps.put(Finger.INDEX, tap(ratePerSecond, 1900));
    taps.put(Finger.THUMB, tap(ratePerSecond, 1600));
    wave =
        stroke(
            ratePerSecond,
            160,
            0x6576_6177L,
            new NoiseLayer(0, 1, 2, 8, 1150, 1.2),
            new NoiseLayer(4, 0.3, 4, 35, 1100, 1.2));
    tick = stroke(ratePerSecond, 8, 0x6b63_6974L, new NoiseLayer(0, 1, 0, 0.5, 2700, 1.2));
  }

  float[] clap() {
    return clap;
  }

  float[] samamClap() {
    return samamClap;
  }

  float[] tap(Finger finger) {
    return taps.get(finger);
  }

  float[] wave() {
    return wave;
  }

  float[] tick() {
    return tick;
  }

  private static float[] tap(int ratePerSecond, double centreHz) {
    return stroke(ratePerSecond, 30, 0x7061_7460L, new NoiseLayer(0, 1, 0, 2.4, centreHz, 2));
  }

  private static float[] stroke(
      int ratePerSecond, double lengthMs, long seed, NoiseLayer... layers) {
    double[] sum = new double[(int) Math.round(lengthMs * ratePerSecond / 1000)];
    Noise noise = new Noise(seed);
    for (NoiseLayer layer : List.of(layers)) {
      layer.addTo(sum, ratePerSecond, noise);
    }
    fadeOut(sum);
    return normalised(sum);
  }

  private static void fadeOut(double[] stroke) {
    int length = (int) (stroke.length * FADE);
    for (int i = 0; i < length; i++) {
      double phase = StrictMath.PI * i / length;
      stroke[stroke.length - 1 - i] *= 0.5 - 0.5 * StrictMath.cos(phase);
    }
  }

  private static float[] normalised(double[] stroke) {
    double peak = 0;
    for (double sample : stroke) {
      peak = Math.max(peak, Math.abs(sample));
    }
    float[] samples = new float[stroke.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (float) (stroke[i] / peak);
    }
    return samples;
  }
}
