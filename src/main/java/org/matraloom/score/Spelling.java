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
  private static final String RETROFLEX_CAPITAL = "TDN";

  private Spelling() {}

  /**
   * The normal form of a spelling: lower case, long marks written as letters, the dotted retroflex
   * letters kept and every other mark dropped.
   *
   * <p>A long e or o is written plainly, since the short ones hardly occur in sollus, and ee is the
   * everyday spelling of a long i. A capital T, D or N before a small letter is the retroflex one,
   * as in kiTa.
   */
  static String normal(String text) {
    return (isPlain(text) ? text : withoutMarks(text)).replace("ee", "ii");
  }

  private static boolean isPlain(String text) {
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      if ((letter < 'a' || letter > 'z') && RETROFLEX_DOTTED.indexOf(letter) < 0) {
        return false;
      }
    }
    return true;
  }

  private static String withoutMarks(String text) {
    StringBuilder normal = new StringBuilder();
    String small = retroflexSmall(text).toLowerCase(Locale.ROOT);
    String letters = Normalizer.normalize(small, Normalizer.Form.NFD);
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
    return normal.toString();
  }

  private static String retroflexSmall(String text) {
    StringBuilder small = new StringBuilder(text);
    for (int index = 0; index + 1 < text.length(); index++) {
      int capital = RETROFLEX_CAPITAL.indexOf(text.charAt(index));
      if (capital >= 0 && Character.isLowerCase(text.charAt(index + 1))) {
        small.setCharAt(index, RETROFLEX_DOTTED.charAt(capital));
      }
    }
    return small.toString();
  }

  /** Whether a boundary between two letters would cut a consonant such as th in half. */
  static boolean cutsConsonant(char before, char after) {
    return after == 'h' && "tdkgjcbp\u1e6d\u1e0d".indexOf(before) >= 0;
  }

  /** Whether a text consists of letters and their marks alone. */
  static boolean isLetters(String text) {
    for (int index = 0;
        index < text.length();
        index += Character.charCount(text.codePointAt(index))) {
      int letter = text.codePointAt(index);
      if (!Character.isLetter(letter) && Character.getType(letter) != Character.NON_SPACING_MARK) {
        return false;
      }
    }
    return !text.isEmpty();
  }
}
