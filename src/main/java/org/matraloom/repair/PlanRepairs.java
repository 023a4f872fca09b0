package org.matraloom.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Jati;
import org.matraloom.score.Nadai;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/** Repairs of the perform plan: waits, karvais between rounds, another last round. */
final class PlanRepairs {

  private static final int MOST_WAIT_PLACES = 6;
  private static final int MOST_ROUNDS_WITH_KARVAI = 16;
  private static final int LONGEST_KARVAI = 48;
  private static final int WAIT = 2;
  private static final int NO_MATRA = 6;
  private static final int BETWEEN = 3;
  private static final int OTHER_NADAI = 8;
  private static final int OTHER_KALAM = 10;
  private static final int ALONE = 40;

  private PlanRepairs() {}

  static void offer(RepairBench bench) {
    List<Step> plan = bench.composition().plan();
    offerWaits(bench);
    for (int i = 0; i < plan.size(); i++) {
      if (plan.get(i) instanceof Step.RestBeats || plan.get(i) instanceof Step.RestMatras) {
        offerOtherWait(bench, i);
      }
    }
    if (plan.stream().allMatch(Step.Say.class::isInstance)) {
      offerKarvaiBetween(bench);
    }
    offerLastRound(bench);
  }

  private static void offerWaits(RepairBench bench) {
    List<Span.Round> rounds = bench.performance().rounds();
    Ratio wait = bench.missing();
    for (int index : waitPlaces(rounds)) {
      Span.Round round = rounds.get(index);
      boolean changes = round.matrasPerBeat() != rounds.get(index - 1).matrasPerBeat();
      Step rest = rest(wait, round.nadai(), rounds.get(index - 1).nadai());
      Avartana avartana = bench.composition().avartana();
      Ratio begins = round.startBeat().plus(wait);
      bench.offer(
          Repair.Kind.WAIT,
          List.of(
              new Edit.Plan(PlanSurgery.before(bench.composition().plan(), round.number(), rest))),
          "rest "
              + words(rest)
              + " before round "
              + round.number()
              + ", which then begins on "
              + avartana.say(begins),
          WAIT
              + RepairBench.rounded(wait)
              + (changes ? 0 : 1)
              + (index == rounds.size() - 1 ? 0 : 1)
              + (wait.times(rest instanceof Step.RestMatras m ? m.nadai() : 1).isWhole()
                  ? 0
                  : NO_MATRA));
    }
  }

  /**
   * Indices of rounds worth waiting for: where the nadai changes, the last one, then the first
   * ones.
   */
  private static Set<Integer> waitPlaces(List<Span.Round> rounds) {
    Set<Integer> places = new TreeSet<>();
    for (int i = 1; i < rounds.size() && places.size() < MOST_WAIT_PLACES; i++) {
      if (rounds.get(i).matrasPerBeat() != rounds.get(i - 1).matrasPerBeat()) {
        places.add(i);
      }
    }
    if (rounds.size() > 1) {
      places.add(rounds.size() - 1);
    }
    for (int i = 1; i < rounds.size() && places.size() < MOST_WAIT_PLACES; i++) {
      places.add(i);
    }
    return places;
  }

  private static Step rest(Ratio beats, int nadai, int nadaiBefore) {
    if (beats.isWhole()) {
      return new Step.RestBeats(beats);
    }
    for (int unit : new int[] {nadai, nadaiBefore}) {
      if (beats.times(unit).isWhole()) {
        return new Step.RestMatras((int) beats.times(unit).num(), unit);
      }
    }
    return new Step.RestBeats(beats);
  }

  private static String words(Step rest) {
    if (rest instanceof Step.RestMatras matras) {
      Ratio beats = Ratio.of(matras.matras(), matras.nadai());
      return LengthWords.matras(Ratio.of(matras.matras()))
          + " of "
          + Nadai.inWords(matras.nadai())
          + ", that is "
          + LengthWords.beats(beats)
          + ",";
    }
    return LengthWords.beats(((Step.RestBeats) rest).beats());
  }

  private static void offerOtherWait(RepairBench bench, int index) {
    Step old = bench.composition().plan().get(index);
    int nadai = old instanceof Step.RestMatras rest ? rest.nadai() : 1;
    Ratio beats =
        old instanceof Step.RestMatras rest
            ? Ratio.of(rest.matras(), rest.nadai())
            : ((Step.RestBeats) old).beats();
    for (Ratio change : List.of(bench.missing(), bench.missing().minus(bench.cycle()))) {
      Ratio changed = beats.plus(change);
      if (changed.signum() < 0) {
        continue;
      }
      List<Step> plan = new ArrayList<>(bench.composition().plan());
      plan.remove(index);
      String words = "leave out the rest of " + words(old);
      if (changed.signum() > 0) {
        Step rest = rest(changed, nadai, nadai);
        plan.add(index, rest);
        words = "make the rest of " + words(old) + " " + words(rest) + " instead";
      }
      bench.offer(
          Repair.Kind.OTHER_WAIT,
          List.of(new Edit.Plan(plan)),
          words,
          1 + RepairBench.rounded(change));
    }
  }

  private static void offerKarvaiBetween(RepairBench bench) {
    List<Span.Round> rounds = bench.performance().rounds();
    if (rounds.size() < 3 || rounds.size() > MOST_ROUNDS_WITH_KARVAI) {
      return;
    }
    Ratio perMatra = Ratio.ZERO;
    for (Span.Round round : rounds.subList(0, rounds.size() - 1)) {
      perMatra = perMatra.plus(Ratio.of(1, round.nadai()));
    }
    for (int matras = 1; matras <= LONGEST_KARVAI; matras++) {
      if (bench.landsMovedBy(perMatra.times(matras))) {
        List<Step> plan = PlanSurgery.withKarvaiBetween(bench.composition().plan(), matras);
        bench.offer(
            Repair.Kind.BETWEEN,
            List.of(new Edit.Plan(plan)),
            "rest " + LengthWords.matras(Ratio.of(matras)) + " between the rounds",
            BETWEEN + RepairBench.rounded(perMatra.times(matras)));
        return;
      }
    }
  }

  private static void offerLastRound(RepairBench bench) {
    List<Step> plan = bench.composition().plan();
    List<Span.Round> rounds = bench.performance().rounds();
    Span.Round last = rounds.get(rounds.size() - 1);
    for (Jati jati : Jati.values()) {
      for (int kalam = 1; kalam <= Composition.HIGHEST_KALAM; kalam++) {
        int nadai = jati.aksharas();
        if (nadai == last.nadai() && kalam == last.kalam()) {
          continue;
        }
        bench.offer(
            Repair.Kind.LAST_ROUND,
            List.of(new Edit.Plan(PlanSurgery.withLastRound(plan, nadai, kalam))),
            "say "
                + (rounds.size() == 1 ? "it" : "the last round")
                + " in "
                + Nadai.inWords(nadai)
                + (kalam == last.kalam() ? "" : ", kalam " + kalam),
            (kalam == last.kalam() ? OTHER_NADAI : OTHER_KALAM) + Math.abs(nadai - last.nadai()));
      }
    }
    if (rounds.size() > 1) {
      Ratio start = bench.composition().eduppuBeat().minus(last.beats()).modulo(bench.cycle());
      bench.offer(
          Repair.Kind.LAST_ALONE,
          List.of(
              new Edit.Plan(PlanSurgery.lastRound(plan)),
              new Edit.Start(PlaceRepairs.written(start, bench))),
          "say the last round alone, starting on " + bench.composition().avartana().say(start),
          ALONE);
    }
  }
}
