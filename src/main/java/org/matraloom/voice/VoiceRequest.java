package org.matraloom.voice;

import java.util.Optional;
import org.matraloom.schedule.Stress;

/**
 * All that one sollu's sound depends on; equal requests sound alike. Times are whole milliseconds,
 * so that the rounding of the grid to frames makes no new sounds.
 *
 * @param syllable what is said
 * @param following the consonant that follows at once, if one does
 * @param leadMs how long before the vowel onset the consonant begins
 * @param endMs when it is over, after the vowel onset
 * @param light whether the articulation is light
 * @param rings whether a karvai follows
 * @param stress how prominent its place is
 * @param take which of several takes, alike to the ear but not to the sample
 */
public record VoiceRequest(
    PhoneSyllable syllable,
    Optional<PhoneConsonant> following,
    int leadMs,
    int endMs,
    boolean light,
    boolean rings,
    Stress stress,
    int take) {

  private static final double MS = 1000;

  /**
   * The moments of the sollu.
   *
   * @return in seconds from its vowel onset
   */
  public VoiceTiming timing() {
    double natural = syllable.onsetSeconds();
    double pace = natural == 0 ? 1 : leadMs / MS / natural;
    return new VoiceTiming(leadMs / MS, endMs / MS, pace, light, rings);
  }

  /** How long before the vowel onset anything is heard: a closure without voice is silent. */
  int heardLeadMs() {
    if (syllable.onset().size() != 1 || syllable.onset().get(0).manner() == PhoneManner.BREATH) {
      return leadMs;
    }
    PhoneConsonant only = syllable.onset().get(0);
    double lag = timing().lag(only, leadMs / MS);
    return only.isVoiceless() ? Math.min(leadMs, (int) (lag * MS) + 2) : leadMs;
  }

  /** A number that is the same for equal requests on every machine. */
  int grain() {
    int grain = take;
    for (PhoneConsonant consonant : syllable.onset()) {
      grain = 31 * grain + consonant.ordinal() + 1;
    }
    grain = 31 * grain + syllable.vowel().ordinal();
    for (PhoneConsonant consonant : syllable.coda()) {
      grain = 31 * grain + consonant.ordinal() + 1;
    }
    return 31 * grain + endMs & Integer.MAX_VALUE;
  }

  /** Written out, for the sake of the start: see {@link org.matraloom.time.Ratio}. */
  @Override
  public boolean equals(Object other) {
    return other instanceof VoiceRequest request
        && leadMs == request.leadMs
        && endMs == request.endMs
        && light == request.light
        && rings == request.rings
        && stress == request.stress
        && take == request.take
        && following.equals(request.following)
        && syllable.onset().equals(request.syllable.onset())
        && syllable.vowel() == request.syllable.vowel()
        && syllable.coda().equals(request.syllable.coda());
  }

  @Override
  public int hashCode() {
    int sum = 31 * leadMs + endMs;
    sum = 31 * sum + take;
    sum = 31 * sum + syllable.onset().hashCode();
    sum = 31 * sum + syllable.vowel().hashCode();
    return 31 * sum + syllable.coda().hashCode();
  }
}
