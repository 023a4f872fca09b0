package org.matraloom.repair;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/** Repairs that leave every sollu as it is: another start, or another tala. */
final class PlaceRepairs {

  private static final int ON_A_BEAT = 1;
  private static final int ON_A_HALF = 2;
  private static final int ON_A_MATRA = 3;
  private static final int ELSEWHERE = 8;
  private static final int OTHER_TALA = 12;

  private PlaceRepairs() {}

  static void offer(RepairBench bench, List<Tala> talas) {
    Ratio start = bench.landing().startThatLands();
    bench.offer(
        Repair.Kind.START,
        List.of(new Edit.Start(written(start, bench))),
        "start " + startWords(start, bench),
        startCost(start, bench));
    Set<Integer> offered = new HashSet<>(Set.of(bench.composition().avartana().beats()));
    for (Tala tala : talas) {
      offerTala(bench, tala, offered);
    }
  }

  /** A start less than a beat before samam is written as such. */
  static Ratio written(Ratio start, RepairBench bench) {
    Ratio before = start.minus(bench.cycle());
    return before.compareTo(Ratio.of(-1)) > 0 ? before : start;
  }

  static String startWords(Ratio start, RepairBench bench) {
    return "on " + bench.composition().avartana().say(start);
  }

  private static int startCost(Ratio start, RepairBench bench) {
    if (start.isWhole()) {
      return ON_A_BEAT;
    } else if (start.times(2).isWhole()) {
      return ON_A_HALF;
    }
    return start.times(firstMatrasPerBeat(bench)).isWhole() ? ON_A_MATRA : ELSEWHERE;
  }

  private static int firstMatrasPerBeat(RepairBench bench) {
    return bench.performance().rounds().get(0).matrasPerBeat();
  }

  private static void offerTala(RepairBench bench, Tala tala, Set<Integer> offered) {
    Composition composition = bench.composition();
    Avartana now = composition.avartana();
    int beats = tala.aksharas() * now.kalai();
    if (offered.contains(beats) || !hasRoom(composition, beats)) {
      return;
    }
    String words = "set it in " + tala.name() + " (" + beats + " beats), where it lands as it is";
    int cost = OTHER_TALA + Math.abs(beats - now.beats());
    if (bench.offer(Repair.Kind.TALA, List.of(new Edit.InTala(tala)), words, cost)) {
      offered.add(beats);
    }
  }

  /** The place of the tala that a line of the plan names. */
  private static Optional<Ratio> placeIn(Step step) {
    if (step instanceof Step.Until until) {
      return Optional.of(until.place());
    }
    return step instanceof Step.Stands stands ? Optional.of(stands.place()) : Optional.empty();
  }

  /** Whether a cycle of so many beats has all the places that the piece names. */
  private static boolean hasRoom(Composition composition, int beats) {
    return Stream.concat(
            Stream.of(composition.startBeat(), composition.eduppuBeat()),
            composition.plan().stream().flatMap(step -> placeIn(step).stream()))
        .allMatch(
            place -> place.compareTo(Ratio.of(beats)) < 0 && place.compareTo(Ratio.of(-beats)) > 0);
  }
}
