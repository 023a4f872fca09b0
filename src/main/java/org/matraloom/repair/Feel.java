package org.matraloom.repair;

import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.kanakku.Entrance;
import org.matraloom.score.Performance;

/**
 * How a piece that lands is felt against the claps: what can be counted on paper is not always
 * said.
 *
 * @param words what is hard, each after a semicolon; empty if nothing is
 * @param cost what it adds to the cost of a repair, so that what is said easily comes first
 */
record Feel(String words, int cost) {

  private static final int CHANGE_OFF_SAMAM = 1;
  private static final int CHANGE_INSIDE_A_BEAT = 12;
  private static final int NEVER_MEETS_A_CLAP = 1_000;

  static Feel of(Performance performance) {
    List<Entrance> entrances = Entrance.of(performance);
    List<Entrance> never = entrances.stream().filter(e -> !e.meetsClaps()).toList();
    List<Entrance> changes =
        entrances.stream().filter(e -> e.meetsClaps() && e.changesNadai()).toList();
    List<Entrance> inside = changes.stream().filter(Entrance::insideBeat).toList();
    long offSamam = changes.stream().filter(Entrance::insideAvartana).count();
    String hard = inside.isEmpty() ? "" : "; hard: the nadai changes inside a beat";
    String hardly =
        never.isEmpty() ? "" : "; hardly playable: no matra of " + rounds(never) + " meets a clap";
    return new Feel(
        hard + hardly,
        never.size() * NEVER_MEETS_A_CLAP
            + inside.size() * CHANGE_INSIDE_A_BEAT
            + (int) offSamam * CHANGE_OFF_SAMAM);
  }

  private static String rounds(List<Entrance> entrances) {
    List<String> numbers =
        entrances.stream().map(e -> Integer.toString(e.round().number())).toList();
    if (numbers.size() == 1) {
      return "round " + numbers.get(0);
    }
    int last = numbers.size() - 1;
    return numbers.size() > 4
        ? numbers.size() + " rounds"
        : numbers.subList(0, last).stream().collect(Collectors.joining(", ", "rounds ", ""))
            + " and "
            + numbers.get(last);
  }
}
