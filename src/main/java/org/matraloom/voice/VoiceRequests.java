package org.matraloom.voice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * Makes of places on the grid what a voice has to say: how long a consonant and what follows it may
 * be, so that each vowel falls on the grid and the sollu before gives way.
 *
 * <p>One rule for every voice; how long a consonant is of itself is told by the voice.
 */
public final class VoiceRequests {

  /** How long a consonant is where nothing hurries it. */
  @FunctionalInterface
  public interface Consonants {

    /**
     * From the closing of the mouth to the vowel onset.
     *
     * @param before the sollu said before it, if there is one
     * @param cue the sollu
     * @param syllable its phones
     * @return seconds, 0 or more
     */
    double seconds(Optional<SolluCue> before, SolluCue cue, PhoneSyllable syllable);
  }

  private static final double LONGEST_LEAD_SECONDS = 0.100;
  private static final double LONGEST_SECONDS = 6;
  private static final double SHORTEST_SECONDS = 0.010;
  private static final double MS = 1000;

  private final int ratePerSecond;
  private final Lexicon lexicon;
  private final VoicePlacement placement;
  private final int takes;
  private final Consonants consonants;
  private final Map<String, PhoneSyllable> syllables = new HashMap<>();

  /**
   * Prepares for one voice.
   *
   * @param ratePerSecond frames a second
   * @param lexicon where the phones of a sollu are found
   * @param settings which moment falls on the grid, and how many takes there are
   * @param consonants how long consonants are
   */
  public VoiceRequests(
      int ratePerSecond, Lexicon lexicon, VoiceSettings settings, Consonants consonants) {
    this.ratePerSecond = ratePerSecond;
    this.lexicon = lexicon;
    this.placement = settings.placement();
    this.takes = settings.takes();
    this.consonants = consonants;
  }

  /**
   * The most a sound may begin before its felt beat.
   *
   * @return frames
   */
  public int longestLeadFrames() {
    return (int) ((LONGEST_LEAD_SECONDS + placement.mostAheadSeconds()) * ratePerSecond);
  }

  /**
   * What is to be said.
   *
   * @param before the sollu said before it, if there is one
   * @param cue the sollu
   * @param after the sollu said next, if there is one, however far off
   * @return the request, in whole milliseconds
   * @throws IllegalArgumentException if the lexicon does not know a sollu
   */
  public VoiceRequest of(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
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
    return new VoiceRequest(
        syllable(cue),
        following,
        wholeMs(lead(before, cue)),
        wholeMs(Math.max(SHORTEST_SECONDS, Math.min(LONGEST_SECONDS, end))),
        VoiceTiming.isLight(seconds(cue.lengthFrames())),
        cue.said().spoken().isRinging(),
        cue.said().stress(),
        take(cue));
  }

  /**
   * A sound where the placement puts it: its lead counts from the felt beat, not from the vowel.
   *
   * @param sound a sound whose lead counts from its vowel onset
   * @param cue what it says
   * @return the sound
   */
  public SolluWave placed(SolluWave sound, SolluCue cue) {
    int lead = sound.leadFrames() - delayFrames(cue);
    if (lead < 0) {
      float[] later = new float[sound.samples().length - lead];
      System.arraycopy(sound.samples(), 0, later, -lead, sound.samples().length);
      return new SolluWave(later, 0);
    }
    return new SolluWave(sound.samples(), Math.min(lead, longestLeadFrames()));
  }

  /**
   * The phones of a sollu.
   *
   * @param cue the sollu
   * @return its syllable
   * @throws IllegalArgumentException if the lexicon does not know the sollu
   */
  public PhoneSyllable syllable(SolluCue cue) {
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

  private double lead(Optional<SolluCue> before, SolluCue cue) {
    double natural = consonants.seconds(before, cue, syllable(cue));
    if (before.isEmpty()) {
      return Math.min(natural, LONGEST_LEAD_SECONDS);
    }
    double since = vowelSeconds(before.get(), cue);
    double quiet =
        follows(before.get(), cue) ? 0 : Math.max(0, since - seconds(before.get().lengthFrames()));
    double lead = VoiceTiming.lead(natural, Math.max(SHORTEST_SECONDS, since - quiet), quiet);
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

  /**
   * Which take is heard: it depends on the place alone, so that the same piece sounds the same.
   *
   * @param cue the sollu
   * @return from 0 to the number of takes, exclusive
   */
  public int take(SolluCue cue) {
    Ratio beat = cue.said().beat();
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
