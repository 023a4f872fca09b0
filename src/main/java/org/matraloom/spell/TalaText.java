package org.matraloom.spell;

import org.matraloom.score.Anga;
import org.matraloom.score.Tala;

/** How a tala is written so that it is read again. */
public final class TalaText {

  private TalaText() {}

  /**
   * Writes a tala.
   *
   * @param tala any tala
   * @return its name where that is read as this tala, otherwise its formula, after its own name if
   *     it has one
   */
  public static String written(Tala tala) {
    boolean named = TalaReader.read(tala.name()).tala().filter(tala::equals).isPresent();
    String formula = tala.formula();
    boolean own = tala.angas().stream().anyMatch(Anga.Own.class::isInstance);
    boolean titled = own && !tala.name().equals(formula);
    return named ? tala.name() : titled ? tala.name() + ": " + formula : formula;
  }
}
