package org.matraloom.madetake;

import java.util.Optional;

/** What is right and wrong in a take that is to be made; all of it follows from the seed. */
public final class Flaws {

  public final long seed;

  /** How much faster than the score. */
  double tempoFactor = 1;

  /** Tempo of the last beat against the first, in percent. */
  public double driftPercent;

  /** Spread of the error of each sollu for itself. */
  public double jitterSeconds = 0.004;

  /** What is recorded before the first beat. */
  public double startSeconds = 0.8;

  /** How far the whole voice is ahead of the beat. */
  double leadSeconds;

  public Optional<KhandaFault> khanda = Optional.empty();

  /** Which share of the sollus is left out. */
  double missedShare;

  /** How many sollus are said twice in their time. */
  int doubled;

  /** How many sollus are said where a karvai should ring. */
  int added;

  /** Whether a round is broken off and begun again. */
  public boolean restarts;

  /** How late the last sollu is. */
  double landingSeconds;

  /** Over how many sollus that error grows. */
  int landingSollus = 1;

  /** Whether there is a breath in each karvai that is long enough. */
  public boolean breathes;

  public Flaws(long seed) {
    this.seed = seed;
  }
}
