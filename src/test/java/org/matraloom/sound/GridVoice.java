package org.matraloom.sound;

import java.util.Optional;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;

/**
 * A plain pitched pulse that begins exactly on the felt beat, for tests that count frames.
 *
 * <p>A karvai rings: its pulse fades over the whole length, a short sollu over its own matra.
 */
final class GridVoice implements SolluVoice {

  private static final double PITCH_HZ = 440;
  private static final int HARMONICS = 4;
  private static final double ATTACK_SECONDS = 0.002;
  private static final double RELEASE_SECONDS = 0.005;
  private static final double LONGEST_SECONDS = 3;

  private final int ratePerSecond;

  /**
   * A voice for one rate.
   *
   * @param ratePerSecond frames a second
   */
  GridVoice(int ratePerSecond) {
    this.ratePerSecond = ratePerSecond;
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int longestLeadFrames() {
    return 0;
  }

  @Override
  public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    int frames = (int) Math.min(cue.lengthFrames(), (long) (LONGEST_SECONDS * ratePerSecond));
    double fade = Math.min(frames, 0.6 * ratePerSecond) / 4.0;
    float[] samples = new float[frames];
    for (int i = 0; i < frames; i++) {
      double attack = Math.min(1, (i + 1) / (ATTACK_SECONDS * ratePerSecond));
      double release = Math.min(1, (frames - 1 - i) / (RELEASE_SECONDS * ratePerSecond));
      samples[i] = (float) (attack * release * StrictMath.exp(-i / fade) * wave(i));
    }
    return new SolluWave(samples, 0);
  }

  private double wave(int frame) {
    double sum = 0;
    for (int harmonic = 1; harmonic <= HARMONICS; harmonic++) {
      sum += StrictMath.sin(2 * StrictMath.PI * PITCH_HZ * harmonic * (frame + 1) / ratePerSecond);
    }
    return sum / HARMONICS;
  }
}
