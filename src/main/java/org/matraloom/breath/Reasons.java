package org.matraloom.breath;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Says of every breath of a plan why it is taken, in one clause. */
final class Reasons {

  private final List<Candidate> taken;
  private final List<BreathStretch> stretches;
  private final BreathSettings settings;
  private final Tempo tempo;

  Reasons(
      List<Candidate> taken, List<BreathStretch> stretches, BreathSettings settings, Tempo tempo) {
    this.tempo = tempo;
    this.taken = taken;
    this.stretches = stretches;
    this.settings = settings;
  }

  /** The same breaths with their reasons. */
  List<Breath> of(List<Breath> breaths) {
    List<Breath> reasoned = new ArrayList<>();
    Map<Object, Integer> firstRound = new HashMap<>();
    for (int at = 0; at < breaths.size(); at++) {
      VoiceStop stop = taken.get(at).stop();
      int round = stop.last().round();
      int first = firstRound.computeIfAbsent(stop.standing().place(), none -> round);
      String why = first < round ? "as in round " + first : reason(at, taken.get(at));
      reasoned.add(breaths.get(at).because(where(stop) + ", " + why));
    }
    return reasoned;
  }

  private static String where(VoiceStop stop) {
    if (stop.standing().beforeLastMora()) {
      return "before the mora";
    }
    return switch (stop.joint()) {
      case ROUND -> "between rounds";
      case SECTION -> "between sections";
      case STATEMENT -> "gap of the mora";
      case LINE -> "end of a line";
      case PHRASE -> "phrase end";
      case PAUSE -> stop.rings() ? "long sound in a phrase" : "silence in a phrase";
      case INSIDE -> "inside a phrase";
    };
  }

  private String reason(int at, Candidate candidate) {
    if (candidate.stop().isAsked()) {
      return "the score asks for it";
    } else if (candidate.stop().standing().beforeLastMora()
        && settings.way() == BreathSettings.Way.RECITER) {
      return "a breath in hand";
    } else if (candidate.free() && settings.way() == BreathSettings.Way.RECITER) {
      return "air is free";
    }
    Optional<String> here = without(at);
    if (here.isPresent()) {
      boolean inside = candidate.stop().joint() == Joint.INSIDE;
      return (inside ? "no joint is enough: " : "else ") + here.get() + " on one breath";
    }
    Object place = candidate.stop().standing().place();
    return IntStream.range(0, taken.size())
        .filter(other -> taken.get(other).stop().standing().place().equals(place))
        .filter(other -> without(other).isPresent())
        .mapToObj(other -> "as in round " + taken.get(other).stop().last().round())
        .findFirst()
        .map(alike -> alike + ", where it is needed")
        .orElse("it costs least");
  }

  /** What would be said on one breath without this one and those of its place beside it. */
  private Optional<String> without(int at) {
    Object place = taken.get(at).stop().standing().place();
    int first = at;
    while (first > 0 && taken.get(first - 1).stop().standing().place().equals(place)) {
      first--;
    }
    int last = at;
    while (last + 1 < taken.size() && taken.get(last + 1).stop().standing().place().equals(place)) {
      last++;
    }
    List<BreathStretch> joined = stretches.subList(first, last + 2);
    Ratio beats = joined.get(joined.size() - 1).endBeat().minus(joined.get(0).startBeat());
    Ratio seconds = tempo.secondsOf(beats);
    long sollus = joined.stream().mapToLong(BreathStretch::sollus).sum();
    if (seconds.compareTo(settings.longestSeconds()) > 0) {
      return Optional.of(Counts.seconds(seconds));
    }
    return sollus > settings.longestSollus()
        ? Optional.of(Counts.of(sollus, "sollu", "sollus"))
        : Optional.empty();
  }
}
