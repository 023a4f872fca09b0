package org.matraloom.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;

/** Adds up the parts, block after block; only what sounds is kept. */
final class Mixer {

  private static final double SOFT_START_SECONDS = 1;
  private static final float SOFT_START_GAIN = 0.5f;

  private final List<PassageParts> legs = new ArrayList<>();
  private final SolluVoice voice;
  private final Optional<DronePart> drone;
  private final long startInTrack;
  private final int softFrames;
  private float[] silence = new float[0];
  private long frame;

  Mixer(
      Passage passage,
      FrameClock clock,
      SolluVoice voice,
      Optional<SrutiDrone> drone,
      TrackPlace place) {
    this.legs.add(new PassageParts(passage, clock, 0, 0, voice));
    this.voice = voice;
    this.drone = drone.map(given -> new DronePart(given, place, passage.mix()));
    this.startInTrack = place.startFrame();
    this.softFrames = (int) (SOFT_START_SECONDS * clock.ratePerSecond());
  }

  /** The first frame at which a sollu can still be left out or put in. */
  long openFrame() {
    return frame + voice.longestLeadFrames();
  }

  /** Changes over; what was to begin at that frame or later is forgotten. */
  void change(PlayChange change) {
    legs.removeIf(leg -> leg.fromFrame() >= change.fromFrame());
    legs.forEach(leg -> leg.end(change.fromFrame(), change.silentFrame()));
    legs.add(
        new PassageParts(
            change.next(), change.clock(), change.clockFrame(), change.fromFrame(), voice));
    drone.ifPresent(part -> part.mix(change.next().mix()));
  }

  /** Fills both sides with the next frames; silence once all has sounded. */
  void next(float[] left, float[] right, int frames) {
    silence = silence.length < frames ? new float[frames] : silence;
    System.arraycopy(silence, 0, left, 0, frames);
    System.arraycopy(silence, 0, right, 0, frames);
    for (PassageParts leg : legs) {
      leg.addTo(left, right, frame, frames);
    }
    drone.ifPresent(part -> part.addTo(left, right, frame, frames));
    startSoftly(left, right, frames);
    frame += frames;
    long open = openFrame();
    legs.removeIf(leg -> leg.isOver(open));
  }

  private void startSoftly(float[] left, float[] right, int frames) {
    long start = startInTrack + frame;
    for (int i = 0; i < frames && start + i < softFrames; i++) {
      float gain = SOFT_START_GAIN + (1 - SOFT_START_GAIN) * (start + i) / softFrames;
      left[i] *= gain;
      right[i] *= gain;
    }
  }
}
