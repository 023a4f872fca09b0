package org.matraloom.voice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

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

  private static final double LONGEST_LEAD_SECONDS = 0.100;
  private static final double LONGEST_SECONDS = 6;
  private static final double SHORTEST_SECONDS = 0.010;
  private static final double MS = 1000;

  private final int ratePerSecond;
  private final Lexicon lexicon;
  private final VoicePlacement placement;
  private final int takes;
  private final Optional<SpokenTicks> ticks;
  private final VoiceCache sounds;
  private final Map<String, PhoneSyllable> syllables = new HashMap<>();

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
    this.lexicon = lexicon;
    this.placement = settings.placement();
    this.takes = settings.takes();
    this.ticks = ticks;
    this.sounds = new VoiceCache(new VoiceSpeaker(ratePerSecond, settings), MOST_SAMPLES);
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
    return (int) ((LONGEST_LEAD_SECONDS + placement.mostAheadSeconds()) * ratePerSecond);
  }

  /**
   * Shapes one sollu.
   *
   * @throws IllegalArgumentException if the lexicon does not know the sollu
   */
  @Override
  public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    PhoneSyllable syllable = syllable(cue);
    double end = seconds(cue.lengthFrames());
    Optional<PhoneConsonant> following = Optional.empty();
    if (after.isPresent()) {
      double nextBegins = vowelSeconds(cue, after.get()) - lead(Optional.of(cue), after.get());
      end = Math.min(end, nextBegins);
      if (follows(cue, after.get()) && nextBegins <= LONGEST_SECONDS) {
        end = nextBegins;
        following = syllable(after.get()).first();
      }
    }
    VoiceRequest request =
        new VoiceRequest(
            syllable,
            following,
            wholeMs(lead(before, cue)),
            wholeMs(Math.max(SHORTEST_SECONDS, Math.min(LONGEST_SECONDS, end))),
            VoiceTiming.isLight(seconds(cue.lengthFrames())),
            cue.said().spoken().isRinging(),
            cue.said().stress(),
            take(cue.said().beat()));
    return placed(sounds.get(request), delayFrames(cue));
  }

  /** The lead of a sound counts from the felt beat, not from the vowel. */
  private SolluWave placed(SolluWave sound, int delayFrames) {
    int lead = sound.leadFrames() - delayFrames;
    if (lead < 0) {
      float[] later = new float[sound.samples().length - lead];
      System.arraycopy(sound.samples(), 0, later, -lead, sound.samples().length);
      return new SolluWave(later, 0);
    }
    return new SolluWave(sound.samples(), Math.min(lead, longestLeadFrames()));
  }

  private double lead(Optional<SolluCue> before, SolluCue cue) {
    PhoneSyllable syllable = syllable(cue);
    if (before.isEmpty()) {
      return Math.min(syllable.onsetSeconds(), LONGEST_LEAD_SECONDS);
    }
    double since = vowelSeconds(before.get(), cue);
    double quiet =
        follows(before.get(), cue) ? 0 : Math.max(0, since - seconds(before.get().lengthFrames()));
    double lead = VoiceTiming.lead(syllable, Math.max(SHORTEST_SECONDS, since - quiet), quiet);
    return Math.min(lead, LONGEST_LEAD_SECONDS);
  }

  /** From one vowel onset to the next. */
  private double vowelSeconds(SolluCue cue, SolluCue after) {
    return seconds(after.startFrame() + delayFrames(after) - cue.startFrame() - delayFrames(cue));
  }

  private int delayFrames(SolluCue cue) {
    double delay = placement.vowelDelay(syllable(cue), seconds(cue.lengthFrames()));
    return (int) Math.round(delay * ratePerSecond);
  }

  private static boolean follows(SolluCue cue, SolluCue after) {
    return after.startFrame() == cue.startFrame() + cue.lengthFrames();
  }

  private PhoneSyllable syllable(SolluCue cue) {
    Sollu sollu = cue.said().sollu();
    return syllables.computeIfAbsent(
        sollu.sound(),
        name ->
            PhoneSyllable.of(
                lexicon
                    .sound(sollu)
                    .orElseThrow(
                        () ->
                            new IllegalArgumentException(
                                "the lexicon does not know the sollu \"" + name + "\""))
                    .phones()));
  }

  /** Which take is heard depends on the place alone, so that the same piece sounds the same. */
  private int take(Ratio beat) {
    long mixed = (beat.num() * 0x9E37_79B9L + beat.den()) * 0x9E37_79B9_7F4A_7C15L;
    return (int) Long.remainderUnsigned(mixed >>> 20, takes);
  }

  private int wholeMs(double seconds) {
    return (int) (seconds * MS + 1e-6);
  }

  private double seconds(long frames) {
    return (double) frames / ratePerSecond;
  }
}
