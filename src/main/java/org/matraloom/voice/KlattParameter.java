package org.matraloom.voice;

/**
 * What is controlled over time in a sollu, after Klatt 1980, table I; amplitudes are factors, not
 * decibels.
 */
enum KlattParameter {
  /** Pitch of the voice, Hz. */
  PITCH(120),
  /** Strength of the voice. */
  VOICING(0),
  /** How much of a period the folds are open, 0 to 1. */
  OPENNESS(0.6),
  /** How far the voice is damped at 3 kHz, dB. */
  TILT(4),
  /** Noise at the folds, through the whole tract. */
  ASPIRATION(0),
  /** Noise at a narrow place in the mouth. */
  FRICATION(0),
  /** First formant, Hz. */
  F1(500),
  /** Second formant, Hz. */
  F2(1500),
  /** Third formant, Hz. */
  F3(2500),
  /** Width of the first formant, Hz. */
  B1(60),
  /** Width of the second formant, Hz. */
  B2(80),
  /** Width of the third formant, Hz. */
  B3(110),
  /** Zero of the open nose, Hz; it cancels the nose's resonance where it lies upon it. */
  NOSE_ZERO(KlattParameter.NOSE_HZ),
  /** Zero of the mouth behind a nasal's closure, Hz; it cancels likewise. */
  MOUTH_ZERO(KlattParameter.MOUTH_HZ);

  /** Resonance of the nose, Hz (Klatt 1980, table III, nasals). */
  static final double NOSE_HZ = 270;

  /** Second resonance of the nose, Hz (K. N. Stevens, Acoustic Phonetics, 1998: 750 to 1000). */
  static final double MOUTH_HZ = 1000;

  private final double atRest;

  KlattParameter(double atRest) {
    this.atRest = atRest;
  }

  /** The value where nothing is asked for. */
  double atRest() {
    return atRest;
  }
}
