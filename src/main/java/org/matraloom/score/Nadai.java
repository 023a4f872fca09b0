package org.matraloom.score;

/** What a number of matras a beat is called. */
public final class Nadai {

  private Nadai() {}

  /**
   * The name of a nadai.
   *
   * @param matrasPerBeat matras a beat, at least 1
   * @return "khanda" for 5; for a number without a name of its own, the number with "a beat"
   */
  public static String word(int matrasPerBeat) {
    for (Jati jati : Jati.values()) {
      if (jati.aksharas() == matrasPerBeat) {
        return jati.word();
      }
    }
    return matrasPerBeat + " a beat";
  }

  /**
   * The name of a nadai with its number.
   *
   * @param matrasPerBeat matras a beat, at least 1
   * @return "khanda nadai (5)", or "6 a beat"
   */
  public static String inWords(int matrasPerBeat) {
    String word = word(matrasPerBeat);
    return word.startsWith(Integer.toString(matrasPerBeat))
        ? word
        : word + " nadai (" + matrasPerBeat + ")";
  }
}
