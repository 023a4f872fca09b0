package org.matraloom.voice;

/**
 * Says single sollus: phones, timing and neighbours in, samples out.
 *
 * <p>A cascade and parallel formant synthesiser after D. H. Klatt, J. Acoust. Soc. Am. 67 (1980)
 * 971-995. The same request gives the same samples, on any machine.
 */
final class VoiceSpeaker {

  private static final double MS = 1000;
  private static final double FADE_IN_SECONDS = 0.003;
  private static final double CLOSING_SECONDS = 0.008;

  /** Before silence a sollu dies away, as of a drum; a karvai keeps sounding for longer. */
  private static final double DYING_SHARE = 0.5;

  private static final double RINGING_SHARE = 0.25;
  private static final double LONGEST_DYING_SECONDS = 0.400;

  private static final double PEAK = 0.99;

  private static final double LOWEST_HZ = 40;
  private static final double TAKE_PITCH = 0.012;
  private static final double TAKE_DB = 0.3;

  private final int ratePerSecond;
  private final VoiceSettings settings;
  private final KlattSynthesizer synthesizer;

  /** A speaker for one rate and one set of settings. */
  VoiceSpeaker(int ratePerSecond, VoiceSettings settings) {
    this.ratePerSecond = ratePerSecond;
    this.settings = settings;
    this.synthesizer = new KlattSynthesizer(ratePerSecond, settings.person());
  }

  /** Says one sollu; the frames before its vowel onset are the lead. */
  SolluWave say(VoiceRequest request) {
    int leadFrames = frames(request.heardLeadMs());
    int frames = leadFrames + frames(request.endMs());
    KlattScore score = new KlattScore();
    double pitchBefore = write(score, request);
    double[] wave = synthesizer.synthesise(score, leadFrames, frames, pitchBefore, request.grain());
    holdOffset(wave);
    fade(wave, request);
    balance(wave);
    return new SolluWave(levelled(wave, levelDb(request)), leadFrames);
  }

  private double write(KlattScore score, VoiceRequest request) {
    VoicePerson person = settings.person();
    VoiceTiming timing = request.timing();
    PhoneSyllable syllable = request.syllable();
    new VoiceOnset(score, person, settings.effort(), syllable, timing).say();
    new VoiceRime(score, person, settings.effort(), syllable, timing, request.following()).say();
    double pitchHz = person.pitchHz() * (1 + TAKE_PITCH * (request.take() - 1));
    double lift = VoiceAccent.lift(request.stress(), settings.accents());
    return VoicePitch.write(score, pitchHz, lift, syllable);
  }

  private double levelDb(VoiceRequest request) {
    return VoiceAccent.levelDb(request.stress(), settings.accents())
        + settings.effort().levelDb()
        - TAKE_DB * request.take();
  }

  /** Takes the air stream itself away: a one-pole high-pass, far below any voice. */
  private void holdOffset(double[] wave) {
    double keep = StrictMath.exp(-2 * Math.PI * LOWEST_HZ / ratePerSecond);
    double before = 0;
    double y = 0;
    for (int i = 0; i < wave.length; i++) {
      y = wave[i] - before + keep * y;
      before = wave[i];
      wave[i] = y;
    }
  }

  private void fade(double[] wave, VoiceRequest request) {
    double end = request.endMs() / MS;
    double share = request.rings() ? RINGING_SHARE : DYING_SHARE;
    double closing =
        request.following().isPresent()
            ? CLOSING_SECONDS
            : Math.min(LONGEST_DYING_SECONDS, share * end);
    int in = (int) (FADE_IN_SECONDS * ratePerSecond);
    int out = (int) (Math.min(closing, 0.5 * end) * ratePerSecond);
    for (int i = 0; i < Math.min(in, wave.length); i++) {
      wave[i] *= rise((double) i / in);
    }
    for (int i = 0; i < out; i++) {
      wave[wave.length - 1 - i] *= rise((double) i / out);
    }
  }

  /** Takes away what the fades have left of an offset, in a slow swell that is not heard. */
  private static void balance(double[] wave) {
    double sum = 0;
    for (double sample : wave) {
      sum += sample;
    }
    double offset = 2 * sum / wave.length;
    for (int i = 0; i < wave.length; i++) {
      wave[i] -= offset * rise(2.0 * i / wave.length);
    }
  }

  /** From 0 to 1 and, past 1, back again, without a corner. */
  private static double rise(double part) {
    return 0.5 - 0.5 * StrictMath.cos(Math.PI * part);
  }

  private static float[] levelled(double[] wave, double levelDb) {
    double peak = 0;
    for (double sample : wave) {
      peak = Math.max(peak, Math.abs(sample));
    }
    double gain = peak == 0 ? 0 : PEAK * StrictMath.pow(10, levelDb / 20) / peak;
    float[] samples = new float[wave.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (float) (gain * wave[i]);
    }
    return samples;
  }

  private int frames(int ms) {
    return (int) Math.round(ms / MS * ratePerSecond);
  }
}
