package org.matraloom.follow;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;

/**
 * How long after the release of its consonant the beat of a sollu is felt: about at its vowel.
 *
 * <p>"English P-centres are not distinguishable from vowel onsets" (T. Rathcke and others, J.
 * Acoust. Soc. Am. 155 (2024) 2698, abstract); for unaspirated stops the vowel begins 5 to 12 ms
 * after a retroflex release, 8 to 20 ms after a dental and 18 to 35 ms after a velar one (from L.
 * Lisker and A. S. Abramson, Word 20 (1964) 384-422, and V. W. Zue, thesis, MIT, 1976); more than
 * 50 ms make a stop aspirated (the same). The hiss of an affricate lasts about 50 ms (from memory).
 * Nasals, taps and glides are found where the mouth opens if they follow a vowel without a gap, and
 * where their murmur begins if they do not, up to 70 ms before (J. Allen, M. S. Hunnicutt and D. H.
 * Klatt, From Text to Speech, 1987, table 9-1), so there the take itself has most to say.
 */
public enum FeltBeat {
  /** A vowel with nothing before it. */
  VOWEL(0, 12, 15),
  /** An unaspirated stop at the roof of the mouth. */
  RETROFLEX(9, 12, 20),
  /** An unaspirated voiceless stop at the teeth. */
  DENTAL(13, 12, 25),
  /** A voiced stop at the teeth. */
  VOICED(10, 12, 25),
  /** A voiced stop at the soft palate. */
  VOICED_VELAR(16, 12, 25),
  /** An unaspirated voiceless stop at the soft palate. */
  VELAR(27, 12, 25),
  /** A stop at the lips. */
  LABIAL(10, 12, 25),
  /** An aspirated stop. */
  ASPIRATED(50, 4, 40),
  /** A stop that lets go into a hiss. */
  AFFRICATE(46, 4, 30),
  /** A nasal. */
  NASAL(8, 2, 70),
  /** A tap, a lateral or a glide. */
  GLIDE(8, 2, 70),
  /** A hiss or a breath. */
  BREATH(40, 2, 50);

  private static final Map<String, FeltBeat> BY_CONSONANT =
      Map.ofEntries(
          Map.entry("T", RETROFLEX),
          Map.entry("D", RETROFLEX),
          Map.entry("t", DENTAL),
          Map.entry("d", VOICED),
          Map.entry("dh", VOICED),
          Map.entry("g", VOICED_VELAR),
          Map.entry("k", VELAR),
          Map.entry("p", LABIAL),
          Map.entry("b", LABIAL),
          Map.entry("th", ASPIRATED),
          Map.entry("j", AFFRICATE),
          Map.entry("jh", AFFRICATE),
          Map.entry("ch", AFFRICATE),
          Map.entry("m", NASAL),
          Map.entry("n", NASAL),
          Map.entry("N", NASAL),
          Map.entry("ng", NASAL),
          Map.entry("r", GLIDE),
          Map.entry("l", GLIDE),
          Map.entry("y", GLIDE),
          Map.entry("v", GLIDE),
          Map.entry("h", BREATH));

  private final double usualLagSeconds;
  private final int weightSollus;
  private final double reachSeconds;

  /**
   * A class.
   *
   * @param lagMs the usual lag, in ms
   * @param weightSollus for how many measured sollus the usual lag counts
   * @param reachMs how far from the usual a performer's lag may be, in ms
   */
  FeltBeat(int lagMs, int weightSollus, int reachMs) {
    usualLagSeconds = lagMs / 1000.0;
    this.weightSollus = weightSollus;
    reachSeconds = reachMs / 1000.0;
  }

  /**
   * The lag of a performer.
   *
   * @param laterSeconds how much later than usual the beats of their sollus seem to be felt after
   *     the release
   * @param sollus on how many sollus that was measured
   * @return seconds; between the usual lag and what was measured, and near the former if little was
   */
  public double lagSeconds(double laterSeconds, long sollus) {
    double change = laterSeconds * sollus / (sollus + weightSollus);
    return usualLagSeconds + Math.max(-reachSeconds, Math.min(reachSeconds, change));
  }

  /**
   * The usual lag, in seconds.
   *
   * @return seconds from the release to the felt beat
   */
  public double usualLagSeconds() {
    return usualLagSeconds;
  }

  /** By how much the lag is uncertain before anything is known of the performer, in seconds. */
  double slackSeconds() {
    return Math.max(0, 0.75 * (reachSeconds - 0.030));
  }

  /** The middle of the lags that are likely before anything is known, in seconds. */
  double middleLagSeconds() {
    return usualLagSeconds + 0.75 * slackSeconds();
  }

  /**
   * The usual lags of all classes, in order.
   *
   * @return seconds, by the order of the classes
   */
  public static double[] usualLags() {
    return Arrays.stream(values()).mapToDouble(FeltBeat::usualLagSeconds).toArray();
  }

  /**
   * The class of a sollu, by the consonant before its vowel.
   *
   * @param sollu the sollu
   * @param lexicon how it is said
   * @return its class
   */
  public static FeltBeat of(Sollu sollu, Lexicon lexicon) {
    Optional<SolluSound> sound = lexicon.sound(sollu);
    if (sound.isEmpty() || sound.get().vowelIndex() == 0) {
      return VOWEL;
    }
    List<String> phones = sound.get().phones();
    return BY_CONSONANT.getOrDefault(phones.get(0), VOWEL);
  }
}
