package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Finds the plan with as few breaths as the limits allow, by dynamic programming over all breaths
 * that could be taken.
 *
 * <p>Every breath costs {@value #BREATH} points. A catch breath adds {@value #CATCH}; time cut from
 * a sound adds {@value #CUT} and 1 for each {@value #CUT_MS_PER_POINT} ms begun; a breath inside a
 * phrase adds {@value #INSIDE_PHRASE}; one in the beat before a nadai change adds {@value
 * #BEFORE_CHANGE}, more than any way round it; one that follows another after too short a stretch
 * adds {@value #CLOSE}; the effort of stretches is that of {@link StretchLimits}. The weights are
 * choices of our own.
 *
 * <p>Where no choice keeps a stretch under the limit, that stretch runs from one stop of the voice
 * to the very next and everything around it is still planned as well as can be.
 */
final class FewestSearch {

  static final long BREATH = 100;
  static final long CATCH = 15;
  static final long CUT = 40;
  static final long CUT_MS_PER_POINT = 20;
  static final long INSIDE_PHRASE = 60;
  static final long BEFORE_CHANGE = 1_000_000;
  static final long CLOSE = 300;

  private static final long UNREACHED = Long.MAX_VALUE;
  private static final long MS_PER_SECOND = 1_000;

  /** A breath that could be taken; at one candidate from late to early. */
  private record Option(Candidate candidate, int number, Ratio start, long solluCount) {
    private Ratio begin() {
      return candidate.stop().next().beat();
    }

    private boolean isEarliest() {
      return start.equals(candidate.earliestStart());
    }
  }

  private final Voice voice;
  private final Tempo tempo;
  private final BreathSettings settings;
  private final StretchLimits limits;
  private final Ratio apart;
  private final List<Option> options = new ArrayList<>();
  private final long[] best;
  private final int[] from;

  FewestSearch(Voice voice, Tempo tempo, BreathSettings settings, List<Candidate> candidates) {
    this.voice = voice;
    this.tempo = tempo;
    this.settings = settings;
    this.limits = new StretchLimits(settings, tempo);
    this.apart = tempo.beatsInMs(settings.inhaling().apartMs());
    for (int number = 0; number < candidates.size(); number++) {
      Candidate candidate = candidates.get(number);
      for (Ratio start : candidate.starts()) {
        options.add(new Option(candidate, number, start, candidate.stop().solluCount()));
      }
    }
    this.best = new long[options.size() + 2];
    this.from = new int[options.size() + 2];
  }

  /** A breath of the plan. */
  record Taken(Candidate candidate, Ratio start) {}

  /** The breaths of the best plan, in order. */
  List<Taken> breaths() {
    Arrays.fill(best, UNREACHED);
    best[0] = 0;
    int end = options.size() + 1;
    for (int node = 1; node <= end; node++) {
      reach(node);
    }
    List<Taken> taken = new ArrayList<>();
    for (int node = from[end]; node > 0; node = from[node]) {
      taken.add(new Taken(option(node).candidate, option(node).start));
    }
    Collections.reverse(taken);
    return taken;
  }

  long points() {
    return best[options.size() + 1];
  }

  private void reach(int node) {
    int before = node - 1;
    while (before > 0 && number(before) == number(node)) {
      before--;
    }
    boolean unavoidable = isTooLong(before, node) && (isEnd(node) || option(node).isEarliest());
    int neighbour = number(before);
    while (before >= 0 && (unavoidable ? number(before) == neighbour : !isTooLong(before, node))) {
      relax(before, node);
      boolean asked = before > 0 && option(before).candidate.stop().isAsked();
      if (asked && number(before - 1) != number(before)) {
        return;
      }
      before--;
    }
  }

  private void relax(int before, int node) {
    if (best[before] == UNREACHED) {
      return;
    }
    Optional<Option> taken = before == 0 ? Optional.empty() : Optional.of(option(before));
    long points = best[before] + ofStretch(taken, before, node);
    if (!isEnd(node)) {
      points += ofBreath(option(node));
    }
    if (points < best[node]) {
      best[node] = points;
      from[node] = before;
    }
  }

  private long ofStretch(Optional<Option> taken, int before, int node) {
    Ratio beats = beats(before, node);
    long lack = taken.map(each -> limits.lack(each.begin().minus(each.start))).orElse(0L);
    boolean close = taken.isPresent() && !isEnd(node) && beats.compareTo(apart) < 0;
    return limits.effort(beats, sollus(before, node), lack) + (close ? CLOSE : 0);
  }

  private long ofBreath(Option option) {
    Breath breath = option.candidate.breath(option.start, tempo, settings);
    long points = BREATH;
    if (breath.kind() == Breath.Kind.CATCH) {
      points += CATCH;
    }
    if (breath.air().cutBeats().signum() > 0) {
      Ratio cut = tempo.secondsOf(breath.air().cutBeats());
      points += CUT + cut.times(MS_PER_SECOND / CUT_MS_PER_POINT).ceil();
    }
    if (!breath.joint().endsPhrase()) {
      points += INSIDE_PHRASE;
    }
    return breath.beforeChange() ? points + BEFORE_CHANGE : points;
  }

  private Option option(int node) {
    return options.get(node - 1);
  }

  private boolean isEnd(int node) {
    return node > options.size();
  }

  /** Which candidate a node belongs to; -1 for the beginning. */
  private int number(int node) {
    if (node == 0) {
      return -1;
    }
    return isEnd(node) ? options.size() : option(node).number;
  }

  private boolean isTooLong(int before, int node) {
    return limits.isTooLong(beats(before, node), sollus(before, node));
  }

  private Ratio beats(int before, int node) {
    Ratio end = isEnd(node) ? voice.endBeat() : option(node).start;
    return end.minus(before == 0 ? voice.begin().beat() : option(before).begin());
  }

  private long sollus(int before, int node) {
    long end = isEnd(node) ? voice.sollus() : option(node).solluCount;
    return end - (before == 0 ? 0 : option(before).solluCount);
  }
}
