package org.matraloom.mouth;

import java.util.List;
import java.util.Optional;

/**
 * One recorded sollu.
 *
 * @param sollu the lexicon's name of its sound
 * @param file the name of its file in the folder of the voice
 * @param after the sollu said just before it in the recording; empty after silence
 * @param before the sollu said just after it; empty before silence
 * @param places where things are in the file
 * @param loudnessLufs how loud its vowel is at its loudest, by ITU-R BS.1770
 * @param peakDb the highest sample from its vowel on, dB of full scale
 * @param doubts why it may not be good, in words; empty if nothing is known against it
 */
public record KitSample(
    String sollu,
    String file,
    Optional<String> after,
    Optional<String> before,
    SamplePlaces places,
    double loudnessLufs,
    double peakDb,
    List<String> doubts) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the file is not a plain name that ends in .wav
   */
  public KitSample {
    doubts = List.copyOf(doubts);
    if (!isFileName(file)) {
      throw new IllegalArgumentException(
          "\"" + file + "\" is no name of a sample; it is letters and digits with .wav at the end");
    }
  }

  /** Whether something can be the name of a file of a sample. */
  static boolean isFileName(String name) {
    return name.matches("[\\p{L}\\p{M}0-9][\\p{L}\\p{M}0-9_-]*\\.wav");
  }

  /**
   * The mean pitch of the steady part.
   *
   * @return Hz
   */
  public double pitchHz() {
    List<Integer> steady =
        places.pitchMarks().stream()
            .filter(mark -> mark >= places.steadyBegin() && mark <= places.steadyEnd())
            .toList();
    List<Integer> marks = steady.size() < 2 ? places.pitchMarks() : steady;
    int span = marks.get(marks.size() - 1) - marks.get(0);
    return (double) Kit.RATE * (marks.size() - 1) / span;
  }
}
