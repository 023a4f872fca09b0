package org.matraloom.voice;

import static org.matraloom.voice.KlattParameter.ASPIRATION;
import static org.matraloom.voice.KlattParameter.FRICATION;
import static org.matraloom.voice.KlattParameter.OPENNESS;
import static org.matraloom.voice.KlattParameter.PITCH;
import static org.matraloom.voice.KlattParameter.TILT;
import static org.matraloom.voice.KlattParameter.VOICING;

/** Turns a score of parameters into samples, a third of a millisecond at a time. */
final class KlattSynthesizer {

  private static final int STEPS_PER_SECOND = 3000;

  /** The rate at which white noise has the level that the amplitudes are written for. */
  private static final double NOISE_RATE = 48_000;

  /** Breath rises by 6 dB an octave as it radiates; this is where its gain is 1. */
  private static final double RADIATION_HZ = 3000;

  /** From even noise between -1 and 1 to noise of power 1. */
  private static final double UNIT_POWER = StrictMath.sqrt(3);

  private final int ratePerSecond;
  private final VoicePerson person;
  private final double level;
  private final double breathGain;
  private final double[] folds;
  private final double[] opening;
  private final double[] mouth;

  private double voicing;
  private double aspiration;
  private double frication;
  private double breathBefore;

  /** A synthesiser for one rate and one person. */
  KlattSynthesizer(int ratePerSecond, VoicePerson person) {
    this.ratePerSecond = ratePerSecond;
    this.person = person;
    int step = Math.max(1, ratePerSecond / STEPS_PER_SECOND);
    folds = new double[step];
    opening = new double[step];
    mouth = new double[step];
    level = UNIT_POWER * StrictMath.sqrt(ratePerSecond / NOISE_RATE);
    breathGain = level * ratePerSecond / (2 * Math.PI * RADIATION_HZ);
  }

  /**
   * Synthesises.
   *
   * @param score what is controlled; it is used up
   * @param leadFrames frames before time 0 of the score
   * @param frames how many in all
   * @param pitchBefore pitch before time 0, Hz
   * @param grain which noise
   * @return samples, not yet levelled
   */
  double[] synthesise(KlattScore score, int leadFrames, int frames, double pitchBefore, int grain) {
    voicing = 0;
    aspiration = 0;
    frication = 0;
    breathBefore = 0;
    Noise breath = noise(grain, 1);
    Noise hiss = noise(grain, 2);
    GlottalSource source =
        new GlottalSource(
            ratePerSecond,
            noise(grain, 3),
            (double) -leadFrames / ratePerSecond,
            pitchBefore,
            person.openness());
    KlattTract tract = new KlattTract(ratePerSecond, person, score.noise());
    double[] wave = new double[frames];
    int from = 0;
    while (from < frames) {
      int partial = Math.floorMod(leadFrames - from, folds.length);
      int count = Math.min(partial == 0 ? folds.length : partial, frames - from);
      double time = (double) (from - leadFrames) / ratePerSecond;
      score.step(time, (double) count / ratePerSecond);
      source.fill(
          folds,
          opening,
          count,
          time,
          score.value(PITCH),
          score.value(OPENNESS),
          score.value(TILT));
      sources(score, count, breath, hiss);
      tract.shape(score);
      tract.pass(folds, mouth, count);
      System.arraycopy(folds, 0, wave, from, count);
      from += count;
    }
    return wave;
  }

  /** A run of noise of its own; neighbouring grains begin nothing alike. */
  private static Noise noise(int grain, int which) {
    return new Noise((4L * grain + which) * 0x9E37_79B9_7F4A_7C15L);
  }

  /** Sets the strengths of the voice and the noises, which move evenly within a step. */
  private void sources(KlattScore score, int count, Noise breath, Noise hiss) {
    double voicingStep = (score.value(VOICING) - voicing) / count;
    double aspirationStep = (score.value(ASPIRATION) - aspiration) / count;
    double fricationStep = (score.value(FRICATION) - frication) / count;
    for (int i = 0; i < count; i++) {
      voicing += voicingStep;
      aspiration += aspirationStep;
      frication += fricationStep;
      double breathNow = breath.next();
      folds[i] =
          voicing * folds[i] + aspiration * opening[i] * breathGain * (breathNow - breathBefore);
      mouth[i] = frication * level * hiss.next();
      breathBefore = breathNow;
    }
  }
}
