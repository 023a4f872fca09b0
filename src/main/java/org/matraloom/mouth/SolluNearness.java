package org.matraloom.mouth;

import java.util.List;
import java.util.Optional;
import org.matraloom.voice.PhoneConsonant;
import org.matraloom.voice.PhoneSyllable;

/**
 * How far one sollu is from another in the mouth: our own weights, from memory of what is taken for
 * what.
 */
final class SolluNearness {

  /** Further than this, another sollu would be heard. */
  static final double NEAR = 2;

  private static final double OTHER_VOWEL = 3;
  private static final double OTHER_MANNER = 3;
  private static final double OTHER_VOICING = 1;
  private static final double OTHER_PLACE = 1;
  private static final double NEIGHBOUR_PLACE = 0.5;
  private static final double OTHER_NASAL = 0.5;
  private static final double NO_CODA = 3;

  private SolluNearness() {}

  /** The distance, 0 for the same phones. */
  static double between(PhoneSyllable asked, PhoneSyllable recorded) {
    double vowel = asked.vowel() == recorded.vowel() ? 0 : OTHER_VOWEL;
    return vowel
        + onset(asked.lastBeforeVowel(), recorded.lastBeforeVowel())
        + coda(asked.coda(), recorded.coda());
  }

  private static double onset(Optional<PhoneConsonant> a, Optional<PhoneConsonant> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.equals(b) ? 0 : OTHER_MANNER;
    }
    if (a.equals(b)) {
      return 0;
    }
    PhoneConsonant one = a.get();
    PhoneConsonant other = b.get();
    boolean stops = one.isReleased() && other.isReleased();
    boolean alike = one.manner() == other.manner();
    boolean hissing = one.manner().hisses() == other.manner().hisses();
    double manner = alike || stops && hissing ? 0 : OTHER_MANNER;
    double voicing = one.isVoiceless() == other.isVoiceless() ? 0.1 : OTHER_VOICING;
    return manner + voicing + place(one, other);
  }

  private static double place(PhoneConsonant one, PhoneConsonant other) {
    if (one.place() == other.place()) {
      return 0;
    }
    return one.isFrontTongue() && other.isFrontTongue() ? NEIGHBOUR_PLACE : OTHER_PLACE;
  }

  private static double coda(List<PhoneConsonant> a, List<PhoneConsonant> b) {
    if (a.equals(b)) {
      return 0;
    }
    return !a.isEmpty() && !b.isEmpty() && a.get(0).manner() == b.get(0).manner()
        ? OTHER_NASAL
        : NO_CODA;
  }
}
