package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Kriya;
import org.matraloom.time.FrameClock;

/** Turns the kriyas and ticks of a timeline into strokes, as late as can be. */
final class HandPart {

  /** How much softer a kriya is when it is given again, in two kalai. */
  private static final double AGAIN_DB = -6;

  private record Stroke(Part part, float[] samples, double extraDb) {}

  private final Iterator<Event> events;
  private final FrameClock clock;
  private final Mix mix;
  private final HandSounds sounds;
  private Optional<Event> next;

  HandPart(Timeline timeline, FrameClock clock, Mix mix) {
    this.events = timeline.iterator();
    this.clock = clock;
    this.mix = mix;
    this.sounds = new HandSounds(clock.ratePerSecond());
    this.next = pull();
  }

  /** Adds every stroke that begins before a frame. */
  void collect(long endFrame, List<Sounding> sounding) {
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

  private Optional<Sounding> sound(Event event, long frame) {
    if (event instanceof Event.HandBeat hand) {
      boolean whole = mix.wholeCountIn() && hand.round() == 0;
      return stroke(hand)
          .filter(stroke -> whole || mix.sounds(stroke.part))
          .map(stroke -> new Sounding(stroke.samples, frame, gains(stroke, whole)));
    }
    if (event instanceof Event.Tick && mix.sounds(Part.TICK)) {
      return Optional.of(new Sounding(sounds.tick(), frame, mix.gains(Part.TICK, 0)));
    }
    return Optional.empty();
  }

  private Mix.Gains gains(Stroke stroke, boolean centred) {
    return centred
        ? mix.centredGains(stroke.part, stroke.extraDb)
        : mix.gains(stroke.part, stroke.extraDb);
  }

  private Optional<Stroke> stroke(Event.HandBeat hand) {
    double extraDb = hand.again() ? AGAIN_DB : 0;
    if (hand.kriya() instanceof Kriya.Clap) {
      return Optional.of(
          hand.samam()
              ? new Stroke(Part.CLAP, sounds.samamClap(), mix.samamDb())
              : new Stroke(Part.CLAP, sounds.clap(), extraDb));
    }
    if (hand.kriya() instanceof Kriya.Count count) {
      return Optional.of(new Stroke(Part.COUNT, sounds.tap(count.finger()), extraDb));
    }
    if (hand.kriya() instanceof Kriya.Wave) {
      return Optional.of(new Stroke(Part.WAVE, sounds.wave(), extraDb));
    }
    return Optional.empty();
  }
}
