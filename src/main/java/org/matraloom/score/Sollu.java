package org.matraloom.score;

/**
 * One spoken rhythm syllable.
 *
 * @param spelling as the user writes it, kept for the sheet
 * @param sound the lexicon's name of the sound, one for all its spellings
 */
public record Sollu(String spelling, String sound) {

  /** Written out, for the sake of the start: see {@link org.matraloom.time.Ratio}. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Sollu sollu
        && spelling.equals(sollu.spelling)
        && sound.equals(sollu.sound);
  }

  @Override
  public int hashCode() {
    return 31 * spelling.hashCode() + sound.hashCode();
  }
}
