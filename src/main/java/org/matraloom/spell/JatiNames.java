package org.matraloom.spell;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.matraloom.score.Jati;

/**
 * The names of the jatis and nadais in their many romanisations.
 *
 * <p>Spellings are folded: marks, long vowels, h after a consonant and doubled letters are dropped,
 * so that one entry stands for many. The variants are common practice.
 */
public final class JatiNames {

  private static final Map<String, Jati> FOLDED =
      Map.ofEntries(
          Map.entry("tisra", Jati.TISRA),
          Map.entry("trisra", Jati.TISRA),
          Map.entry("tirisra", Jati.TISRA),
          Map.entry("tryasra", Jati.TISRA),
          Map.entry("catusra", Jati.CHATUSRA),
          Map.entry("caturasra", Jati.CHATUSRA),
          Map.entry("catursra", Jati.CHATUSRA),
          Map.entry("caturusra", Jati.CHATUSRA),
          Map.entry("satusra", Jati.CHATUSRA),
          Map.entry("sadusra", Jati.CHATUSRA),
          Map.entry("saturasra", Jati.CHATUSRA),
          Map.entry("kanda", Jati.KHANDA),
          Map.entry("kanta", Jati.KHANDA),
          Map.entry("misra", Jati.MISRA),
          Map.entry("sankirna", Jati.SANKIRNA),
          Map.entry("samkirna", Jati.SANKIRNA));

  private static final Pattern MARK = Pattern.compile("\\p{M}");
  private static final Pattern SILENT_H = Pattern.compile("(?<=[bcdgjkpst])h");
  private static final Pattern DOUBLED = Pattern.compile("(.)\\1");

  private JatiNames() {}

  /**
   * The jati that a word names.
   *
   * @param word in any spelling
   * @return the jati; nothing if the word names none
   */
  public static Optional<Jati> jati(String word) {
    return jatiOfFolded(fold(word));
  }

  /** The jati that a folded word names. */
  static Optional<Jati> jatiOfFolded(String folded) {
    return Optional.ofNullable(FOLDED.get(folded));
  }

  /**
   * Brings the ways of spelling a name to one.
   *
   * @param word as it was typed
   * @return small plain letters, the same for all usual spellings
   */
  public static String fold(String word) {
    String letters = Normalizer.normalize(word.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    String plain = MARK.matcher(letters).replaceAll("");
    plain = SILENT_H.matcher(plain).replaceAll("");
    plain = plain.replace("ee", "i").replace("oo", "u");
    plain = DOUBLED.matcher(plain).replaceAll("$1").replace("ng", "nk");
    return plain.length() > 3 && plain.endsWith("am")
        ? plain.substring(0, plain.length() - 1)
        : plain;
  }
}
