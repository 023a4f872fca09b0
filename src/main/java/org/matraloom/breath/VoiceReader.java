package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** Follows a performance sollu by sollu and keeps the places where the voice may stop. */
final class VoiceReader {

  private final List<VoiceStop> stops = new ArrayList<>();
  private final NavigableSet<Ratio> changeBeats = new TreeSet<>();
  private Optional<Spoken> first = Optional.empty();
  private Optional<Spoken> last = Optional.empty();
  private long sollus;

  private VoiceReader() {}

  /** Reads a performance; empty if it says nothing. */
  static Optional<Voice> read(Performance performance) {
    VoiceReader reader = new VoiceReader();
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      Moment moment = moments.next();
      if (moment instanceof Spoken spoken) {
        reader.take(spoken);
      } else if (moment instanceof Moment.NewNadai change) {
        reader.changeBeats.add(change.beat());
      }
    }
    return reader.last.map(reader::finished);
  }

  private void take(Spoken spoken) {
    last.map(before -> stop(before, spoken)).filter(VoiceStop::leavesTime).ifPresent(stops::add);
    first = first.or(() -> Optional.of(spoken));
    last = Optional.of(spoken);
    sollus++;
  }

  private VoiceStop stop(Spoken before, Spoken next) {
    return new VoiceStop(
        before.sollu().spelling(),
        before.beat(),
        before.ownBeats(),
        before.endBeat(),
        resumption(next),
        sollus,
        before.round(),
        next.opens() == Spoken.Opens.ROUND,
        next.opens() != Spoken.Opens.NOTHING);
  }

  private static VoiceStop.Resumption resumption(Spoken spoken) {
    return new VoiceStop.Resumption(spoken.beat(), spoken.round(), spoken.phrase());
  }

  private Voice finished(Spoken end) {
    return new Voice(
        resumption(first.orElseThrow()),
        stops,
        changeBeats,
        end.beat().plus(end.ownBeats()),
        sollus);
  }
}
