package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/**
 * The table of the rounds of a score: words to the left of their columns, sums to the right.
 *
 * <p>Its columns are filled up by hand: the formats of the library look up the signs of a locale
 * first, a tenth of a check.
 */
final class RoundTable {

  private static final int NUMBER = 6;
  private static final int LEAST = 12;
  private static final int SUM = 8;
  private static final int WORDS = 3;
  private static final List<String> HEAD =
      List.of("round", "phrase", "nadai", "begins on", "matras", "beats");

  private final List<List<String>> rows = new ArrayList<>();
  private final int[] widths = {NUMBER, LEAST, LEAST, LEAST, SUM, SUM};

  /** Takes a row: number, phrase, nadai, place, matras, beats. */
  void add(List<String> row) {
    rows.add(row);
    for (int column = 1; column <= WORDS; column++) {
      widths[column] = Math.max(widths[column], row.get(column).length());
    }
  }

  void printHead(PrintWriter out) {
    out.println(line(HEAD));
  }

  /** Prints a row, from 0. */
  void print(int row, PrintWriter out) {
    out.println(line(rows.get(row)));
  }

  private String line(List<String> row) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < widths.length; column++) {
      String word = row.get(column);
      String spaces = " ".repeat(Math.max(0, widths[column] - word.length()));
      line.append(column == 0 ? "" : " ");
      line.append(column <= WORDS ? word + spaces : spaces + word);
    }
    return line.toString();
  }
}
