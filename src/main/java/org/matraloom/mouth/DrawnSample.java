package org.matraloom.mouth;

import java.util.Arrays;
import java.util.Optional;

/**
 * A sample at the rate it is said at.
 *
 * @param sound one channel
 * @param places where things are in it, in frames of this rate
 * @param marks the pitch marks of the places
 * @param first the index of the first mark that is not before the vowel
 * @param strengths how strong the sound is around each mark, by its slow course
 * @param edges the largest second difference of the sound around each mark
 */
record DrawnSample(
    float[] sound,
    SamplePlaces places,
    int[] marks,
    int first,
    double[] strengths,
    double[] edges) {

  /** A level goes its slow course over so many periods to both sides. */
  private static final int AROUND = 2;

  /**
   * Prepares a sample; a burst that peaks above the vowel, as of a mouth close to the microphone,
   * is turned down to it, and what would be taken for the vowel before it is turned down, too.
   *
   * @param rising the band whose rise tells the vowel; empty where it rises before the vowel, too
   */
  static DrawnSample of(
      float[] recorded, SamplePlaces places, Optional<OnsetBand> rising, int ratePerSecond) {
    int vowel = Math.min(places.vowel(), recorded.length);
    float[] sound = recorded.clone();
    BurstLevel.hold(sound, vowel, BurstLevel.peak(sound, vowel, sound.length));
    rising.ifPresent(band -> VowelRise.clear(sound, vowel, band, ratePerSecond));
    int[] marks = places.pitchMarks().stream().mapToInt(Integer::intValue).toArray();
    int first = 0;
    while (first < marks.length - 1 && marks[first] < places.vowel()) {
      first++;
    }
    return new DrawnSample(
        sound, places, marks, first, strengths(sound, marks), edges(sound, marks));
  }

  private static double[] strengths(float[] sound, int[] marks) {
    double[] powers = new double[marks.length];
    for (int index = 0; index < marks.length; index++) {
      int half = (int) (period(marks, index) / 2);
      double sum = 0;
      for (int i = marks[index] - half; i < marks[index] + half; i++) {
        double here = i < 0 || i >= sound.length ? 0 : sound[i];
        sum += here * here;
      }
      powers[index] = 1e-12 + sum / (2.0 * half);
    }
    double[] strengths = new double[marks.length];
    for (int index = 0; index < marks.length; index++) {
      int to = Math.min(marks.length, index + AROUND + 1);
      double[] near = Arrays.copyOfRange(powers, Math.max(0, index - AROUND), to);
      strengths[index] = Math.sqrt(Arrays.stream(near).average().orElseThrow());
    }
    return strengths;
  }

  private static double[] edges(float[] sound, int[] marks) {
    double[] edges = new double[marks.length];
    for (int index = 0; index < marks.length; index++) {
      int reach = (int) period(marks, index);
      int to = Math.min(sound.length - 1, marks[index] + reach);
      edges[index] = 1e-12;
      for (int i = Math.max(1, marks[index] - reach); i < to; i++) {
        edges[index] = Math.max(edges[index], Math.abs(sound[i - 1] - 2 * sound[i] + sound[i + 1]));
      }
    }
    return edges;
  }

  float at(int frame) {
    return frame < 0 || frame >= sound.length ? 0 : sound[frame];
  }

  /** The mark nearest to a place, among those of the vowel and what follows. */
  int nearest(double frame) {
    int low = first;
    int high = marks.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (marks[middle] < frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    boolean before = low > first && frame - marks[low - 1] < marks[low] - frame;
    return before ? low - 1 : low;
  }

  /** The length of the period at a mark: the mean of the one before it and the one after it. */
  double period(int index) {
    return period(marks, index);
  }

  private static double period(int[] marks, int index) {
    int before = Math.max(0, index - 1);
    int after = Math.min(marks.length - 1, index + 1);
    return (double) (marks[after] - marks[before]) / (after - before);
  }

  /**
   * What brings a period to the level that another one has in the slow course of the sample, as far
   * as it is not made rougher by that than the roughest period of the vowel is of itself.
   */
  double gain(int heard, int wanted) {
    double roughest = edges[heard];
    for (int index = first; index < edges.length; index++) {
      roughest = Math.max(roughest, edges[index]);
    }
    return Math.min(strengths[wanted] / strengths[heard], roughest / edges[heard]);
  }
}
