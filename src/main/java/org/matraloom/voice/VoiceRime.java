package org.matraloom.voice;

import static org.matraloom.voice.KlattParameter.ASPIRATION;
import static org.matraloom.voice.KlattParameter.B1;
import static org.matraloom.voice.KlattParameter.B2;
import static org.matraloom.voice.KlattParameter.B3;
import static org.matraloom.voice.KlattParameter.F1;
import static org.matraloom.voice.KlattParameter.F2;
import static org.matraloom.voice.KlattParameter.F3;
import static org.matraloom.voice.KlattParameter.OPENNESS;
import static org.matraloom.voice.KlattParameter.TILT;
import static org.matraloom.voice.KlattParameter.VOICING;

import java.util.Optional;

/** Says the vowel and what closes it, and leans towards the sollu that follows. */
final class VoiceRime {

  /** The folds open for the first pulse this long before it closes on the vowel onset. */
  private static final double OPENING_SECONDS = 0.003;

  /** By then the tract has let go of the consonant. */
  private static final double SETTLING_SECONDS = 0.006;

  /** The nose opens a little before the mouth closes. */
  private static final double NASAL_LEAN = 0.020;

  private static final double BREATH = 0.02;
  private static final double LONGEST_FADE_CONSTANT = 0.9;

  private final KlattScore score;
  private final VoicePerson person;
  private final VoiceEffort effort;
  private final PhoneSyllable syllable;
  private final VoiceTiming timing;
  private final Optional<PhoneConsonant> following;

  VoiceRime(
      KlattScore score,
      VoicePerson person,
      VoiceEffort effort,
      PhoneSyllable syllable,
      VoiceTiming timing,
      Optional<PhoneConsonant> following) {
    this.score = score;
    this.person = person;
    this.effort = effort;
    this.syllable = syllable;
    this.timing = timing;
    this.following = following;
  }

  /** Writes all of it into the score. */
  void say() {
    voice();
    double vowelEnd = timing.vowelSeconds(syllable);
    strike(vowelEnd);
    if (syllable.coda().isEmpty()) {
      leanTowardsNext(vowelEnd);
      return;
    }
    double each = (timing.endSeconds() - vowelEnd) / syllable.coda().size();
    double from = vowelEnd;
    for (PhoneConsonant consonant : syllable.coda()) {
      close(consonant, from, each);
      from += each;
    }
  }

  /** The folds as they are in a vowel; after a breathy consonant they come together slowly. */
  private void voice() {
    double openness = person.openness() + effort.openness();
    double tiltDb = person.tiltDb() + effort.tiltDb();
    double breath = BREATH * effort.breath();
    double from = -SETTLING_SECONDS;
    double constant = 0.002;
    if (syllable.onset().stream().anyMatch(PhoneConsonant::isBreathy)) {
      score
          .approach(ASPIRATION, 0, 0.05, 0.002)
          .approach(OPENNESS, -SETTLING_SECONDS, openness + 0.15, 0.001)
          .approach(TILT, -SETTLING_SECONDS, tiltDb + 6, 0.0015);
      from = 0.025;
      constant = 0.014;
    }
    score
        .approach(ASPIRATION, from, breath, Math.max(0.004, constant))
        .approach(OPENNESS, from, openness, constant)
        .approach(TILT, from, tiltDb, constant)
        .approach(B1, -SETTLING_SECONDS, firstWidthHz() * person.ratio1(), 0.002)
        .approach(B2, -SETTLING_SECONDS, 80 * person.ratio1(), 0.002)
        .approach(B3, -SETTLING_SECONDS, 110 * person.ratio1(), 0.0015);
  }

  private double firstWidthHz() {
    return syllable.vowel() == PhoneVowel.A ? 80 : 60;
  }

  /** A strike that falls away quickly at first, as of a drum, and then rings. */
  private void strike(double vowelEnd) {
    double ring = Math.min(LONGEST_FADE_CONSTANT, Math.max(0.12, 0.55 * vowelEnd));
    score
        .approach(VOICING, -OPENING_SECONDS, 1, 0.0006)
        .approach(VOICING, 0.025, 0.72, 0.030)
        .approach(VOICING, 0.070, 0.12, ring);
  }

  private void close(PhoneConsonant consonant, double from, double seconds) {
    PhoneFormants closed = consonant.place().beside(person, syllable.vowel());
    double lean = Math.min(0.045, 0.45 * from);
    score
        .approach(F2, from - lean, closed.f2(), 0.4 * lean)
        .approach(F3, from - lean, closed.f3(), 0.4 * lean);
    switch (consonant.manner()) {
      case NASAL -> {
        VoiceNasal.colour(
            score, person, syllable.vowel(), from - Math.min(lean, NASAL_LEAN), 0.012);
        VoiceNasal.close(score, person, consonant.place(), from - 0.006, 0.008);
        swell(from, seconds);
      }
      case TAP, APPROXIMANT, BREATH ->
          score
              .approach(F1, from - lean, 340 * person.ratio1(), 0.012)
              .approach(VOICING, from, 0.4, 0.010);
      default ->
          score
              .approach(F1, from - lean, closed.f1(), 0.012)
              .approach(VOICING, from - 0.006, 0, 0.003)
              .approach(ASPIRATION, from - 0.004, 0, 0.002);
    }
  }

  /** A nasal that rings over its karvai grows first and then closes; a short one only closes. */
  private void swell(double from, double seconds) {
    if (timing.rings()) {
      score
          .approach(VOICING, from, 0.75, 0.20 * seconds)
          .approach(VOICING, from + 0.45 * seconds, 0.25, 0.40 * seconds);
    } else {
      score
          .approach(VOICING, from, 0.45, 0.006)
          .approach(VOICING, from + 0.5 * seconds, 0.25, 0.5 * seconds);
    }
  }

  private void leanTowardsNext(double end) {
    if (following.isEmpty() || following.get().manner() == PhoneManner.BREATH) {
      return;
    }
    PhoneConsonant consonant = following.get();
    PhoneFormants closed = consonant.place().beside(person, syllable.vowel());
    double lean = Math.min(0.035, 0.35 * end);
    double constant = timing.light() ? lean : 0.4 * lean;
    score
        .approach(F2, end - lean, closed.f2(), constant)
        .approach(F3, end - lean, closed.f3(), constant);
    if (consonant.manner() != PhoneManner.APPROXIMANT) {
      score.approach(F1, end - 0.8 * lean, closed.f1() + 60, constant);
    }
    if (consonant.manner() == PhoneManner.NASAL) {
      VoiceNasal.colour(score, person, syllable.vowel(), end - 0.015, 0.008);
    }
    if (consonant.isVoiceless()) {
      score.approach(VOICING, end - 0.007, 0, 0.003);
    }
  }
}
