package org.matraloom.notation;

import org.matraloom.score.Anga;
import org.matraloom.score.Tala;

/** How a tala is written so that it is read again. */
final class TalaText {

  private TalaText() {}

  static String written(Tala tala) {
    boolean named = TalaReader.read(tala.name()).tala().filter(tala::equals).isPresent();
    String formula = tala.formula();
    boolean own = tala.angas().stream().anyMatch(Anga.Own.class::isInstance);
    boolean titled = own && !tala.name().equals(formula);
    return named ? tala.name() : titled ? tala.name() + ": " + formula : formula;
  }
}
