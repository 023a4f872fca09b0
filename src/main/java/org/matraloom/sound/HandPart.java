package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/** Turns the kriyas and ticks of a timeline into strokes, as late as can be. */
final class HandPart {

  private final Iterator<Event> events;
  private final FrameClock clock;
  private final Mix mix;
  private final HandStrokes strokes;
  private Optional<Event> next;

  HandPart(Timeline timeline, FrameClock clock, Mix mix) {
    this.events = timeline.iterator();
    this.clock = clock;
    this.mix = mix;
    this.strokes = new HandStrokes(new HandSounds(clock.ratePerSecond()), mix);
    this.next = pull();
  }

  /** Adds every stroke that begins before a frame. */
  void collect(long endFrame, List<ActiveSound> sounding) {
    while (next.isPresent()) {
      long frame = clock.frameAt(next.get().beat());
      if (frame >= endFrame) {
        return;
      }
      sound(next.get(), frame).ifPresent(sounding::add);
      next = pull();
    }
  }

  private Optional<Event> pull() {
    return events.hasNext() ? Optional.of(events.next()) : Optional.empty();
  }

  private Optional<ActiveSound> sound(Event event, long frame) {
    if (event instanceof Event.HandBeat hand) {
      boolean whole = mix.wholeCountIn() && hand.round() == 0;
      return strokes
          .of(hand)
          .filter(stroke -> whole || mix.sounds(stroke.part()))
          .map(stroke -> new ActiveSound(stroke.samples(), frame, gains(stroke, whole)));
    }
    if (event instanceof Event.Tick && mix.sounds(MixPart.TICK)) {
      return Optional.of(new ActiveSound(strokes.tick(), frame, mix.gains(MixPart.TICK, 0)));
    }
    return Optional.empty();
  }

  private Mix.Gains gains(HandStrokes.Stroke stroke, boolean centred) {
    return centred
        ? mix.centredGains(stroke.part(), stroke.extraDb())
        : mix.gains(stroke.part(), stroke.extraDb());
  }
}
