package org.matraloom.voice;

import java.util.Optional;
import org.matraloom.score.Lexicon;

/**
 * Speaks the sollus by formant synthesis, each exactly as long as its matras.
 *
 * <p>A consonant is said before the grid, so that the vowel onset falls on it; the sollu before
 * gives way. How a sollu is shaped follows from its phones, its time, and what stands before and
 * after it; where it lies follows from the grid alone. Sounds are kept, so one voice serves one
 * rendering at a time.
 */
public final class FormantVoice implements SolluVoice {

  /** About 16 MB of sounds. */
  private static final long MOST_SAMPLES = 4_000_000;

  /** Bursts reach up to 7 kHz. */
  private static final int LOWEST_RATE = 16_000;

  private final int ratePerSecond;
  private final Optional<SpokenTicks> ticks;
  private final VoiceRequests requests;
  private final VoiceCache<VoiceRequest> sounds;

  /**
   * A voice for one rate.
   *
   * @param ratePerSecond frames a second
   * @param lexicon where the phones of a sollu are found: the lexicon the score was read with
   * @param settings how the sollus are said
   * @throws IllegalArgumentException if the rate is below 16000
   */
  public FormantVoice(int ratePerSecond, Lexicon lexicon, VoiceSettings settings) {
    this(ratePerSecond, lexicon, settings, Optional.empty());
  }

  private FormantVoice(
      int ratePerSecond, Lexicon lexicon, VoiceSettings settings, Optional<SpokenTicks> ticks) {
    if (ratePerSecond < LOWEST_RATE) {
      throw new IllegalArgumentException(
          "speech needs " + LOWEST_RATE + " frames a second or more, given " + ratePerSecond);
    }
    this.ratePerSecond = ratePerSecond;
    this.ticks = ticks;
    this.requests =
        new VoiceRequests(
            ratePerSecond, lexicon, settings, (before, cue, syllable) -> syllable.onsetSeconds());
    this.sounds = new VoiceCache<>(new VoiceSpeaker(ratePerSecond, settings)::say, MOST_SAMPLES);
  }

  /**
   * A voice under which another one says the subdivision words, softly, in place of the ticks.
   *
   * @param ratePerSecond frames a second
   * @param lexicon where the phones of a sollu and the words for a beat are found
   * @param settings how the sollus are said; the words are said as by {@link
   *     VoiceSettings#underneath()}
   * @return the voice
   */
  public static FormantVoice withSpokenTicks(
      int ratePerSecond, Lexicon lexicon, VoiceSettings settings) {
    SolluVoice under = new FormantVoice(ratePerSecond, lexicon, settings.underneath());
    return new FormantVoice(
        ratePerSecond, lexicon, settings, Optional.of(new SpokenTicks(under, lexicon)));
  }

  @Override
  public Optional<SpokenTicks> ticks() {
    return ticks;
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int longestLeadFrames() {
    return requests.longestLeadFrames();
  }

  /**
   * Shapes one sollu.
   *
   * @throws IllegalArgumentException if the lexicon does not know the sollu
   */
  @Override
  public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    return requests.placed(sounds.get(requests.of(before, cue, after)), cue);
  }
}
