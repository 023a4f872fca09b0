package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Plans the breaths of a performance: as a reciter breathes ({@link PlanTerm} is the order in which
 * plans are weighed), or as few as can be.
 */
public final class BreathPlanner {

  private final Performance performance;
  private final Voice voice;
  private final Tempo tempo;
  private final BreathSettings settings;
  private final List<Candidate> candidates;

  private BreathPlanner(Performance performance, Voice voice, BreathSettings settings) {
    this.performance = performance;
    this.voice = voice;
    this.tempo = performance.composition().tempo();
    this.settings = settings;
    this.candidates = Candidate.of(voice, tempo, settings);
  }

  /**
   * Plans the breaths of a performance at the tempo of its composition.
   *
   * @param performance what is performed
   * @param settings the limits to keep, and by which rules
   * @return the plan that costs least
   */
  public static BreathPlan plan(Performance performance, BreathSettings settings) {
    return VoiceReader.read(performance)
        .map(voice -> new BreathPlanner(performance, voice, settings).planned())
        .orElseGet(() -> BreathPlan.ofSilence(performance, settings));
  }

  private BreathPlan planned() {
    return settings.way() == BreathSettings.Way.FEWEST ? fewest() : asAReciter();
  }

  private BreathPlan asAReciter() {
    StretchGraph graph = new StretchGraph(voice, tempo, settings, candidates);
    BreathPlaces places = new BreathPlaces(candidates, voice);
    graph.weigh(places);
    ReciterSearch search = new ReciterSearch(graph, places);
    List<Candidate> taken = new ArrayList<>();
    List<Breath> breaths = new ArrayList<>();
    int before = 0;
    for (int node : search.path()) {
      if (node != graph.end()) {
        Candidate candidate = candidates.get(node - 1);
        taken.add(candidate);
        breaths.add(candidate.breath(graph.stop(before, node), tempo, settings));
      }
      before = node;
    }
    return plan(taken, breaths, search.cost());
  }

  private BreathPlan fewest() {
    FewestSearch search = new FewestSearch(voice, tempo, settings, candidates);
    List<Candidate> taken = new ArrayList<>();
    List<Breath> breaths = new ArrayList<>();
    for (FewestSearch.Taken each : search.breaths()) {
      taken.add(each.candidate());
      breaths.add(each.candidate().breath(each.start(), tempo, settings));
    }
    StretchLimits limits = new StretchLimits(settings, tempo);
    long over =
        stretches(taken, breaths).stream()
            .mapToLong(each -> limits.excess(each.endBeat().minus(each.startBeat()), each.sollus()))
            .sum();
    List<Long> amounts = new ArrayList<>(Collections.nCopies(PlanTerm.values().length, 0L));
    amounts.set(PlanTerm.OVER.ordinal(), over);
    amounts.set(PlanTerm.BREATHS.ordinal(), (long) breaths.size());
    amounts.set(PlanTerm.UNEVEN.ordinal(), search.points());
    return plan(taken, breaths, new PlanCost(amounts));
  }

  private BreathPlan plan(List<Candidate> taken, List<Breath> breaths, PlanCost cost) {
    List<BreathStretch> stretches = stretches(taken, breaths);
    List<Breath> reasoned = new Reasons(taken, stretches, settings, tempo).of(breaths);
    List<String> notes =
        new PlanNotes(performance, voice, settings, candidates, taken, stretches).all();
    return new BreathPlan(performance, settings, reasoned, stretches, cost, notes);
  }

  private List<BreathStretch> stretches(List<Candidate> taken, List<Breath> breaths) {
    List<BreathStretch> stretches = new ArrayList<>();
    VoiceStop.Resumption begin = voice.begin();
    long said = 0;
    for (int at = 0; at <= breaths.size(); at++) {
      boolean last = at == breaths.size();
      Ratio end = last ? voice.endBeat() : breaths.get(at).startBeat();
      long sollus = last ? voice.sollus() : taken.get(at).stop().solluCount();
      stretches.add(
          new BreathStretch(
              begin.beat(),
              end,
              tempo.secondsOf(end.minus(begin.beat())),
              sollus - said,
              begin.round(),
              begin.phrase()));
      if (!last) {
        begin = taken.get(at).stop().next();
        said = sollus;
      }
    }
    return stretches;
  }
}
