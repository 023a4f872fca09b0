package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Jati;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.spell.ChapuTala;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Short ways to write pieces for the tests of this package. */
public final class Pieces {

  public static final Lexicon LEXICON = Lexicon.standard();

  private Pieces() {}

  /** A piece of one phrase, each round in the given nadai. */
  public static Composition said(Avartana avartana, Sequence phrase, int... nadais) {
    List<Step> plan = new ArrayList<>();
    for (int nadai : nadais) {
      plan.add(new Step.Say("Song", 1, nadai, 1));
    }
    return of(avartana, Map.of("Song", phrase), plan);
  }

  public static Composition of(Avartana avartana, Map<String, Sequence> phrases, List<Step> plan) {
    return new Composition(
        "", avartana, Tempo.of(80), Ratio.ZERO, Ratio.ZERO, new LinkedHashMap<>(phrases), plan);
  }

  /** Words of four sollus and a rest. */
  public static Sequence words(int matras) {
    List<Element> elements = new ArrayList<>();
    for (int left = matras; left > 0; left -= 4) {
      elements.add(word(Math.min(left, 4)));
    }
    return new Sequence(elements);
  }

  public static Element word(int size) {
    StringBuilder written = new StringBuilder();
    LEXICON.words(size).forEach(sollu -> written.append(sollu.spelling()));
    return new Element.Word(written.toString(), LEXICON.words(size));
  }

  public static Element group(int size, int karvai) {
    return new Element.Group(size, 1, karvai, LEXICON.words(size));
  }

  public static Element held(int size, int hold) {
    return new Element.Group(size, hold, 0, LEXICON.words(size));
  }

  /** All 35 suladi talas and the chapu talas. */
  public static List<Tala> talas() {
    List<Tala> talas = new ArrayList<>();
    for (ChapuTala chapu : ChapuTala.values()) {
      talas.add(chapu.tala());
    }
    for (TalaFamily family : TalaFamily.values()) {
      for (Jati jati : Jati.values()) {
        talas.add(family.tala(jati));
      }
    }
    return talas;
  }
}
