package org.matraloom.score;

/**
 * The five jatis: how many aksharas a laghu has.
 *
 * <p>Source: "The scheme of 35 talas", carnaticmusicexams.in, 2018.
 */
public enum Jati {
  /** Three. */
  TISRA(3, "tisra"),
  /** Four. */
  CHATUSRA(4, "chatusra"),
  /** Five. */
  KHANDA(5, "khanda"),
  /** Seven. */
  MISRA(7, "misra"),
  /** Nine. */
  SANKIRNA(9, "sankirna");

  private final int aksharas;
  private final String word;

  Jati(int aksharas, String word) {
    this.aksharas = aksharas;
    this.word = word;
  }

  /**
   * The length of a laghu of this jati.
   *
   * @return 3, 4, 5, 7 or 9 aksharas
   */
  public int aksharas() {
    return aksharas;
  }

  /**
   * The name in plain romanisation.
   *
   * @return for example "khanda"
   */
  public String word() {
    return word;
  }
}
