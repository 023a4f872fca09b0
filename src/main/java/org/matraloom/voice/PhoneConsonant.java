package org.matraloom.voice;

import java.util.Optional;

/**
 * The consonants of the sollus.
 *
 * <p>Lengths at a slow rate: closures about 53 ms for both kinds of stop, a tap 29 ms (T. H.
 * Crystal and A. S. House, J. Phonetics 16 (1988) 263-284); nasals 50 to 70 ms (J. Allen, M. S.
 * Hunnicutt and D. H. Klatt, From Text to Speech, 1987, table 9-1). The lags from the release to
 * the voice are those of unaspirated stops, retroflex below dental below velar (L. Lisker and A. S.
 * Abramson, Word 20 (1964) 384-422).
 */
public enum PhoneConsonant {
  /** A dental t, as in ta. */
  T("t", PhoneManner.VOICELESS_STOP, PhonePlace.DENTAL, 70, 13),
  /** An aspirated dental t. */
  TH("th", PhoneManner.VOICELESS_STOP, PhonePlace.DENTAL, 100, 50),
  /** A retroflex t, as in ṭa. */
  RETROFLEX_T("T", PhoneManner.VOICELESS_STOP, PhonePlace.RETROFLEX, 60, 9),
  /** A dental d, as in di. */
  D("d", PhoneManner.VOICED_STOP, PhonePlace.DENTAL, 60, 9),
  /** A breathy dental d, as in dhin. */
  DH("dh", PhoneManner.VOICED_STOP, PhonePlace.DENTAL, 66, 12),
  /** A retroflex d. */
  RETROFLEX_D("D", PhoneManner.VOICED_STOP, PhonePlace.RETROFLEX, 54, 7),
  /** A velar k, as in ka. */
  K("k", PhoneManner.VOICELESS_STOP, PhonePlace.VELAR, 80, 28),
  /** A velar g, as in gi. */
  G("g", PhoneManner.VOICED_STOP, PhonePlace.VELAR, 66, 15),
  /** A p. */
  P("p", PhoneManner.VOICELESS_STOP, PhonePlace.LABIAL, 66, 11),
  /** A b. */
  B("b", PhoneManner.VOICED_STOP, PhonePlace.LABIAL, 62, 7),
  /** A palatal j, as in jo. */
  J("j", PhoneManner.VOICED_AFFRICATE, PhonePlace.PALATAL, 96, 50),
  /** A breathy j. */
  JH("jh", PhoneManner.VOICED_AFFRICATE, PhonePlace.PALATAL, 98, 52),
  /** A ch. */
  CH("ch", PhoneManner.VOICELESS_AFFRICATE, PhonePlace.PALATAL, 96, 48),
  /** An m, as in mi. */
  M("m", PhoneManner.NASAL, PhonePlace.LABIAL, 64, 0),
  /** A dental n, as in na. */
  N("n", PhoneManner.NASAL, PhonePlace.DENTAL, 60, 0),
  /** A retroflex n, as in ṇu. */
  RETROFLEX_N("N", PhoneManner.NASAL, PhonePlace.RETROFLEX, 54, 0),
  /** A velar n, as at the end of ding. */
  NG("ng", PhoneManner.NASAL, PhonePlace.VELAR, 60, 0),
  /** A tap, as in ri. */
  R("r", PhoneManner.TAP, PhonePlace.RETROFLEX, 56, 0),
  /** An l, as in lan. */
  L("l", PhoneManner.APPROXIMANT, PhonePlace.DENTAL, 60, 0),
  /** A y. */
  Y("y", PhoneManner.APPROXIMANT, PhonePlace.PALATAL, 64, 0),
  /** A v. */
  V("v", PhoneManner.APPROXIMANT, PhonePlace.LABIAL, 60, 0),
  /** An h. */
  H("h", PhoneManner.BREATH, PhonePlace.VELAR, 60, 0);

  private final String phone;
  private final PhoneManner manner;
  private final PhonePlace place;
  private final double seconds;
  private final double lagSeconds;

  PhoneConsonant(String phone, PhoneManner manner, PhonePlace place, int ms, int lagMs) {
    this.phone = phone;
    this.manner = manner;
    this.place = place;
    this.seconds = ms / 1000.0;
    this.lagSeconds = lagMs / 1000.0;
  }

  /** The consonant of a phone of the lexicon; nothing for a vowel or an unknown phone. */
  static Optional<PhoneConsonant> of(String phone) {
    for (PhoneConsonant consonant : values()) {
      if (consonant.phone.equals(phone)) {
        return Optional.of(consonant);
      }
    }
    return Optional.empty();
  }

  /**
   * How it is made.
   *
   * @return the manner
   */
  public PhoneManner manner() {
    return manner;
  }

  /**
   * Where it is made.
   *
   * @return the place
   */
  public PhonePlace place() {
    return place;
  }

  /**
   * How long it is at a slow rate, from the closing to the vowel onset, in seconds.
   *
   * @return seconds
   */
  public double seconds() {
    return seconds;
  }

  /**
   * How long before the vowel onset it is released at a slow rate, in seconds.
   *
   * @return seconds
   */
  public double lagSeconds() {
    return lagSeconds;
  }

  /** Whether the folds go on whispering after the release. */
  boolean isBreathy() {
    return this == DH || this == JH;
  }

  /**
   * Whether the folds rest until the vowel.
   *
   * @return true if they do
   */
  public boolean isVoiceless() {
    return manner == PhoneManner.VOICELESS_STOP
        || manner == PhoneManner.VOICELESS_AFFRICATE
        || manner == PhoneManner.BREATH;
  }

  /**
   * Whether the mouth is shut and then opened at one moment.
   *
   * @return true if it is
   */
  public boolean isReleased() {
    return manner == PhoneManner.VOICELESS_STOP
        || manner == PhoneManner.VOICED_STOP
        || manner.hisses();
  }

  /**
   * Whether the front of the tongue makes it, at the teeth or behind them.
   *
   * @return true for a dental or a retroflex
   */
  public boolean isFrontTongue() {
    return place == PhonePlace.DENTAL || place == PhonePlace.RETROFLEX;
  }
}
