package org.matraloom.pack;

/** Which sound files a set has. */
public enum PackFiles {
  /** MP3 only: small enough to be sent. */
  MP3,
  /** Exact WAV files only. */
  WAV,
  /** Both. */
  BOTH;

  boolean hasMp3() {
    return this != WAV;
  }

  boolean hasWave() {
    return this != MP3;
  }
}
