package org.matraloom.mouth;

/**
 * A sample at the rate it is said at.
 *
 * @param sound one channel
 * @param places where things are in it, in frames of this rate
 * @param marks the pitch marks of the places
 * @param first the index of the first mark that is not before the vowel
 */
record DrawnSample(float[] sound, SamplePlaces places, int[] marks, int first) {

  /** How long before the vowel a burst that was turned down is at its own level again. */
  private static final int CALM_FRAMES = 128;

  /**
   * Prepares a sample; a burst that peaks above the vowel, as of a mouth close to the microphone,
   * is turned down to it.
   */
  static DrawnSample of(float[] recorded, SamplePlaces places) {
    float[] sound = calmed(recorded, Math.min(places.vowel(), recorded.length));
    int[] marks = places.pitchMarks().stream().mapToInt(Integer::intValue).toArray();
    int first = 0;
    while (first < marks.length - 1 && marks[first] < places.vowel()) {
      first++;
    }
    return new DrawnSample(sound, places, marks, first);
  }

  private static float[] calmed(float[] sound, int vowel) {
    double burst = peak(sound, 0, vowel);
    double most = peak(sound, vowel, sound.length);
    if (burst <= most || most == 0) {
      return sound;
    }
    float[] calm = sound.clone();
    for (int i = 0; i < vowel; i++) {
      double own = FadeShape.at(Math.max(0, 1 - (double) (vowel - i) / CALM_FRAMES));
      calm[i] *= (float) (own + (1 - own) * most / burst);
    }
    return calm;
  }

  private static double peak(float[] sound, int from, int to) {
    double peak = 0;
    for (int i = from; i < to; i++) {
      peak = Math.max(peak, Math.abs(sound[i]));
    }
    return peak;
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
    int before = Math.max(0, index - 1);
    int after = Math.min(marks.length - 1, index + 1);
    return (double) (marks[after] - marks[before]) / (after - before);
  }

  /** How strong the sound is in the period around a mark; never 0. */
  double strength(int index) {
    int half = (int) (period(index) / 2);
    double sum = 1e-12;
    for (int i = marks[index] - half; i < marks[index] + half; i++) {
      sum += at(i) * at(i);
    }
    return Math.sqrt(sum / (2.0 * half));
  }
}
