package org.matraloom.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.matraloom.time.Ratio;

/**
 * A plan counted in the smallest part of a beat that measures all its terms, so that lengths and
 * places are whole numbers.
 */
final class CountedPlan {

  /** Who starts or lands on a half beat is out by one of these, on another matra by two. */
  private static final int HALF_BEAT = 1;

  private static final int INSIDE_A_BEAT = 2;
  private static final int CHANGE_ON_A_BEAT = 1;
  private static final int CHANGE_ON_A_HALF = 3;
  private static final int CHANGE_ON_A_MATRA = 4;

  /** From this grade on something can be counted on paper and hardly be said. */
  static final int HARDLY_PLAYABLE = 1_000;

  /**
   * A part of the plan: its fixed length, and by how much a matra of phrase or wait lengthens it.
   */
  private record Part(long fixed, long perMatra, long perWaitMatra, int matrasPerBeat) {}

  private final RoundPlan plan;
  private final List<Ratio> starts;
  private final Map<Long, Ratio> startAt = new HashMap<>();
  private final List<Ratio> eduppus;
  private final Map<Long, Ratio> eduppuAt = new HashMap<>();
  private final long beat;
  private final long cycle;
  private final Part[] parts;

  CountedPlan(RoundPlan plan, FitProblem problem) {
    this.plan = plan;
    this.starts = problem.starts().of(plan, problem.avartana());
    this.eduppus = problem.eduppus().of(plan, problem.avartana());
    LongStream places =
        LongStream.concat(
            starts.stream().mapToLong(Ratio::den), eduppus.stream().mapToLong(Ratio::den));
    this.beat =
        LongStream.concat(plan.parts().stream().mapToLong(CountedPlan::divisions), places)
            .reduce(1, CountedPlan::leastCommonMultiple);
    this.cycle = Math.multiplyExact(beat, problem.avartana().beats());
    starts.forEach(start -> startAt.putIfAbsent(place(start), start));
    eduppus.forEach(eduppu -> eduppuAt.putIfAbsent(place(eduppu), eduppu));
    this.parts = plan.parts().stream().map(this::counted).toArray(Part[]::new);
  }

  RoundPlan plan() {
    return plan;
  }

  /** Every pair of start and eduppu between which so many matras and so long a wait fit. */
  void forEachLanding(int matras, int wait, LandingFound found) {
    long length = 0;
    for (Part part : parts) {
      length += part.fixed() + matras * part.perMatra() + wait * part.perWaitMatra();
    }
    if (startAt.size() <= eduppuAt.size()) {
      for (Ratio start : starts) {
        Ratio eduppu = eduppuAt.get(Math.floorMod(place(start) + length, cycle));
        if (eduppu != null) {
          found.at(start, eduppu);
        }
      }
    } else {
      for (Ratio eduppu : eduppus) {
        Ratio start = startAt.get(Math.floorMod(place(eduppu) - length, cycle));
        if (start != null) {
          found.at(start, eduppu);
        }
      }
    }
  }

  /** Hears of a pair of places. */
  interface LandingFound {
    void at(Ratio start, Ratio eduppu);
  }

  /**
   * How far this is from what a performer would do: 0 for whole beats and changes of nadai on
   * samam, more for half beats, for changes on other beats and inside beats; {@link
   * #HARDLY_PLAYABLE} for every round of which no matra falls together with a clap.
   */
  int grade(int matras, int wait, Ratio start, Ratio eduppu) {
    int grade = offTheBeat(place(start)) + offTheBeat(place(eduppu));
    long now = place(start);
    int before = 0;
    for (Part part : parts) {
      int density = part.matrasPerBeat();
      if (density > 0) {
        long inside = Math.floorMod(now, beat);
        if (inside * density % beat != 0) {
          grade += HARDLY_PLAYABLE;
        } else if (before > 0 && before != density) {
          grade += change(now);
        }
        before = density;
      }
      now += part.fixed() + matras * part.perMatra() + wait * part.perWaitMatra();
    }
    return grade;
  }

  private int offTheBeat(long place) {
    return place % beat == 0 ? 0 : place * 2 % beat == 0 ? HALF_BEAT : INSIDE_A_BEAT;
  }

  private int change(long place) {
    if (place % cycle == 0) {
      return 0;
    } else if (place % beat == 0) {
      return CHANGE_ON_A_BEAT;
    }
    return place * 2 % beat == 0 ? CHANGE_ON_A_HALF : CHANGE_ON_A_MATRA;
  }

  /** Into how many parts a beat must be divided so that lengths of this part are whole. */
  private static long divisions(RoundPlan.Part part) {
    if (part instanceof RoundPlan.Part.Round round) {
      return round.matrasPerBeat();
    }
    return part instanceof RoundPlan.Part.OpenWait open
        ? open.nadai()
        : ((RoundPlan.Part.Wait) part).beats().den();
  }

  private Part counted(RoundPlan.Part part) {
    if (part instanceof RoundPlan.Part.Round round) {
      return new Part(0, beat / round.matrasPerBeat(), 0, round.matrasPerBeat());
    } else if (part instanceof RoundPlan.Part.OpenWait open) {
      return new Part(0, 0, beat / open.nadai(), 0);
    }
    Ratio beats = ((RoundPlan.Part.Wait) part).beats();
    return new Part(inParts(beats), 0, 0, 0);
  }

  private long place(Ratio beats) {
    return Math.floorMod(inParts(beats), cycle);
  }

  private long inParts(Ratio beats) {
    return Math.multiplyExact(beats.num(), beat / beats.den());
  }

  private static long leastCommonMultiple(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return Math.multiplyExact(a / x, b);
  }
}
