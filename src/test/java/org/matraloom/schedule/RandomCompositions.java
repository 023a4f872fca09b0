package org.matraloom.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Length;
import org.matraloom.score.RandomPhrases;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Makes compositions in any suladi tala, with rounds, rests and waits, from a fixed seed. */
final class RandomCompositions {

  private static final Ratio LONGEST_ROUND = Ratio.of(200);

  private RandomCompositions() {}

  static List<Composition> some(int count) {
    List<Composition> compositions = new ArrayList<>();
    for (long seed = 0; compositions.size() < count; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      List<String> usable =
          phrases.keySet().stream().filter(name -> isUsable(phrases.get(name), phrases)).toList();
      if (!usable.isEmpty()) {
        compositions.add(one(new SplittableRandom(seed), phrases, usable));
      }
    }
    return compositions;
  }

  private static boolean isUsable(Sequence phrase, Map<String, Sequence> phrases) {
    Length length = Length.of(phrase, phrases);
    return length.sollus() > 0 && length.beats(1, 1).compareTo(LONGEST_ROUND) < 0;
  }

  private static Composition one(
      SplittableRandom random, Map<String, Sequence> phrases, List<String> usable) {
    TalaFamily family = TalaFamily.values()[random.nextInt(TalaFamily.values().length)];
    Jati jati = Jati.values()[random.nextInt(Jati.values().length)];
    Avartana avartana =
        Avartana.of(family.tala(jati), 1 << random.nextInt(2), FingerCustom.RESTART);
    List<Step> plan = new ArrayList<>();
    int steps = random.nextInt(1, 5);
    for (int step = 0; step < steps; step++) {
      plan.add(say(random, usable));
      if (random.nextInt(3) == 0) {
        plan.add(silence(random));
      }
    }
    return new Composition(
        "",
        avartana,
        Tempo.of(random.nextInt(40, 200)),
        new Ratio(random.nextInt(-1, avartana.beats() * 4), 4),
        Ratio.ZERO,
        phrases,
        plan);
  }

  private static Step say(SplittableRandom random, List<String> usable) {
    String phrase = usable.get(random.nextInt(usable.size()));
    return new Step.Say(phrase, random.nextInt(1, 4), random.nextInt(3, 10), random.nextInt(1, 4));
  }

  private static Step silence(SplittableRandom random) {
    return switch (random.nextInt(3)) {
      case 0 -> new Step.RestBeats(new Ratio(random.nextInt(0, 9), 2));
      case 1 -> new Step.RestMatras(random.nextInt(1, 20), random.nextInt(3, 10));
      default -> new Step.Until(Ratio.of(random.nextInt(0, 3)));
    };
  }
}
