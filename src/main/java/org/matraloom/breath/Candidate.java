package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A breath that could be taken.
 *
 * @param breath the breath
 * @param stop which stop of the voice it uses, from 0; at most one breath is taken at a stop
 * @param solluCount sollus said from the beginning up to it
 * @param next where the voice goes on
 * @param earliest whether no breath at this stop begins earlier
 */
record Candidate(
    Breath breath, int stop, long solluCount, VoiceStop.Resumption next, boolean earliest) {

  /** All breaths that a voice leaves time for, by stop; at one stop from late to early. */
  static List<Candidate> of(Voice voice, Tempo tempo, BreathSettings settings) {
    List<Candidate> candidates = new ArrayList<>();
    for (int at = 0; at < voice.stops().size(); at++) {
      VoiceStop stop = voice.stops().get(at);
      List<Ratio> starts = starts(stop, tempo, settings);
      for (int option = 0; option < starts.size(); option++) {
        Breath breath = breath(stop, starts.get(option), voice, tempo, settings);
        boolean earliest = option == starts.size() - 1;
        candidates.add(new Candidate(breath, at, stop.solluCount(), stop.next(), earliest));
      }
    }
    return candidates;
  }

  /** Where the earliest breath at a stop begins, if there is time for one. */
  static Optional<Ratio> earliestStart(VoiceStop stop, Tempo tempo, BreathSettings settings) {
    List<Ratio> starts = starts(stop, tempo, settings);
    return starts.isEmpty() ? Optional.empty() : Optional.of(starts.get(starts.size() - 1));
  }

  /**
   * Where a breath may begin: with the silence, or inside the sound, as late as a full breath
   * allows or as early as can be.
   */
  private static List<Ratio> starts(VoiceStop stop, Tempo tempo, BreathSettings settings) {
    Ratio latest = stop.next().beat().minus(tempo.beatsInMs(settings.shortestMs()));
    List<Ratio> starts = new ArrayList<>();
    if (stop.endBeat().compareTo(latest) <= 0) {
      starts.add(stop.endBeat());
    }
    if (stop.rings() ? settings.cutKarvai() : stop.endsRound()) {
      Ratio kept = stop.ownMatra().times(settings.keptMatras());
      Ratio firstCut = stop.attackBeat().plus(max(kept, tempo.beatsInMs(settings.keptMs())));
      Ratio fullCut = max(firstCut, stop.next().beat().minus(tempo.beatsInMs(settings.fullMs())));
      for (Ratio cut : fullCut.equals(firstCut) ? List.of(firstCut) : List.of(fullCut, firstCut)) {
        if (cut.compareTo(stop.endBeat()) < 0 && cut.compareTo(latest) <= 0) {
          starts.add(cut);
        }
      }
    }
    return starts;
  }

  private static Breath breath(
      VoiceStop stop, Ratio start, Voice voice, Tempo tempo, BreathSettings settings) {
    Ratio beats = stop.next().beat().minus(start);
    boolean full = beats.compareTo(tempo.beatsInMs(settings.fullMs())) >= 0;
    Ratio cut = stop.endBeat().minus(start);
    return new Breath(
        start,
        beats,
        tempo.secondsOf(beats),
        full ? Breath.Kind.FULL : Breath.Kind.CATCH,
        source(stop, cut),
        cut,
        stop.last(),
        stop.attackBeat(),
        stop.round(),
        stop.endsPhrase(),
        voice.isBeforeChange(start));
  }

  private static Breath.Source source(VoiceStop stop, Ratio cut) {
    if (cut.signum() == 0) {
      return Breath.Source.SILENCE;
    }
    return stop.rings() ? Breath.Source.KARVAI : Breath.Source.JOIN;
  }

  private static Ratio max(Ratio a, Ratio b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
