package org.matraloom.live;

import java.util.ArrayList;
import java.util.List;

/**
 * Which segment the frames of the device belong to.
 *
 * @param segments the latest ones, in order, at least one
 */
record LiveClock(List<LiveSegment> segments) {

  /** More than the segments that are rendered and not yet heard. */
  private static final int KEPT = 32;

  LiveClock {
    segments = List.copyOf(segments);
  }

  LiveSegment last() {
    return segments.get(segments.size() - 1);
  }

  /** The segment that is heard at a frame. */
  LiveSegment at(long frame) {
    for (int i = segments.size() - 1; i > 0; i--) {
      if (segments.get(i).fromFrame() <= frame) {
        return segments.get(i);
      }
    }
    return segments.get(0);
  }

  /** A segment that takes over; those it forestalls are left out. */
  LiveClock followedBy(LiveSegment next) {
    return joinedBy(new LiveClock(List.of(next)));
  }

  /** The segments of another clock from where that begins. */
  LiveClock joinedBy(LiveClock next) {
    List<LiveSegment> longer = new ArrayList<>(segments);
    long from = next.segments.get(0).fromFrame();
    longer.removeIf(segment -> segment.fromFrame() >= from);
    longer.addAll(next.segments);
    return new LiveClock(longer.subList(Math.max(0, longer.size() - KEPT), longer.size()));
  }
}
