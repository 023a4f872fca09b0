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

  /**
   * Prepares a sample; a burst that peaks above the vowel, as of a mouth close to the microphone,
   * is turned down to it.
   */
  static DrawnSample of(float[] recorded, SamplePlaces places) {
    int vowel = Math.min(places.vowel(), recorded.length);
    float[] sound = recorded.clone();
    BurstLevel.hold(sound, vowel, BurstLevel.peak(sound, vowel, sound.length));
    int[] marks = places.pitchMarks().stream().mapToInt(Integer::intValue).toArray();
    int first = 0;
    while (first < marks.length - 1 && marks[first] < places.vowel()) {
      first++;
    }
    return new DrawnSample(sound, places, marks, first);
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
