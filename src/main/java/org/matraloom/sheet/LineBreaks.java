package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/**
 * Where an avartana that is too wide for the page goes on in the next line.
 *
 * <p>The choice that costs least is found: a further line costs something, a line that ends inside
 * an anga costs more, one that tears a pair of aksharas apart (a laghu of four in 3 and 1) so much
 * that it is done only where nothing else fits, one inside an akshara of several beats yet more,
 * and of equal choices the one with the shortest longest line is taken.
 *
 * @param starts the beats of the cycle with which lines begin, ascending, the first 0
 * @param longest beats of the longest line
 */
record LineBreaks(List<Integer> starts, int longest) {

  private static final int LINE_COST = 100;
  private static final int SPLIT_ANGA_COST = 120;
  private static final int TORN_ANGA_COST = 400;
  private static final int TORN_AKSHARA_COST = 700;
  private static final int MIXED_COST = 30;
  private static final int UNREACHED = Integer.MAX_VALUE;

  LineBreaks {
    starts = List.copyOf(starts);
  }

  /** Whether a line of beats has room on a page. */
  @FunctionalInterface
  interface Room {
    /**
     * Asks for one line.
     *
     * @param from its first beat in the cycle
     * @param to the beat after its last
     */
    boolean holds(int from, int to);
  }

  /**
   * Breaks a cycle whose beats are all alike.
   *
   * @param avartana the cycle
   * @param mostBeats how many beats fit a line, at least 1
   */
  static LineBreaks of(Avartana avartana, int mostBeats) {
    return of(avartana, (from, to) -> to - from <= mostBeats);
  }

  /**
   * Breaks a cycle whose beats take different room; a beat alone is always a line.
   *
   * @param avartana the cycle
   * @param room which lines fit
   */
  static LineBreaks of(Avartana avartana, Room room) {
    int beats = avartana.beats();
    int cheapest = cost(avartana, beats, room);
    int least = 1;
    while (least < beats && cost(avartana, least, room) > cheapest) {
      least++;
    }
    return solve(avartana, least, room);
  }

  private static int cost(Avartana avartana, int mostBeats, Room room) {
    return costs(avartana, mostBeats, room, new int[avartana.beats() + 1])[avartana.beats()];
  }

  private static LineBreaks solve(Avartana avartana, int mostBeats, Room room) {
    int beats = avartana.beats();
    int[] from = new int[beats + 1];
    costs(avartana, mostBeats, room, from);
    List<Integer> starts = new ArrayList<>();
    for (int at = beats; at > 0; at = from[at]) {
      starts.add(from[at]);
    }
    Collections.reverse(starts);
    return new LineBreaks(starts, mostBeats);
  }

  private static int[] costs(Avartana avartana, int mostBeats, Room room, int[] from) {
    int beats = avartana.beats();
    Set<Integer> angas = new HashSet<>(avartana.angaStarts());
    int[] best = new int[beats + 1];
    Arrays.fill(best, UNREACHED);
    best[0] = 0;
    for (int at = 1; at <= beats; at++) {
      int ending = at == beats || angas.contains(at) ? 0 : splitCost(avartana, at);
      for (int start = Math.max(0, at - mostBeats); start < at; start++) {
        int cost = best[start] + LINE_COST + ending + (mixes(avartana, start, at) ? MIXED_COST : 0);
        if (cost <= best[at] && (start == at - 1 || room.holds(start, at))) {
          best[at] = cost;
          from[at] = start;
        }
      }
    }
    return best;
  }

  /** Whether a line begins inside an anga and goes on into the next. */
  private static boolean mixes(Avartana avartana, int from, int to) {
    List<Integer> starts = avartana.angaStarts();
    return !starts.contains(from) && starts.stream().anyMatch(start -> start > from && start < to);
  }

  /**
   * What a line costs that ends inside an anga: little between pairs of aksharas, or where an odd
   * anga has two or more on each side; much elsewhere. In two kalai an akshara is two beats.
   */
  private static int splitCost(Avartana avartana, int at) {
    List<Integer> starts = avartana.angaStarts();
    int from = starts.stream().filter(start -> start < at).reduce(0, Math::max);
    int to = starts.stream().filter(start -> start > at).findFirst().orElse(avartana.beats());
    int kalai = avartana.kalai();
    if ((at - from) % kalai != 0) {
      return TORN_AKSHARA_COST;
    }
    int before = (at - from) / kalai;
    int after = (to - at) / kalai;
    boolean even = before % 2 == 0 && after % 2 == 0;
    boolean odd = (before + after) % 2 != 0 && before >= 2 && after >= 2;
    return even || odd ? SPLIT_ANGA_COST : TORN_ANGA_COST;
  }

  /** Cuts a row into its lines: at the breaks of its cycle, or for a phrase wherever it is full. */
  List<List<Cell>> lines(Row row, Avartana avartana) {
    int cycle = avartana.goingOnAt(row.startBeat()).beats();
    boolean wholeCycle = row.cells().size() == cycle && row.cells().get(0).beginsCycle();
    List<List<Cell>> lines = new ArrayList<>();
    List<Cell> line = new ArrayList<>();
    for (Cell cell : row.cells()) {
      int place = (int) avartana.placeOf(Ratio.of(cell.beat())).floor();
      boolean full = wholeCycle ? starts.contains(place) : line.size() == longest;
      if (full && !line.isEmpty()) {
        lines.add(List.copyOf(line));
        line.clear();
      }
      line.add(cell);
    }
    lines.add(List.copyOf(line));
    return lines;
  }
}
