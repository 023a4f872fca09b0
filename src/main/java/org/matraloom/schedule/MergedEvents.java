package org.matraloom.schedule;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

/** Merges event streams, each in order already, into one in order. */
final class MergedEvents implements Iterator<Event> {

  private static final EventRank RANK = new EventRank();

  private static final class Head {
    private final Iterator<Event> rest;
    private Event event;

    Head(Iterator<Event> rest) {
      this.rest = rest;
      this.event = rest.next();
    }
  }

  private final List<Head> heads = new ArrayList<>();

  MergedEvents(List<Iterator<Event>> streams) {
    for (Iterator<Event> stream : streams) {
      if (stream.hasNext()) {
        heads.add(new Head(stream));
      }
    }
  }

  @Override
  public boolean hasNext() {
    return !heads.isEmpty();
  }

  @Override
  public Event next() {
    if (heads.isEmpty()) {
      throw new NoSuchElementException("the timeline has ended");
    }
    Head first = heads.get(0);
    for (Head head : heads) {
      if (comesBefore(head.event, first.event)) {
        first = head;
      }
    }
    Event event = first.event;
    if (first.rest.hasNext()) {
      first.event = first.rest.next();
    } else {
      heads.remove(first);
    }
    return event;
  }

  private static boolean comesBefore(Event a, Event b) {
    int order = a.beat().compareTo(b.beat());
    return order != 0 ? order < 0 : a.told(RANK) < b.told(RANK);
  }
}
