package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;

/**
 * A tala: a name and its angas in order.
 *
 * @param name the name in plain romanisation, or the formula where there is no name
 * @param angas at least one, at most {@value #MOST_ANGAS}
 */
public record Tala(String name, List<Anga> angas) {

  /** The most angas a tala may have. */
  public static final int MOST_ANGAS = 32;

  /** The longest group of a free grouping, in aksharas. */
  public static final int LONGEST_GROUP = 32;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there are no angas, or too many
   */
  public Tala {
    angas = List.copyOf(angas);
    if (angas.isEmpty() || angas.size() > MOST_ANGAS) {
      throw new IllegalArgumentException(
          "a tala has 1 to " + MOST_ANGAS + " angas, given " + angas.size());
    }
  }

  /**
   * The length of one avartana in one kalai.
   *
   * @return aksharas
   */
  public int aksharas() {
    int sum = 0;
    for (Anga anga : angas) {
      sum += anga.aksharas();
    }
    return sum;
  }

  /**
   * The gestures of one avartana in one kalai.
   *
   * @param custom which finger follows the thumb
   * @return one kriya an akshara
   */
  public List<Kriya> kriyas(FingerCustom custom) {
    List<Kriya> kriyas = new ArrayList<>();
    for (Anga anga : angas) {
      kriyas.addAll(anga.kriyas(custom));
    }
    return List.copyOf(kriyas);
  }

  /**
   * The angas as signs.
   *
   * @return "I4 O O" for adi, "3+2+2" for a grouping, "clap clap | wave" for kriyas written out
   */
  public String formula() {
    boolean grouping = true;
    boolean own = false;
    List<String> signs = new ArrayList<>();
    for (Anga anga : angas) {
      grouping &= anga instanceof Anga.Group;
      own |= anga instanceof Anga.Own;
      signs.add(anga.sign());
    }
    return String.join(grouping ? "+" : own ? " | " : " ", signs);
  }
}
