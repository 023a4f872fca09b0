package org.matraloom.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Cycles;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/** Random problems: nothing is left out, and everything found lands when it is laid out. */
class FitPropertyTest {

  private static final int PROBLEMS = 2_000;

  /** Of the answers to a problem, so many at most are laid out by the schedule too. */
  private static final int LAID_OUT = 12;

  /**
   * Parts of a beat in which all places and lengths here are whole: of nadais up to 9, in three
   * kalams, and of places in fives.
   */
  private static final long PARTS = 10_080L * 5;

  private static final int[] NADAIS = {1, 2, 3, 4, 5, 6, 7, 8, 9};

  @Test
  void bruteForceFindsTheSameAnswers() {
    Random random = new Random(20_240_808);
    long found = 0;
    int empty = 0;
    for (int i = 0; i < PROBLEMS; i++) {
      FitProblem problem = problem(random);
      FitResult result = FitSearch.search(problem, Integer.MAX_VALUE);
      Set<String> searched =
          result.answers().stream()
              .map(a -> key(a.plan(), a.matras(), a.waitMatras(), a.start(), a.eduppu()))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(result.count(), searched.size(), "no answer twice: " + problem);
      assertEquals(bruteForce(problem), searched, problem::toString);
      int step = 1 + result.answers().size() / LAID_OUT;
      for (int each = 0; each < result.answers().size(); each += step) {
        landsOnTheTimeline(result.answers().get(each));
      }
      found += searched.size();
      empty += searched.isEmpty() ? 1 : 0;
    }
    assertTrue(found > PROBLEMS, "answers were found: " + found);
    assertTrue(empty > PROBLEMS / 50 && empty < PROBLEMS, "some problems had none: " + empty);
  }

  /** The last sollu said and the landing itself, as the schedule lays them out. */
  private static void landsOnTheTimeline(FitAnswer answer) {
    Ratio lastSaid = answer.start();
    Ratio landing = answer.start();
    long sollus = 0;
    for (Event event : ScoreTimeline.of(answer.performance(), 0)) {
      if (event instanceof Event.SolluSaid said) {
        lastSaid = said.beat().plus(said.beats());
        sollus++;
      } else if (event instanceof Event.LandingPoint landed) {
        landing = landed.beat();
      }
    }
    assertEquals((long) answer.matras() * answer.plan().rounds().size(), sollus);
    Ratio cycle = Ratio.of(answer.performance().composition().avartana().beats());
    assertTrue(landing.minus(answer.eduppu()).dividedBy(cycle).isWhole(), answer::toString);
    boolean endsInARound =
        answer.plan().parts().get(answer.plan().parts().size() - 1) instanceof RoundPlan.Part.Round;
    assertTrue(!endsInARound || lastSaid.equals(landing), answer::toString);
  }

  /**
   * Lays every combination out, one round after another, and looks where the last one ends; in
   * whole parts of a beat, without the program's fractions.
   */
  private static Set<String> bruteForce(FitProblem problem) {
    Set<String> landing = new TreeSet<>();
    long cycle = PARTS * problem.avartana().beats();
    for (RoundPlan plan : problem.plans()) {
      WholeRange waits = plan.hasOpenWait() ? problem.waits() : WholeRange.only(0);
      List<Ratio> starts = problem.starts().of(plan, problem.avartana());
      List<Ratio> eduppus = problem.eduppus().of(plan, problem.avartana());
      long[] startParts = starts.stream().mapToLong(FitPropertyTest::parts).toArray();
      long[] eduppuParts = eduppus.stream().mapToLong(FitPropertyTest::parts).toArray();
      for (int matras = problem.matras().low(); matras <= problem.matras().high(); matras++) {
        for (int wait = waits.low(); wait <= waits.high(); wait++) {
          long length = length(plan, matras, wait);
          for (int start = 0; start < startParts.length; start++) {
            long end = startParts[start] + length;
            for (int eduppu = 0; eduppu < eduppuParts.length; eduppu++) {
              if ((end - eduppuParts[eduppu]) % cycle == 0) {
                landing.add(key(plan, matras, wait, starts.get(start), eduppus.get(eduppu)));
              }
            }
          }
        }
      }
    }
    return landing;
  }

  private static long length(RoundPlan plan, int matras, int wait) {
    long length = 0;
    for (RoundPlan.Part part : plan.parts()) {
      if (part instanceof RoundPlan.Part.Round round) {
        length += matras * parts(Ratio.of(1, (long) round.nadai() << (round.kalam() - 1)));
      } else if (part instanceof RoundPlan.Part.Wait known) {
        length += parts(known.beats());
      } else if (part instanceof RoundPlan.Part.OpenWait open) {
        length += wait * parts(Ratio.of(1, open.nadai()));
      }
    }
    return length;
  }

  private static long parts(Ratio beats) {
    assertEquals(0, PARTS * beats.num() % beats.den(), "a whole number of parts: " + beats);
    return PARTS * beats.num() / beats.den();
  }

  private static String key(RoundPlan plan, int matras, int wait, Ratio start, Ratio eduppu) {
    return plan + " " + matras + " " + wait + " " + start + " " + eduppu;
  }

  private static FitProblem problem(Random random) {
    Tala tala = new Tala("free", List.of(new Anga.Group(1 + random.nextInt(14))));
    Avartana avartana = Cycles.of(tala);
    List<RoundPlan> plans = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      RoundPlan plan = plan(random);
      if (!plans.contains(plan)) {
        plans.add(plan);
      }
    }
    int low = 1 + random.nextInt(40);
    WholeRange matras = new WholeRange(low, low + random.nextInt(20));
    WholeRange waits = new WholeRange(random.nextInt(3), 3 + random.nextInt(8));
    return new FitProblem(
        avartana,
        plans,
        matras,
        waits,
        places(random, new AskedPlaces.AnyStart()),
        places(random, new AskedPlaces.AnyLanding()));
  }

  private static AskedPlaces places(Random random, AskedPlaces open) {
    if (random.nextInt(3) == 0) {
      return open;
    }
    int parts = 1 + random.nextInt(5);
    return AskedPlaces.at(Ratio.of(random.nextInt(3 * parts) - parts, parts));
  }

  private static RoundPlan plan(Random random) {
    List<RoundPlan.Part> parts = new ArrayList<>();
    int rounds = 1 + random.nextInt(4);
    for (int round = 0; round < rounds; round++) {
      int nadai = NADAIS[random.nextInt(NADAIS.length)];
      parts.add(new RoundPlan.Part.Round(nadai, 1 + random.nextInt(3)));
      int wait = random.nextInt(6);
      if (wait == 0) {
        parts.add(new RoundPlan.Part.Wait(Ratio.of(random.nextInt(9), 1 + random.nextInt(5))));
      } else if (wait == 1) {
        parts.add(new RoundPlan.Part.OpenWait(nadai));
      }
    }
    return new RoundPlan(parts);
  }
}
