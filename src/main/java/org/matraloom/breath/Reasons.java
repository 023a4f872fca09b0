package org.matraloom.breath;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;

/** Says of every breath of a plan why it is taken, in one clause. */
final class Reasons {

  private final List<Candidate> taken;
  private final List<BreathStretch> stretches;
  private final BreathSettings settings;

  Reasons(List<Candidate> taken, List<BreathStretch> stretches, BreathSettings settings) {
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
      String why =
          first < round ? "as in round " + first : reason(at, taken.get(at), breaths.get(at));
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

  private String reason(int at, Candidate candidate, Breath breath) {
    if (candidate.stop().isAsked()) {
      return "the score asks for it";
    } else if (candidate.stop().standing().beforeLastMora() && settings.way() == BreathSettings.Way.RECITER) {
      return "a breath in hand";
    } else if (candidate.free() && settings.way() == BreathSettings.Way.RECITER) {
      return "air is free";
    }
    BreathStretch before = stretches.get(at);
    BreathStretch after = stretches.get(at + 1);
    Ratio seconds = before.seconds().plus(after.seconds()).plus(breath.seconds());
    long sollus = before.sollus() + after.sollus();
    boolean needed =
        seconds.compareTo(settings.longestSeconds()) > 0 || sollus > settings.longestSollus();
    if (!needed) {
      return settings.way() == BreathSettings.Way.FEWEST ? "it costs least" : "as each time";
    }
    String without =
        seconds.compareTo(settings.longestSeconds()) > 0
            ? Counts.seconds(seconds)
            : Counts.of(sollus, "sollu", "sollus");
    return (candidate.stop().joint() == Joint.INSIDE ? "no joint is enough: " : "else ")
        + without
        + " on one breath";
  }
}
