package org.matraloom.madetake;

import org.matraloom.schedule.Event;

/**
 * A sollu of a made take.
 *
 * @param place its place among the expected sollus, or {@link #NO_PLACE} if the score does not ask
 *     for it
 * @param said what is said
 * @param feltSeconds where its vowel begins
 * @param lengthSeconds how long it sounds, at most
 * @param onsetSeconds where anything of it is first heard; as {@link #feltSeconds} until it is said
 */
public record SolluTruth(
    int place,
    Event.SolluSaid said,
    double feltSeconds,
    double lengthSeconds,
    double onsetSeconds) {

  public static final int NO_PLACE = -1;

  SolluTruth lasting(double seconds) {
    return new SolluTruth(place, said, feltSeconds, seconds, onsetSeconds);
  }

  SolluTruth heardAt(double seconds) {
    return new SolluTruth(place, said, feltSeconds, lengthSeconds, seconds);
  }

  /** The same in a recording of another clock that began at another time. */
  SolluTruth on(double clockFactor, double laterSeconds) {
    return new SolluTruth(
        place,
        said,
        feltSeconds * clockFactor + laterSeconds,
        lengthSeconds * clockFactor,
        onsetSeconds * clockFactor + laterSeconds);
  }
}
