package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds every threefold ending that fills a number of matras.
 *
 * <p>Structure of the form: three statements and two gaps (Reina, Applying Karnatic Rhythmical
 * Techniques, Routledge 2016). A form with equal parts exists for every length from 3 on, except 4
 * (derived: 3S + 2G with S at least 1).
 */
public final class Endings {

  /** The longest ending that is searched, in matras. */
  public static final int LONGEST = 1_000;

  private Endings() {}

  /**
   * Equal statements and equal karvais, S(G)S(G)S.
   *
   * @param matras the length to fill, at most {@value #LONGEST}
   * @return every such ending, the longest statement first
   * @throws IllegalArgumentException if the length is out of range
   */
  public static List<Ending> equal(int matras) {
    check(matras);
    return equal(matras, 0);
  }

  /**
   * Every ending: equal, with unequal karvais, with statements that grow or shrink, and with one
   * matra borrowed from what comes before or given back to it.
   *
   * @param matras the length to fill, at most {@value #LONGEST}
   * @return the endings, form by form, the longest statement first
   * @throws IllegalArgumentException if the length is out of range
   */
  public static List<Ending> all(int matras) {
    List<Ending> endings = new ArrayList<>(equal(matras));
    for (int statement = (matras - 1) / 3; statement >= 1; statement--) {
      int left = matras - 3 * statement;
      for (int first = 0; first <= left; first++) {
        int second = left - first;
        if (first != second) {
          Ending.Form form =
              first < second ? Ending.Form.GROWING_KARVAI : Ending.Form.SHRINKING_KARVAI;
          endings.add(ending(form, statement, 0, first, second, 0));
        }
      }
    }
    for (int middle = matras / 3; middle >= 2; middle--) {
      int left = matras - 3 * middle;
      for (int step = 1; step < middle && left % 2 == 0; step++) {
        int karvai = left / 2;
        endings.add(ending(Ending.Form.GROWING, middle, step, karvai, karvai, 0));
        endings.add(ending(Ending.Form.SHRINKING, middle, -step, karvai, karvai, 0));
      }
    }
    endings.addAll(equal(matras + 1, 1));
    endings.addAll(equal(matras - 1, -1));
    return List.copyOf(endings);
  }

  private static List<Ending> equal(int matras, int borrowed) {
    List<Ending> endings = new ArrayList<>();
    for (int statement = matras / 3; statement >= 1; statement--) {
      int left = matras - 3 * statement;
      if (left % 2 == 0) {
        endings.add(ending(Ending.Form.EQUAL, statement, 0, left / 2, left / 2, borrowed));
      }
    }
    return List.copyOf(endings);
  }

  private static Ending ending(
      Ending.Form form, int middle, int step, int first, int second, int borrowed) {
    return new Ending(
        form, List.of(middle - step, middle, middle + step), List.of(first, second), borrowed);
  }

  private static void check(int matras) {
    if (matras < 0 || matras > LONGEST) {
      throw new IllegalArgumentException(
          "an ending has 0 to " + LONGEST + " matras, given " + matras);
    }
  }
}
