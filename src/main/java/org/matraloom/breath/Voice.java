package org.matraloom.breath;

import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.matraloom.time.Ratio;

/**
 * The voice of a performance as far as breath is concerned.
 *
 * @param begin where the first sollu begins
 * @param stops where it may stop on the way, in order
 * @param changeBeats where a beat begins to hold another number of matras
 * @param endBeat where the last sollu has rung out
 * @param sollus how many sollus are said
 */
record Voice(
    VoiceStop.Resumption begin,
    List<VoiceStop> stops,
    NavigableSet<Ratio> changeBeats,
    Ratio endBeat,
    long sollus) {

  Voice {
    stops = List.copyOf(stops);
    changeBeats = Collections.unmodifiableNavigableSet(new TreeSet<>(changeBeats));
  }

  /** Whether a position lies in the beat before a nadai change. */
  boolean isBeforeChange(Ratio beat) {
    return Optional.ofNullable(changeBeats.higher(beat))
        .filter(change -> change.minus(Ratio.ONE).compareTo(beat) <= 0)
        .isPresent();
  }
}
