package org.matraloom.kanakku;

import java.util.List;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Tala;
import org.matraloom.spell.ChapuTala;
import org.matraloom.spell.TalaFamily;

/** The cycles that the tests of this package use. */
public final class Cycles {

  public static final Avartana ADI = of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA));
  public static final Avartana RUPAKA = of(TalaFamily.RUPAKA.tala(Jati.CHATUSRA));
  public static final Avartana MISRA_CHAPU = of(ChapuTala.MISRA.tala());
  public static final Avartana KHANDA_CHAPU = of(ChapuTala.KHANDA.tala());
  public static final Avartana THREE = of(new Tala("3", List.of(new Anga.Group(3))));

  private Cycles() {}

  public static Avartana of(Tala tala) {
    return Avartana.of(tala, 1, FingerCustom.RESTART);
  }
}
