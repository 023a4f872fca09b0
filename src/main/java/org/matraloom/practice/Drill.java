package org.matraloom.practice;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Puts the parts of a drill together. */
final class Drill {

  private Drill() {}

  /** A drill whose eduppu is where it ends, so that it lands. */
  static Composition of(
      String title,
      Avartana avartana,
      Tempo tempo,
      Ratio startBeat,
      Map<String, Sequence> phrases,
      List<Step> plan) {
    Composition open =
        new Composition(title, avartana, tempo, startBeat, Ratio.ZERO, phrases, plan);
    Ratio end = avartana.placeOf(Performance.of(open).endBeat());
    return new Composition(title, avartana, tempo, startBeat, end, said(phrases, plan), plan);
  }

  /** The phrases that the plan says, themselves or inside others. */
  private static Map<String, Sequence> said(Map<String, Sequence> phrases, List<Step> plan) {
    Set<String> names = new LinkedHashSet<>();
    for (Step step : plan) {
      if (step instanceof Step.Say say) {
        add(say.phrase(), phrases, names);
      }
    }
    Map<String, Sequence> said = new LinkedHashMap<>(phrases);
    said.keySet().retainAll(names);
    return said;
  }

  private static void add(String name, Map<String, Sequence> phrases, Set<String> names) {
    if (names.add(name)) {
      phrases.get(name).phrasesNamed().forEach(inside -> add(inside, phrases, names));
    }
  }

  static int requireRange(String what, int given, int least, int most) {
    if (given < least || given > most) {
      throw new IllegalArgumentException(
          what + " is " + least + " to " + most + ", given " + given);
    }
    return given;
  }
}
