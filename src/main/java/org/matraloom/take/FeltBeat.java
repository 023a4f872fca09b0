package org.matraloom.take;

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
 * Nasals, taps and glides are found where the mouth opens, which is the vowel.
 */
enum FeltBeat {
  VOWEL(0),
  RETROFLEX(9),
  DENTAL(13),
  VOICED(10),
  VOICED_VELAR(16),
  VELAR(27),
  LABIAL(10),
  ASPIRATED(50),
  AFFRICATE(46),
  NASAL(0),
  GLIDE(0),
  BREATH(40);

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

  FeltBeat(int lagMs) {
    usualLagSeconds = lagMs / 1000.0;
  }

  /** The usual lag, in seconds. */
  double usualLagSeconds() {
    return usualLagSeconds;
  }

  /** The usual lags of all classes, in order. */
  static double[] usualLags() {
    return Arrays.stream(values()).mapToDouble(FeltBeat::usualLagSeconds).toArray();
  }

  /** The class of a sollu, by the consonant before its vowel. */
  static FeltBeat of(Sollu sollu, Lexicon lexicon) {
    Optional<SolluSound> sound = lexicon.sound(sollu);
    if (sound.isEmpty() || sound.get().vowelIndex() == 0) {
      return VOWEL;
    }
    List<String> phones = sound.get().phones();
    return BY_CONSONANT.getOrDefault(phones.get(0), VOWEL);
  }
}
