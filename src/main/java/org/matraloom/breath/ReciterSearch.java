package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the plan that costs least and uses every place everywhere or nowhere.
 *
 * <p>Dynamic programming finds the cheapest plan that may use a place here and not there; it costs
 * no more than the plan looked for. Where it uses a place in part, the place is taken everywhere,
 * then nowhere, and the search goes on from both, unless even that costs as much as the best plan
 * known. So the answer is the best one, as long as the search ends before {@value #MOST_WORK}
 * steps; after that it is the best that was found.
 */
final class ReciterSearch {

  private static final long MOST_WORK = 6_000_000;
  private static final byte OPEN = 0;
  private static final byte TAKEN = 1;
  private static final byte LEFT = 2;
  private static final int UNREACHED = -1;

  private final StretchGraph graph;
  private final BreathPlaces places;
  private final byte[] choice;
  private final long[] reached;
  private final int[] before;
  private final long[] sum = new long[PackedCost.WIDTH];
  private final long[] best = new long[PackedCost.WIDTH];
  private List<Integer> bestPath = List.of();
  private boolean found;
  private long work;

  ReciterSearch(StretchGraph graph, BreathPlaces places) {
    this.graph = graph;
    this.places = places;
    this.choice = new byte[places.count()];
    this.reached = new long[graph.nodes() * PackedCost.WIDTH];
    this.before = new int[graph.nodes()];
    for (int place = 0; place < choice.length; place++) {
      choice[place] = places.isAsked(place) ? TAKEN : OPEN;
    }
  }

  /** The nodes of the best plan, without the beginning, the end among them. */
  List<Integer> path() {
    search();
    return bestPath;
  }

  PlanCost cost() {
    return PackedCost.unpacked(best, 0, graph.over());
  }

  /** Whether no plan costs less. */
  boolean isProven() {
    return work < MOST_WORK;
  }

  private void search() {
    if (found && !isProven() || !isReached() || found && isNoBetter()) {
      return;
    }
    List<Integer> path = pathBack();
    int[] used = used(path);
    int partly =
        IntStream.range(0, used.length)
            .filter(place -> used[place] > 0 && used[place] < places.members(place))
            .findFirst()
            .orElse(UNREACHED);
    if (partly == UNREACHED) {
      keep(path);
      return;
    }
    roundUp(used);
    byte was = choice[partly];
    choice[partly] = TAKEN;
    search();
    choice[partly] = LEFT;
    search();
    choice[partly] = was;
  }

  /** Takes every place that is used in part everywhere: a plan, if not the best. */
  private void roundUp(int[] used) {
    byte[] were = choice.clone();
    for (int place = 0; place < choice.length; place++) {
      choice[place] = used[place] > 0 ? TAKEN : LEFT;
    }
    if (isReached() && (!found || !isNoBetter())) {
      keep(pathBack());
    }
    System.arraycopy(were, 0, choice, 0, were.length);
  }

  private boolean isNoBetter() {
    return PackedCost.compare(reached, graph.end() * PackedCost.WIDTH, best, 0) >= 0;
  }

  private void keep(List<Integer> path) {
    System.arraycopy(reached, graph.end() * PackedCost.WIDTH, best, 0, PackedCost.WIDTH);
    bestPath = path;
    found = true;
  }

  private int[] used(List<Integer> path) {
    int[] used = new int[places.count()];
    path.stream().filter(node -> node != graph.end()).forEach(n -> used[places.of(n - 1)]++);
    return used;
  }

  private List<Integer> pathBack() {
    List<Integer> path = new ArrayList<>();
    for (int node = graph.end(); node > 0; node = before[node]) {
      path.add(node);
    }
    Collections.reverse(path);
    return path;
  }

  /** Finds the cheapest plan that keeps to the choices made so far, if there is one. */
  private boolean isReached() {
    Arrays.fill(before, UNREACHED);
    before[0] = 0;
    int lastTaken = 0;
    for (int node = 1; node < graph.nodes(); node++) {
      boolean isEnd = node == graph.end();
      byte chosen = isEnd ? TAKEN : choice[places.of(node - 1)];
      if (chosen != LEFT) {
        reach(node, lastTaken);
      }
      lastTaken = chosen == TAKEN ? node : lastTaken;
    }
    return before[graph.end()] != UNREACHED;
  }

  private void reach(int node, int earliest) {
    int to = graph.firstArc(node + 1);
    int at = node * PackedCost.WIDTH;
    for (int arc = graph.firstArc(node); arc < to && graph.from(arc) >= earliest; arc++) {
      int from = graph.from(arc);
      if (before[from] != UNREACHED) {
        graph.extend(arc, node, reached, from * PackedCost.WIDTH, sum);
        if (before[node] == UNREACHED || PackedCost.compare(sum, 0, reached, at) < 0) {
          System.arraycopy(sum, 0, reached, at, PackedCost.WIDTH);
          before[node] = from;
        }
        work++;
      }
    }
  }
}
