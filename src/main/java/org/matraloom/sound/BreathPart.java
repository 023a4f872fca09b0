package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.Noise;

/**
 * Cues the breaths of a timeline with the soft noise of an inhalation, which ends before the next
 * sollu.
 */
final class BreathPart {

  private static final int LONGEST_MS = 900;
  private static final int CLEAR_MS = 30;

  /** Where it swells to its loudest, as a part of its length. */
  private static final double SWELL = 0.6;

  private static final long SEED = 0x6874_6165_7262L;

  private final Iterator<Event> events;
  private final FrameClock clock;
  private final Mix.Gains gains;
  private Optional<Event.Inhale> next;

  BreathPart(Timeline timeline, FrameClock clock, Mix mix) {
    this.events = timeline.iterator();
    this.clock = clock;
    this.gains = mix.gains(MixPart.BREATH, 0);
    this.next = mix.sounds(MixPart.BREATH) ? pull() : Optional.empty();
  }

  /** Adds every breath that begins before a frame. */
  void collect(long endFrame, List<ActiveSound> sounding) {
    while (next.isPresent()) {
      Event.Inhale inhale = next.get();
      long frame = clock.frameAt(inhale.beat());
      if (frame >= endFrame) {
        return;
      }
      long until = clock.frameAt(inhale.beat().plus(inhale.beats()));
      sounding.add(new ActiveSound(noise(until - frame), frame, gains));
      next = pull();
    }
  }

  private Optional<Event.Inhale> pull() {
    while (events.hasNext()) {
      if (events.next() instanceof Event.Inhale inhale) {
        return Optional.of(inhale);
      }
    }
    return Optional.empty();
  }

  private float[] noise(long timeFrames) {
    int rate = clock.ratePerSecond();
    long clear = (long) CLEAR_MS * rate / 1000;
    int frames = (int) Math.max(1, Math.min(timeFrames - clear, (long) LONGEST_MS * rate / 1000));
    double lengthMs = 1000.0 * frames / rate;
    double[] sum = new double[frames];
    Noise noise = new Noise(SEED);
    double swellMs = SWELL * lengthMs;
    double fallMs = (1 - SWELL) * lengthMs / 2;
    new NoiseLayer(0, 1, swellMs, fallMs, 1_100, 0.6).addTo(sum, rate, noise);
    new NoiseLayer(0, 0.7, swellMs, fallMs, 2_600, 1).addTo(sum, rate, noise);
    double peak = 0;
    for (int i = 0; i < frames; i++) {
      sum[i] *= StrictMath.sin(StrictMath.PI * (i + 0.5) / frames);
      peak = Math.max(peak, Math.abs(sum[i]));
    }
    float[] samples = new float[frames];
    for (int i = 0; i < frames; i++) {
      samples[i] = (float) (sum[i] / peak);
    }
    return samples;
  }
}
