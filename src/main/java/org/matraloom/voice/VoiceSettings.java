package org.matraloom.voice;

/**
 * How the sollus are said.
 *
 * @param person who speaks
 * @param effort full or half voice
 * @param placement which moment of a sollu falls on the grid
 * @param accents how far the beginnings of rounds and phrases and samam stand out, from 0 (not at
 *     all) over 1 (about 2 dB and a little pitch) to {@value #STRONGEST_ACCENTS}; never a matter of
 *     time
 * @param takes how many takes of a sound there are, 1 to {@value #MOST_TAKES}: alike to the ear,
 *     but not to the sample, so that a repeated sollu does not sound like a machine
 */
public record VoiceSettings(
    VoicePerson person, VoiceEffort effort, VoicePlacement placement, double accents, int takes) {

  /** The strongest accents taken. */
  public static final double STRONGEST_ACCENTS = 3;

  /** The most takes of a sound. */
  public static final int MOST_TAKES = 3;

  /** The usual voice: the lower one, full, vowels on the grid, plain accents. */
  public static final VoiceSettings USUAL =
      new VoiceSettings(VoicePerson.LOW, VoiceEffort.FULL, VoicePlacement.VOWEL, 1, MOST_TAKES);

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the accents or the takes are outside their range
   */
  public VoiceSettings {
    if (!(accents >= 0 && accents <= STRONGEST_ACCENTS)) {
      throw new IllegalArgumentException(
          "accents " + accents + " are outside 0 (none) to " + STRONGEST_ACCENTS);
    }
    if (takes < 1 || takes > MOST_TAKES) {
      throw new IllegalArgumentException("takes " + takes + " are outside 1 to " + MOST_TAKES);
    }
  }

  /**
   * The same with another speaker.
   *
   * @param other who speaks
   * @return a copy
   */
  public VoiceSettings with(VoicePerson other) {
    return new VoiceSettings(other, effort, placement, accents, takes);
  }

  /**
   * The same in full or half voice.
   *
   * @param other full or half voice
   * @return a copy
   */
  public VoiceSettings with(VoiceEffort other) {
    return new VoiceSettings(person, other, placement, accents, takes);
  }

  /**
   * The same with another moment on the grid.
   *
   * @param other which moment
   * @return a copy
   */
  public VoiceSettings with(VoicePlacement other) {
    return new VoiceSettings(person, effort, other, accents, takes);
  }

  /**
   * The same with other accents.
   *
   * @param other from 0 to {@value #STRONGEST_ACCENTS}
   * @return a copy
   * @throws IllegalArgumentException if they are outside the range
   */
  public VoiceSettings withAccents(double other) {
    return new VoiceSettings(person, effort, placement, other, takes);
  }

  /**
   * The same with another number of takes.
   *
   * @param other from 1 to {@value #MOST_TAKES}
   * @return a copy
   * @throws IllegalArgumentException if it is outside the range
   */
  public VoiceSettings withTakes(int other) {
    return new VoiceSettings(person, effort, placement, accents, other);
  }

  /**
   * The voice that says subdivision words under this one: the other person in half voice, without
   * accents, placed in the same way.
   *
   * @return other settings
   */
  public VoiceSettings underneath() {
    VoicePerson other = person == VoicePerson.LOW ? VoicePerson.HIGH : VoicePerson.LOW;
    return new VoiceSettings(other, VoiceEffort.HALF, placement, 0, takes);
  }
}
