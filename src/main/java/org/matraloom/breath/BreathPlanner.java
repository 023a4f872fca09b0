package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Finds the plan that costs least, by dynamic programming over all breaths that could be taken.
 *
 * <p>Where no choice keeps a stretch under the limit, that stretch runs from one stop of the voice
 * to the very next and everything around it is still planned as well as can be.
 */
public final class BreathPlanner {

  private static final long UNREACHED = Long.MAX_VALUE;

  private final Voice voice;
  private final Tempo tempo;
  private final BreathCost cost;
  private final List<Candidate> candidates;
  private final long[] best;
  private final int[] from;

  private BreathPlanner(Voice voice, Tempo tempo, BreathSettings settings) {
    this.voice = voice;
    this.tempo = tempo;
    this.cost = new BreathCost(settings, tempo);
    this.candidates = Candidate.of(voice, tempo, settings);
    this.best = new long[candidates.size() + 2];
    this.from = new int[candidates.size() + 2];
  }

  /**
   * Plans the breaths of a performance at the tempo of its composition.
   *
   * @param performance what is performed
   * @param settings the limits to keep
   * @return the plan that costs least
   */
  public static BreathPlan plan(Performance performance, BreathSettings settings) {
    Tempo tempo = performance.composition().tempo();
    return VoiceReader.read(performance)
        .map(voice -> new BreathPlanner(voice, tempo, settings).solve(performance, settings))
        .orElseGet(() -> new BreathPlan(performance, settings, List.of(), List.of(), 0));
  }

  /** Node 0 is the beginning, node n the candidate n - 1, and the last node is the end. */
  private BreathPlan solve(Performance performance, BreathSettings settings) {
    Arrays.fill(best, UNREACHED);
    best[0] = 0;
    int end = candidates.size() + 1;
    for (int node = 1; node <= end; node++) {
      reach(node);
    }
    List<Integer> path = new ArrayList<>();
    for (int node = end; node > 0; node = from[node]) {
      path.add(node);
    }
    Collections.reverse(path);
    List<Breath> breaths =
        path.stream().filter(node -> node < end).map(node -> candidate(node).breath()).toList();
    List<Stretch> stretches = path.stream().map(node -> stretch(from[node], node)).toList();
    return new BreathPlan(performance, settings, breaths, stretches, best[end]);
  }

  private void reach(int node) {
    int before = node - 1;
    while (before > 0 && stop(before) == stop(node)) {
      before--;
    }
    boolean unavoidable = isTooLong(before, node) && isEarliest(node);
    int neighbour = stop(before);
    while (before >= 0 && (unavoidable ? stop(before) == neighbour : !isTooLong(before, node))) {
      relax(before, node);
      before--;
    }
  }

  private void relax(int before, int node) {
    if (best[before] == UNREACHED) {
      return;
    }
    Optional<Breath> taken =
        before == 0 ? Optional.empty() : Optional.of(candidate(before).breath());
    boolean breathes = node <= candidates.size();
    long points =
        best[before]
            + cost.ofStretch(taken, beats(before, node), sollus(before, node), breathes)
            + (breathes ? cost.ofBreath(candidate(node).breath()) : 0);
    if (points < best[node]) {
      best[node] = points;
      from[node] = before;
    }
  }

  private Candidate candidate(int node) {
    return candidates.get(node - 1);
  }

  private int stop(int node) {
    if (node == 0) {
      return -1;
    }
    return node > candidates.size() ? voice.stops().size() : candidate(node).stop();
  }

  private boolean isEarliest(int node) {
    return node > candidates.size() || candidate(node).earliest();
  }

  private boolean isTooLong(int before, int node) {
    return cost.isTooLong(beats(before, node), sollus(before, node));
  }

  private VoiceStop.Resumption begin(int node) {
    return node == 0 ? voice.begin() : candidate(node).next();
  }

  private Ratio beats(int before, int node) {
    Ratio end = node > candidates.size() ? voice.endBeat() : candidate(node).breath().startBeat();
    return end.minus(begin(before).beat());
  }

  private long sollus(int before, int node) {
    long end = node > candidates.size() ? voice.sollus() : candidate(node).solluCount();
    return end - (before == 0 ? 0 : candidate(before).solluCount());
  }

  private Stretch stretch(int before, int node) {
    VoiceStop.Resumption begin = begin(before);
    Ratio beats = beats(before, node);
    return new Stretch(
        begin.beat(),
        begin.beat().plus(beats),
        tempo.secondsOf(beats),
        sollus(before, node),
        begin.round(),
        begin.phrase());
  }
}
