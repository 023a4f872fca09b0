package org.matraloom.voice;

import static org.matraloom.voice.KlattParameter.PITCH;

/** The melody of a sollu: a raised start and a quick fall, as of a struck drum. */
final class VoicePitch {

  /** A voiceless consonant starts the vowel higher than a voiced one (common practice). */
  private static final double VOICELESS_START = 1.10;

  private static final double VOICED_START = 1.05;
  private static final double BEFORE = 0.98;
  private static final double SOON = 0.95;
  private static final double LATE = 0.86;

  private VoicePitch() {}

  /**
   * Writes the pitch into a score.
   *
   * @param score where it goes
   * @param pitchHz the middle pitch, Hz
   * @param lift how much higher the start is, as a factor
   * @param syllable what is said
   * @return the pitch before the vowel onset, Hz
   */
  static double write(KlattScore score, double pitchHz, double lift, PhoneSyllable syllable) {
    boolean voiceless = syllable.first().map(PhoneConsonant::isVoiceless).orElse(true);
    double before = pitchHz * BEFORE * lift;
    double start = pitchHz * (voiceless ? VOICELESS_START : VOICED_START) * lift;
    score
        .jump(PITCH, -1, before)
        .jump(PITCH, 0, start)
        .approach(PITCH, 0.010, pitchHz * SOON, 0.080)
        .approach(PITCH, 0.200, pitchHz * LATE, 0.400);
    return before;
  }
}
