package org.matraloom.mouth;

import java.util.List;
import java.util.TreeSet;

/**
 * A recorded voice: whose it is, and its samples.
 *
 * @param head whose it is
 * @param samples at least one, in the order of the recording
 */
public record Kit(KitHead head, List<KitSample> samples) {

  /** Frames a second of every sample. */
  public static final int RATE = 48_000;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there is no sample
   */
  public Kit {
    samples = List.copyOf(samples);
    if (samples.isEmpty()) {
      throw new IllegalArgumentException("a voice has one sollu or more, given none");
    }
  }

  /**
   * The samples of a sollu.
   *
   * @param sollu the lexicon's name of its sound
   * @return in the order of the recording; none if it was not recorded
   */
  public List<KitSample> of(String sollu) {
    return samples.stream().filter(sample -> sample.sollu().equals(sollu)).toList();
  }

  /**
   * What was recorded.
   *
   * @return the names of the sounds
   */
  public TreeSet<String> sollus() {
    TreeSet<String> names = new TreeSet<>();
    samples.forEach(sample -> names.add(sample.sollu()));
    return names;
  }

  /**
   * The middle pitch of the voice.
   *
   * @return Hz, the median of all samples
   */
  public double pitchHz() {
    double[] all = samples.stream().mapToDouble(KitSample::pitchHz).sorted().toArray();
    return all[all.length / 2];
  }
}
