package org.matraloom.breath;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.score.Performance;
import org.matraloom.time.Tempo;

/**
 * What is to be said about a plan as a whole: where it could not do what the score wishes, and
 * where it is not alike.
 */
final class PlanNotes {

  private final Performance performance;
  private final Voice voice;
  private final BreathSettings settings;
  private final List<Candidate> candidates;
  private final Set<VoiceStop> taken;
  private final List<BreathStretch> stretches;
  private final List<String> notes = new ArrayList<>();

  PlanNotes(
      Performance performance,
      Voice voice,
      BreathSettings settings,
      List<Candidate> candidates,
      List<Candidate> taken,
      List<BreathStretch> stretches) {
    this.stretches = stretches;
    this.performance = performance;
    this.voice = voice;
    this.settings = settings;
    this.candidates = candidates;
    this.taken = taken.stream().map(Candidate::stop).collect(Collectors.toCollection(HashSet::new));
  }

  List<String> all() {
    Set<VoiceStop> possible = candidates.stream().map(Candidate::stop).collect(Collectors.toSet());
    for (VoiceStop stop : voice.stops()) {
      if (stop.isAsked() && !possible.contains(stop)) {
        notes.add(
            "Round "
                + stop.last().round()
                + ": the score asks for a breath "
                + after(stop)
                + ", but "
                + noTime(stop));
      }
    }
    stretches.stream().filter(each -> each.isTooLong(settings)).forEach(this::tellBans);
    if (settings.way() == BreathSettings.Way.RECITER) {
      Map<Object, List<VoiceStop>> byPlace = new LinkedHashMap<>();
      voice
          .stops()
          .forEach(
              stop ->
                  byPlace
                      .computeIfAbsent(stop.standing().place(), none -> new ArrayList<>())
                      .add(stop));
      byPlace.values().forEach(this::tellUnlike);
    }
    return notes;
  }

  /** The bans without which a stretch that is too long could be divided. */
  private void tellBans(BreathStretch stretch) {
    Tempo tempo = performance.composition().tempo();
    for (VoiceStop stop : voice.stops()) {
      boolean inside =
          stop.last().beat().compareTo(stretch.startBeat()) > 0
              && stop.next().beat().compareTo(stretch.endBeat()) < 0;
      if (inside && stop.isForbidden() && !Candidate.starts(stop, tempo, settings).isEmpty()) {
        notes.add("The score forbids a breath " + after(stop) + ", in a stretch that is too long");
      }
    }
  }

  private void tellUnlike(List<VoiceStop> alike) {
    List<VoiceStop> left = alike.stream().filter(stop -> !taken.contains(stop)).toList();
    if (left.isEmpty() || left.size() == alike.size()) {
      return;
    }
    for (VoiceStop stop : left) {
      notes.add(
          "Round "
              + stop.last().round()
              + ": no breath "
              + after(stop)
              + ", where there is one elsewhere: "
              + whyNot(stop));
    }
  }

  private String whyNot(VoiceStop stop) {
    if (stop.isForbidden()) {
      return "the score forbids it";
    }
    boolean crowds =
        candidates.stream().anyMatch(each -> each.stop() == stop && each.crowdsChange());
    return crowds ? "it would fall into the beat before the nadai changes" : noTime(stop);
  }

  private String noTime(VoiceStop stop) {
    Tempo tempo = performance.composition().tempo();
    double seconds = tempo.secondsOf(stop.next().beat().minus(stop.last().ownEnd())).toDouble();
    return String.format(Locale.ROOT, "there is no time (%.2f s after its matra)", seconds);
  }

  private String after(VoiceStop stop) {
    return "after the "
        + stop.last().spelling()
        + " on "
        + performance.avartana().say(stop.last().beat());
  }
}
