package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/** Goes along a given way to pair a take and tells how likely it is, and where it breaks. */
final class PairingWalk {

  private final double[] expected;
  private final double[][] ways;
  private final double[] matraSeconds;
  private final List<Onset> onsets;
  private final PairingPrices prices;

  /**
   * Prepares to go along ways to pair a take.
   *
   * @param ways when each sollu falls, in seconds at the tempo of the score, in each way to say it;
   *     the first is as written
   * @param matraSeconds the length of each sollu's matra at that tempo; 0 if it is not known
   * @param onsets what was heard, in order of time
   */
  PairingWalk(double[][] ways, double[] matraSeconds, List<Onset> onsets) {
    this.ways = ways;
    this.expected = ways[0];
    this.matraSeconds = matraSeconds;
    this.onsets = List.copyOf(onsets);
    prices = new PairingPrices(this.onsets, expected.length);
  }

  /**
   * How likely a given way to pair is, in the terms of {@link ScoreFollower#follow}.
   *
   * @param said the pairs, in order of time
   * @param model what is known of the performer
   * @return the more the likelier
   */
  double worth(List<Alignment.Said> said, PairingModel model) {
    return walk(said, model, new ArrayList<>());
  }

  /**
   * The same without what the sounds themselves say.
   *
   * @param said the pairs, in order of time
   * @param model what is known of the performer
   * @return the more the likelier
   */
  double worthOfTime(List<Alignment.Said> said, PairingModel model) {
    return worth(said, model)
        - said.stream().mapToDouble(each -> model.sollus().gain(each.sollu(), each.onset())).sum();
  }

  /**
   * Where a way to pair is half a matra or more too late or too early.
   *
   * @param said the pairs, in order of time
   * @param model what is known of the performer
   * @return the pairs after it, from 1
   */
  List<Integer> jumps(List<Alignment.Said> said, PairingModel model) {
    List<Integer> jumps = new ArrayList<>();
    walk(said, model, jumps);
    return jumps;
  }

  /**
   * At how many places a way to pair breaks: something missing or left over at an end, half a matra
   * or more too late or too early, back to an entry.
   */
  int breaks(List<Alignment.Said> said, PairingModel model) {
    double matra = matraSeconds[said.get(0).sollu()] * model.stretch();
    int last = said.size() - 1;
    long back =
        IntStream.rangeClosed(1, last)
            .filter(i -> said.get(i).sollu() <= said.get(i - 1).sollu())
            .count();
    return jumps(said, model).size()
        + (int) back
        + (said.get(0).sollu() > PairingPrices.MOST_MISSED_AT_END
            ? 2
            : said.get(0).sollu() > 0 ? 1 : 0)
        + (said.get(last).sollu() < expected.length - 1 ? 1 : 0)
        + (prices.isSureBefore(said.get(0).onset(), matra) ? 1 : 0)
        + (prices.isSureAfter(said.get(last).onset(), onsets.size(), matra) ? 1 : 0);
  }

  /** Whether a way to pair leaves a sure sound between its first and its last without a sollu. */
  boolean leavesSureSounds(List<Alignment.Said> said) {
    Set<Integer> paired = said.stream().map(Alignment.Said::onset).collect(Collectors.toSet());
    return IntStream.range(said.get(0).onset(), said.get(said.size() - 1).onset())
        .filter(j -> !paired.contains(j))
        .anyMatch(j -> onsets.get(j).confidence() >= PairingPrices.SURE_CONFIDENCE);
  }

  /** How long after one sollu another falls, in seconds at the tempo of the score. */
  double apartSeconds(int from, int to) {
    return expected[to] - expected[from];
  }

  private double walk(List<Alignment.Said> said, PairingModel model, List<Integer> jumps) {
    if (said.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    Intervals intervals = new Intervals(ways, matraSeconds, model);
    Alignment.Said first = said.get(0);
    Alignment.Said last = said.get(said.size() - 1);
    double matra = matraSeconds[first.sollu()] * model.stretch();
    double worth =
        -prices.before(first.onset(), matra)
            - Math.min(PairingPrices.ANYWHERE, PairingPrices.missedAtEnd(first.sollu()))
            - prices.after(last.onset(), onsets.size(), expected.length - 1 - last.sollu(), matra);
    double late = 0;
    double rate = 1;
    for (int i = 0; i < said.size(); i++) {
      Alignment.Said here = said.get(i);
      worth += PairingPrices.pair(onsets.get(here.onset()));
      worth += model.sollus().gain(here.sollu(), here.onset());
      if (i == 0) {
        continue;
      }
      Alignment.Said before = said.get(i - 1);
      double took = onsets.get(here.onset()).seconds() - onsets.get(before.onset()).seconds();
      worth -= prices.extra(before.onset(), here.onset());
      if (here.sollu() <= before.sollu()) {
        worth -= PairingPrices.RESTART;
        late = 0;
        continue;
      }
      worth -= PairingPrices.missed(here.sollu() - before.sollu() - 1);
      double stretch = model.stretch() * rate;
      double cost = intervals.cost(before.sollu(), here.sollu(), took + late, stretch);
      worth -= Math.min(cost, Intervals.MOST_COST);
      double asked = (expected[here.sollu()] - expected[before.sollu()]) * stretch;
      late = 0;
      if (intervals.jumped()) {
        jumps.add(i);
      } else if (model.tracks() && asked > 0) {
        late = intervals.lateSeconds();
        rate = TempoFilter.rate(rate, intervals.slowerSeconds() / asked);
      }
      worth -= TempoFilter.strain(rate);
    }
    return worth;
  }
}
