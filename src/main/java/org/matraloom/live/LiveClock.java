package org.matraloom.live;

import java.util.ArrayList;
import java.util.List;

/**
 * Which lap the frames of the device belong to.
 *
 * @param laps the latest ones, in order, at least one
 */
record LiveClock(List<LiveSegment> laps) {

  /** More than the laps that are rendered and not yet heard. */
  private static final int KEPT = 32;

  LiveClock {
    laps = List.copyOf(laps);
  }

  LiveSegment last() {
    return laps.get(laps.size() - 1);
  }

  /** The lap that is heard at a frame. */
  LiveSegment at(long frame) {
    for (int i = laps.size() - 1; i > 0; i--) {
      if (laps.get(i).fromFrame() <= frame) {
        return laps.get(i);
      }
    }
    return laps.get(0);
  }

  /** A lap that takes over; those it forestalls are left out. */
  LiveClock followedBy(LiveSegment next) {
    return joinedBy(new LiveClock(List.of(next)));
  }

  /** The laps of another course from where that begins. */
  LiveClock joinedBy(LiveClock next) {
    List<LiveSegment> longer = new ArrayList<>(laps);
    long from = next.laps.get(0).fromFrame();
    longer.removeIf(lap -> lap.fromFrame() >= from);
    longer.addAll(next.laps);
    return new LiveClock(longer.subList(Math.max(0, longer.size() - KEPT), longer.size()));
  }
}
