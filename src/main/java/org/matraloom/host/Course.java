package org.matraloom.host;

import java.util.ArrayList;
import java.util.List;

/**
 * Which lap the frames of a live rendering belong to.
 *
 * @param laps the latest ones, in order, at least one
 */
record Course(List<Lap> laps) {

  /** More than the laps that are rendered and not yet heard. */
  private static final int KEPT = 32;

  Course {
    laps = List.copyOf(laps);
  }

  Lap last() {
    return laps.get(laps.size() - 1);
  }

  /** The lap that is heard at a frame. */
  Lap at(long frame) {
    for (int i = laps.size() - 1; i > 0; i--) {
      if (laps.get(i).fromFrame() <= frame) {
        return laps.get(i);
      }
    }
    return laps.get(0);
  }

  /** A lap that takes over; those it forestalls are left out. */
  Course followedBy(Lap next) {
    List<Lap> longer = new ArrayList<>(laps);
    longer.removeIf(lap -> lap.fromBeat() >= next.fromBeat());
    longer.add(next);
    return new Course(longer.subList(Math.max(0, longer.size() - KEPT), longer.size()));
  }
}
