package org.matraloom.madetake;

import java.util.SplittableRandom;

/**
 * A make-believe take whose beginnings are known because they were placed.
 *
 * @param sound the samples, full scale at 1
 * @param truth where a sound begins, in seconds
 */
public record SpokenTake(float[] sound, double[] truth) {

  private static final double FLOOR = 0.0005;

  /** Bursts of noise with a sudden attack that die away in 8 ms, at uneven distances. */
  public static SpokenTake bursts(int rate, int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] truth = places(random, count);
    float[] sound = floor(random, rate, truth);
    for (double start : truth) {
      int from = (int) Math.round(start * rate);
      for (int i = 0; i < rate / 10; i++) {
        sound[from + i] += (float) (0.5 * noise(random) * Math.exp(-i / (0.008 * rate)));
      }
    }
    return new SpokenTake(sound, truth);
  }

  /**
   * Syllables: a short burst, up to 60 ms of breath, then a vowel of two formants that ends with a
   * closure before the next. A vowel in which the breath was not counted apart shows up as one more
   * onset.
   */
  public static SpokenTake syllables(int rate, int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return syllablesAt(rate, places(random, count), random);
  }

  /** Syllables at given times, at least 0.09 s apart, the first after 0.1 s. */
  public static SpokenTake syllablesAt(int rate, double[] truth, SplittableRandom random) {
    int count = truth.length;
    float[] sound = floor(random, rate, truth);
    for (int k = 0; k < count; k++) {
      int from = (int) Math.round(truth[k] * rate);
      double room = k + 1 < count ? truth[k + 1] - truth[k] : 0.4;
      double breath = random.nextDouble(0.008, Math.min(0.06, room / 3));
      double end = Math.min(0.3, room - 0.045);
      double pitch = random.nextDouble(95, 220);
      double first = random.nextDouble(350, 800);
      double second = random.nextDouble(900, 2_200);
      for (int i = 0; i < end * rate; i++) {
        double t = (double) i / rate;
        double fade = Math.min(1, (end - t) / 0.03);
        double burst = 0.25 * noise(random) * Math.exp(-t / 0.004);
        double aspiration = t < breath ? 0.05 * noise(random) : 0;
        sound[from + i] += (float) (fade * (burst + aspiration));
        if (t > breath) {
          double rise = Math.min(1, (t - breath) / 0.012);
          sound[from + i] += (float) (fade * rise * vowel(t, pitch, first, second, rate));
        }
      }
    }
    return new SpokenTake(sound, truth);
  }

  private static double vowel(double t, double pitch, double first, double second, int rate) {
    double sum = 0;
    for (int h = 1; h * pitch < Math.min(4_000, 0.45 * rate); h++) {
      double hertz = h * pitch;
      double weight =
          1 / (1 + square((hertz - first) / 90))
              + 0.4 / (1 + square((hertz - second) / 120))
              + 0.02;
      sum += weight * Math.sin(2 * Math.PI * hertz * t + h * h);
    }
    return 0.15 * sum;
  }

  private static double square(double x) {
    return x * x;
  }

  private static double noise(SplittableRandom random) {
    return 2 * random.nextDouble() - 1;
  }

  private static double[] places(SplittableRandom random, int count) {
    double[] places = new double[count];
    double at = 0.6;
    for (int i = 0; i < count; i++) {
      places[i] = at;
      at += random.nextDouble(0.16, 0.5);
    }
    return places;
  }

  private static float[] floor(SplittableRandom random, int rate, double[] truth) {
    float[] sound = new float[(int) ((truth[truth.length - 1] + 1) * rate)];
    for (int i = 0; i < sound.length; i++) {
      sound[i] = (float) (FLOOR * noise(random));
    }
    return sound;
  }
}
