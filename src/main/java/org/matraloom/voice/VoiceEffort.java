package org.matraloom.voice;

/** How the voice is used: full voice, or half voice for quiet practice. */
public enum VoiceEffort {
  /** Full voice. */
  FULL(0, 1, 1, 0, 0),
  /** Half voice: 6 dB softer and breathier, with the folds open longer. */
  HALF(-6, 2.5, 0.8, 0.12, 8);

  private final double levelDb;
  private final double breath;
  private final double burst;
  private final double openness;
  private final double tiltDb;

  VoiceEffort(double levelDb, double breath, double burst, double openness, double tiltDb) {
    this.levelDb = levelDb;
    this.breath = breath;
    this.burst = burst;
    this.openness = openness;
    this.tiltDb = tiltDb;
  }

  /**
   * Level against full voice, dB.
   *
   * @return dB, not above 0
   */
  public double levelDb() {
    return levelDb;
  }

  /** Factor on the noise at the folds. */
  double breath() {
    return breath;
  }

  /** Factor on bursts and hisses. */
  double burst() {
    return burst;
  }

  /** Added to the open part of a period. */
  double openness() {
    return openness;
  }

  /**
   * Added to the damping at 3 kHz, dB.
   *
   * @return dB, 0 or more
   */
  public double tiltDb() {
    return tiltDb;
  }
}
