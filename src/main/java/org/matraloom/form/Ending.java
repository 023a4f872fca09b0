package org.matraloom.form;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A threefold ending: three statements with a karvai after the first and after the second.
 *
 * <p>The figures are lengths in matras; after the third statement comes the landing, so no karvai
 * is counted there.
 *
 * @param form how statements and karvais go together
 * @param statements the three statements, each at least 1
 * @param karvais the two karvais between them, not negative
 * @param borrowed matras taken over from what comes before the ending: 1, -1 (one given back) or 0
 */
public record Ending(Form form, List<Integer> statements, List<Integer> karvais, int borrowed) {

  /** How the parts of an ending go together. */
  public enum Form {
    /** Equal statements, equal karvais. */
    EQUAL("equal"),
    /** Equal statements, the second karvai longer. */
    GROWING_KARVAI("growing karvai"),
    /** Equal statements, the second karvai shorter. */
    SHRINKING_KARVAI("shrinking karvai"),
    /** Each statement longer than the one before by the same amount, equal karvais. */
    GROWING("growing statements"),
    /** Each statement shorter than the one before by the same amount, equal karvais. */
    SHRINKING("shrinking statements");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    /**
     * The form in words.
     *
     * @return for example "growing statements"
     */
    public String words() {
      return words;
    }
  }

  /** Copies the lists. */
  public Ending {
    statements = List.copyOf(statements);
    karvais = List.copyOf(karvais);
  }

  /**
   * The length up to the landing.
   *
   * @return matras
   */
  public int matras() {
    return IntStream.concat(ints(statements), ints(karvais)).sum();
  }

  /**
   * The longer karvai, which decides whether there is time to breathe in at all.
   *
   * @return matras, 0 or more
   */
  public int longestKarvai() {
    return ints(karvais).max().orElse(0);
  }

  /**
   * The shorter karvai.
   *
   * @return matras, 0 or more
   */
  public int shortestKarvai() {
    return ints(karvais).min().orElse(0);
  }

  /**
   * The longest statement.
   *
   * @return matras, at least 1
   */
  public int longestStatement() {
    return ints(statements).max().orElse(0);
  }

  /**
   * Writes the ending as drummers do.
   *
   * @return for example "9(1)9(1)9"; a karvai of 0 is written where the other one is not 0, and
   *     three statements without karvai as "10 10 10"
   */
  public String written() {
    if (longestKarvai() == 0) {
      return statements.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < statements.size(); i++) {
      text.append(statements.get(i));
      if (i < karvais.size()) {
        text.append('(').append(karvais.get(i)).append(')');
      }
    }
    return text.toString();
  }

  private static IntStream ints(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue);
  }
}
