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

  /** Made only for a word with marks. */
  private static final class Marks {
    private static final Pattern MARK = Pattern.compile("\\p{M}");
  }

  private static final String SILENCING = "bcdgjkpst";

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
    String plain = withoutMarks(word.toLowerCase(Locale.ROOT));
    plain = withoutSilentH(plain).replace("ee", "i").replace("oo", "u");
    plain = withoutPairs(plain).replace("ng", "nk");
    return plain.length() > 3 && plain.endsWith("am")
        ? plain.substring(0, plain.length() - 1)
        : plain;
  }

  private static String withoutMarks(String word) {
    for (int index = 0; index < word.length(); index++) {
      if (word.charAt(index) > '\u007e') {
        String letters = Normalizer.normalize(word, Normalizer.Form.NFD);
        return Marks.MARK.matcher(letters).replaceAll("");
      }
    }
    return word;
  }

  private static String withoutSilentH(String word) {
    StringBuilder spoken = new StringBuilder();
    for (int index = 0; index < word.length(); index++) {
      boolean silent =
          index > 0 && word.charAt(index) == 'h' && SILENCING.indexOf(word.charAt(index - 1)) >= 0;
      if (!silent) {
        spoken.append(word.charAt(index));
      }
    }
    return spoken.toString();
  }

  /** One letter in place of two that are the same. */
  private static String withoutPairs(String word) {
    StringBuilder single = new StringBuilder();
    int at = 0;
    while (at < word.length()) {
      int letter = word.codePointAt(at);
      int next = at + Character.charCount(letter);
      boolean pair = next < word.length() && word.codePointAt(next) == letter;
      single.appendCodePoint(letter);
      at = pair ? next + Character.charCount(letter) : next;
    }
    return single.toString();
  }
}
