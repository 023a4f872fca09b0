package org.matraloom.spell;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word of a list that was probably meant. */
public final class MeantWord {

  private static final int LONGEST = 40;
  private static final int MOST_TRIED = 1_000;
  private static final int LETTERS_AN_EDIT = 3;

  private MeantWord() {}

  /**
   * The nearest of some words, if one is near enough; the first of equally near ones.
   *
   * @param word what was written; capitals count as small letters
   * @param words what could be meant; the first thousand are tried
   * @return the nearest; empty if none is near or the word is longer than 40 letters
   */
  public static Optional<String> of(String word, Collection<String> words) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (lower.length() > LONGEST) {
      return Optional.empty();
    }
    int allowed = Math.max(1, (lower.length() + 1) / LETTERS_AN_EDIT);
    Optional<String> nearest = Optional.empty();
    int tried = 0;
    for (String candidate : words) {
      if (tried++ == MOST_TRIED) {
        break;
      }
      if (Math.abs(candidate.length() - lower.length()) <= allowed) {
        int edits = edits(lower, candidate.toLowerCase(Locale.ROOT));
        if (edits <= allowed && edits < Math.max(lower.length(), candidate.length())) {
          nearest = Optional.of(candidate);
          allowed = edits - 1;
        }
      }
    }
    return nearest;
  }

  /** How many letters must be changed, added, dropped, or swapped with their neighbour. */
  static int edits(String from, String to) {
    int[][] edits = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        if (i == 0 || j == 0) {
          edits[i][j] = i + j;
          continue;
        }
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int best = edits[i - 1][j - 1] + (same ? 0 : 1);
        best = Math.min(best, Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
        edits[i][j] = swapped ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
      }
    }
    return edits[from.length()][to.length()];
  }
}
