package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A stop of the voice at which a breath could be taken.
 *
 * @param stop the stop
 * @param starts where a breath may begin, from late to early, in beats; at least one
 * @param usualStart where it begins if no limit asks for more
 * @param free whether air is free: a joint where a karvai or silence is long enough for a full
 *     breath
 * @param beforeChange whether it falls into the beat before a nadai change
 */
record Candidate(
    VoiceStop stop, List<Ratio> starts, Ratio usualStart, boolean free, boolean beforeChange) {

  /** All stops of a voice at which there is time and no ban, in order. */
  static List<Candidate> of(Voice voice, Tempo tempo, BreathSettings settings) {
    List<Candidate> candidates = new ArrayList<>();
    for (VoiceStop stop : voice.stops()) {
      List<Ratio> starts = stop.isForbidden() ? List.of() : starts(stop, tempo, settings);
      if (!starts.isEmpty()) {
        Ratio usual = usual(stop, starts, tempo, settings);
        boolean before = voice.isBeforeChange(usual);
        candidates.add(new Candidate(stop, starts, usual, isFree(stop, tempo, settings), before));
      }
    }
    return candidates;
  }

  /** Where the earliest breath at a stop begins, if there is time for one and no ban. */
  static Optional<Ratio> earliestStart(VoiceStop stop, Tempo tempo, BreathSettings settings) {
    List<Ratio> starts = stop.isForbidden() ? List.of() : starts(stop, tempo, settings);
    return starts.isEmpty() ? Optional.empty() : Optional.of(starts.get(starts.size() - 1));
  }

  Ratio earliestStart() {
    return starts.get(starts.size() - 1);
  }

  /** A catch breath there would keep the mouth busy at a change, though nobody asked for it. */
  boolean crowdsChange() {
    return beforeChange && !free && !stop.isAsked();
  }

  /**
   * Where a breath may begin: with the silence, or inside the sound, as late as a full breath
   * allows or as early as can be.
   */
  static List<Ratio> starts(VoiceStop stop, Tempo tempo, BreathSettings settings) {
    Ratio latest = stop.next().beat().minus(tempo.beatsInMs(settings.shortestMs()));
    List<Ratio> starts = new ArrayList<>();
    if (stop.endBeat().compareTo(latest) <= 0) {
      starts.add(stop.endBeat());
    }
    if (settings.cutKarvai() && (stop.rings() || stop.endsRound() || stop.isAsked())) {
      BreathSettings.Cutting cutting = settings.cutting();
      Ratio kept = stop.last().ownBeats().times(cutting.keptMatras());
      Ratio firstCut = stop.last().beat().plus(max(kept, tempo.beatsInMs(cutting.keptMs())));
      Ratio fullCut = max(firstCut, stop.next().beat().minus(tempo.beatsInMs(settings.fullMs())));
      for (Ratio cut : fullCut.equals(firstCut) ? List.of(firstCut) : List.of(fullCut, firstCut)) {
        if (cut.compareTo(stop.endBeat()) < 0 && cut.compareTo(latest) <= 0) {
          starts.add(cut);
        }
      }
    }
    return starts;
  }

  /** The latest start that leaves time for a full breath; the earliest where none does. */
  private static Ratio usual(
      VoiceStop stop, List<Ratio> starts, Tempo tempo, BreathSettings settings) {
    Ratio full = stop.next().beat().minus(tempo.beatsInMs(settings.fullMs()));
    return starts.stream()
        .filter(start -> start.compareTo(full) <= 0)
        .findFirst()
        .orElse(starts.get(starts.size() - 1));
  }

  private static boolean isFree(VoiceStop stop, Tempo tempo, BreathSettings settings) {
    Ratio from = settings.cutKarvai() ? stop.last().ownEnd() : stop.endBeat();
    Ratio open = stop.next().beat().minus(from);
    return stop.joint() != Joint.INSIDE && open.compareTo(tempo.beatsInMs(settings.fullMs())) >= 0;
  }

  /** The breath that begins at one of its starts, without a reason yet. */
  Breath breath(Ratio start, Tempo tempo, BreathSettings settings) {
    Ratio beats = stop.next().beat().minus(start);
    boolean full = beats.compareTo(tempo.beatsInMs(settings.fullMs())) >= 0;
    Ratio cut = stop.endBeat().minus(start);
    VoiceStop.Last last = stop.last();
    return new Breath(
        new Breath.Air(
            start,
            beats,
            tempo.secondsOf(beats),
            full ? Breath.Kind.FULL : Breath.Kind.CATCH,
            source(cut),
            cut),
        new Breath.After(last.spelling(), last.beat(), last.round()),
        stop.joint(),
        beforeChange,
        "");
  }

  private Breath.Source source(Ratio cut) {
    if (cut.signum() == 0) {
      return Breath.Source.SILENCE;
    }
    return stop.rings() ? Breath.Source.KARVAI : Breath.Source.SOLLU;
  }

  private static Ratio max(Ratio a, Ratio b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
