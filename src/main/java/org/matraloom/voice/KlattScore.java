package org.matraloom.voice;

/** Everything that is controlled in one sollu: a {@link VoiceTrack} for each parameter. */
final class KlattScore {

  private static final KlattParameter[] PARAMETERS = KlattParameter.values();

  private final VoiceTrack[] tracks = new VoiceTrack[PARAMETERS.length];
  private final double[] values = new double[PARAMETERS.length];
  private PhoneNoise noise = PhoneNoise.NONE;

  /** Starts with every parameter at rest. */
  KlattScore() {
    for (KlattParameter parameter : PARAMETERS) {
      tracks[parameter.ordinal()] = new VoiceTrack(parameter.atRest());
    }
  }

  /** Puts a parameter to a value at a moment; the vowel onset is at 0 s. */
  KlattScore jump(KlattParameter parameter, double atSeconds, double value) {
    return approach(parameter, atSeconds, value, 0);
  }

  /**
   * Lets a parameter move towards a value from a moment on.
   *
   * @param parameter what is controlled
   * @param atSeconds from when on, the vowel onset being 0
   * @param value what is approached
   * @param constantSeconds how slowly: the time in which the distance shrinks by the factor e
   * @return this score
   */
  KlattScore approach(
      KlattParameter parameter, double atSeconds, double value, double constantSeconds) {
    tracks[parameter.ordinal()].approach(atSeconds, value, constantSeconds);
    return this;
  }

  /** Puts the three lower formants to their values at a moment. */
  KlattScore jump(double atSeconds, PhoneFormants formants) {
    return jump(KlattParameter.F1, atSeconds, formants.f1())
        .jump(KlattParameter.F2, atSeconds, formants.f2())
        .jump(KlattParameter.F3, atSeconds, formants.f3());
  }

  /** Chooses the spectrum of the noise in the mouth; the last choice counts for the whole sollu. */
  void colour(PhoneNoise spectrum) {
    noise = spectrum;
  }

  /** The spectrum of the noise in the mouth. */
  PhoneNoise noise() {
    return noise;
  }

  /** Moves all tracks on by a step that ends at a time. */
  void step(double atSeconds, double stepSeconds) {
    for (int i = 0; i < tracks.length; i++) {
      values[i] = tracks[i].step(atSeconds, stepSeconds);
    }
  }

  /** A value at the time last reached. */
  double value(KlattParameter parameter) {
    return values[parameter.ordinal()];
  }
}
