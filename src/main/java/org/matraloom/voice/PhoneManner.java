package org.matraloom.voice;

/** How a consonant is made. */
public enum PhoneManner {
  /** A closure without voice, a burst, and a short lag. */
  VOICELESS_STOP,
  /** A closure with voice, and a burst. */
  VOICED_STOP,
  /** A closure without voice that opens into a hiss. */
  VOICELESS_AFFRICATE,
  /** A closure with voice that opens into a hiss. */
  VOICED_AFFRICATE,
  /** The mouth is closed and the nose open. */
  NASAL,
  /** The tongue strikes the ridge once in passing. */
  TAP,
  /** The mouth narrows without closing. */
  APPROXIMANT,
  /** Breath alone, in the shape of the vowel. */
  BREATH;

  /**
   * Whether noise is made in the mouth for longer than a burst.
   *
   * @return true for an affricate
   */
  public boolean hisses() {
    return this == VOICELESS_AFFRICATE || this == VOICED_AFFRICATE;
  }
}
