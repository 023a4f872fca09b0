package org.matraloom.voice;

import static org.matraloom.voice.KlattParameter.ASPIRATION;
import static org.matraloom.voice.KlattParameter.B1;
import static org.matraloom.voice.KlattParameter.B3;
import static org.matraloom.voice.KlattParameter.F1;
import static org.matraloom.voice.KlattParameter.F2;
import static org.matraloom.voice.KlattParameter.F3;
import static org.matraloom.voice.KlattParameter.FRICATION;
import static org.matraloom.voice.KlattParameter.TILT;
import static org.matraloom.voice.KlattParameter.VOICING;

/** Says the consonants before the vowel: closure, burst, murmur or tap, up to the vowel onset. */
final class VoiceOnset {

  /** How long the tongue takes from a consonant to the vowel: lips first, the back last. */
  private static final double LIP_CONSTANT = 0.010;

  private static final double TIP_CONSTANT = 0.013;
  private static final double BACK_CONSTANT = 0.018;

  /** F1 arrives first; at the opening of a nasal it springs. */
  private static final double STOP_F1 = 0.9;

  private static final double NASAL_F1 = 0.45;

  /** F2 goes on moving into the vowel long after F1 has arrived. */
  private static final double SLOWER_F2 = 4;

  private static final double SLOWER_F3 = 1.6;

  /** A hiss holds the tongue until so long before the vowel. */
  private static final double HISS_LEAVES = 0.022;

  private static final double VOICE_BAR = 0.1;
  private static final double VOICE_BAR_TILT_DB = 26;
  private static final double MURMUR = 0.5;
  private static final double TAP_SECONDS = 0.024;

  private final KlattScore score;
  private final VoicePerson person;
  private final VoiceEffort effort;
  private final PhoneSyllable syllable;
  private final VoiceTiming timing;
  private final PhoneFormants vowel;

  VoiceOnset(
      KlattScore score,
      VoicePerson person,
      VoiceEffort effort,
      PhoneSyllable syllable,
      VoiceTiming timing) {
    this.score = score;
    this.person = person;
    this.effort = effort;
    this.syllable = syllable;
    this.timing = timing;
    this.vowel = person.target(syllable.vowel());
  }

  /** Writes all of it into the score. */
  void say() {
    if (syllable.onset().isEmpty()) {
      score.jump(0, vowel);
    }
    double left = timing.pace() * syllable.onsetSeconds();
    for (PhoneConsonant consonant : syllable.onset()) {
      double start = -left;
      left -= timing.pace() * consonant.seconds();
      double end = Math.min(0, -left);
      switch (consonant.manner()) {
        case VOICELESS_STOP, VOICELESS_AFFRICATE, VOICED_STOP, VOICED_AFFRICATE ->
            stop(consonant, start, end);
        case NASAL -> nasal(consonant, start, end);
        case TAP -> tap(start, end);
        case APPROXIMANT -> approximant(consonant, start, end);
        case BREATH -> breath(start);
      }
    }
  }

  private void stop(PhoneConsonant consonant, double start, double end) {
    double lag = timing.lag(consonant, end - start);
    double release = end - lag;
    score.jump(start, consonant.place().beside(person, syllable.vowel()));
    if (consonant.isVoiceless()) {
      score.jump(VOICING, start, 0).jump(B1, start, 200);
      score.approach(ASPIRATION, release + 0.002, 0.05 * effort.breath(), 0.001);
    } else {
      score
          .approach(VOICING, start, VOICE_BAR, 0.012)
          .jump(TILT, start, VOICE_BAR_TILT_DB)
          .jump(F1, start, 180 * person.ratio1())
          .jump(B1, start, 90);
    }
    burst(consonant, release, lag);
    double move = consonant.manner().hisses() ? Math.max(release, end - HISS_LEAVES) : release;
    moveToVowel(move, constant(consonant.place()), STOP_F1);
  }

  private void burst(PhoneConsonant consonant, double release, double lag) {
    PhoneBurst burst = PhoneBurst.of(person, consonant, syllable.vowel());
    boolean hisses = consonant.manner().hisses();
    score.colour(burst.spectrum());
    double level = burst.level() * effort.burst() * (timing.light() ? 0.5 : 1);
    double seconds = hisses ? lag - 0.008 : Math.min(burst.seconds(), 0.8 * lag);
    score.approach(FRICATION, release, level, hisses ? 0.006 : 0.0004);
    score.approach(FRICATION, release + seconds, 0, hisses ? 0.005 : 0.003);
  }

  private void nasal(PhoneConsonant consonant, double start, double end) {
    score.jump(start, consonant.place().beside(person, syllable.vowel()));
    VoiceNasal.close(score, person, consonant.place(), start, 0);
    score.approach(VOICING, start, MURMUR, 0.010);
    VoiceNasal.open(score, end - 0.007, 0.0012);
    moveToVowel(end - 0.007, constant(consonant.place()), NASAL_F1);
  }

  /** A tongue tip that is drawn back and strikes once; F3 rises for about 70 ms. */
  private void tap(double start, double end) {
    double f2 = 0.35 * vowel.f2() + 0.65 * 1350 * person.ratio2();
    score.jump(start, new PhoneFormants(340 * person.ratio1(), f2, 1700 * person.ratio3()));
    double strike = end - Math.min(TAP_SECONDS, 0.5 * (end - start));
    score
        .approach(VOICING, start, 0.6, 0.006)
        .jump(TILT, start, person.tiltDb() + 3)
        .approach(VOICING, strike, 0.12, 0.004)
        .approach(B1, strike, 150, 0.002)
        .approach(F1, end, vowel.f1(), 0.010)
        .approach(F2, end - 0.004, vowel.f2(), 0.018)
        .approach(F3, end - 0.004, vowel.f3(), 0.026);
  }

  private void approximant(PhoneConsonant consonant, double start, double end) {
    boolean lateral = consonant == PhoneConsonant.L;
    score.jump(
        start,
        switch (consonant) {
          case L -> person.scaled(330, 1250, 2750);
          case Y -> person.scaled(270, 2150, 2950);
          default -> person.scaled(300, 900, 2200);
        });
    double leave = end - (lateral ? 0.007 : 0.020);
    score
        .approach(VOICING, start, 0.5, 0.008)
        .jump(TILT, start, person.tiltDb() + 5)
        .jump(B3, start, 280)
        .approach(F1, leave, vowel.f1(), lateral ? 0.005 : 0.016)
        .approach(F2, leave, vowel.f2(), 0.018)
        .approach(F3, leave, vowel.f3(), 0.018);
  }

  private void breath(double start) {
    score.jump(start, vowel).jump(B1, start, 220).approach(ASPIRATION, start, 0.09, 0.012);
  }

  private void moveToVowel(double fromSeconds, double constant, double shareOfF1) {
    double quick = Math.min(constant, 0.3 * timing.endSeconds());
    score
        .approach(F1, fromSeconds, vowel.f1(), shareOfF1 * quick)
        .approach(F2, fromSeconds, vowel.f2(), SLOWER_F2 * quick)
        .approach(F3, fromSeconds, vowel.f3(), SLOWER_F3 * quick);
  }

  private static double constant(PhonePlace place) {
    return switch (place) {
      case LABIAL -> LIP_CONSTANT;
      case DENTAL, RETROFLEX, PALATAL -> TIP_CONSTANT;
      case VELAR -> BACK_CONSTANT;
    };
  }
}
