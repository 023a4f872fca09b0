package org.matraloom.score;

import java.text.Normalizer;
import java.util.Locale;

/** Brings the ways of romanising a sollu to one form. */
final class Spelling {

  private static final char MACRON = '\u0304';
  private static final char CIRCUMFLEX = '\u0302';
  private static final char DOT_BELOW = '\u0323';
  private static final String RETROFLEX_PLAIN = "tdn";
  private static final String RETROFLEX_DOTTED = "\u1e6d\u1e0d\u1e47";

  private Spelling() {}

  /**
   * The normal form of a spelling: lower case, long marks written as letters, the dotted retroflex
   * letters kept and every other mark dropped.
   *
   * <p>A long e or o is written plainly, since the short ones hardly occur in sollus, and ee is the
   * everyday spelling of a long i.
   */
  static String normal(String text) {
    StringBuilder normal = new StringBuilder();
    String letters = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    for (int index = 0; index < letters.length(); index++) {
      char letter = letters.charAt(index);
      int last = normal.length() - 1;
      if (last >= 0 && (letter == MACRON || letter == CIRCUMFLEX)) {
        char vowel = normal.charAt(last);
        if (vowel == 'a' || vowel == 'i' || vowel == 'u') {
          normal.append(vowel);
        }
      } else if (last >= 0 && letter == DOT_BELOW) {
        int plain = RETROFLEX_PLAIN.indexOf(normal.charAt(last));
        if (plain >= 0) {
          normal.setCharAt(last, RETROFLEX_DOTTED.charAt(plain));
        }
      } else if (Character.getType(letter) != Character.NON_SPACING_MARK) {
        normal.append(letter);
      }
    }
    return normal.toString().replace("ee", "ii");
  }

  /** Whether a boundary between two letters would cut a consonant such as th in half. */
  static boolean cutsConsonant(char before, char after) {
    return after == 'h' && "tdkgjcbp\u1e6d\u1e0d".indexOf(before) >= 0;
  }

  /** Whether a text consists of letters and their marks alone. */
  static boolean isLetters(String text) {
    return !text.isEmpty()
        && text.codePoints()
            .allMatch(
                letter ->
                    Character.isLetter(letter)
                        || Character.getType(letter) == Character.NON_SPACING_MARK);
  }
}
