package org.matraloom.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/** Adds up the parts, block after block; only what sounds is kept. */
final class Mixer {

  private static final double SOFT_START_SECONDS = 1;
  private static final float SOFT_START_GAIN = 0.5f;

  private final HandPart hand;
  private final VoicePart voice;
  private final BreathPart breath;
  private final Optional<DronePart> drone;
  private final long startInTrack;
  private final List<Sounding> sounding = new ArrayList<>();
  private final int softFrames;
  private long frame;

  Mixer(
      Timeline timeline,
      FrameClock clock,
      Mix mix,
      SolluVoice voice,
      Optional<SrutiDrone> drone,
      TrackPlace place) {
    this.hand = new HandPart(timeline, clock, mix);
    this.voice = new VoicePart(timeline, clock, mix, voice);
    this.breath = new BreathPart(timeline, clock, mix);
    this.drone =
        drone
            .filter(given -> mix.sounds(Part.DRONE))
            .map(given -> new DronePart(given, place, mix));
    this.startInTrack = place.startFrame();
    this.softFrames = (int) (SOFT_START_SECONDS * clock.ratePerSecond());
  }

  /** Fills both sides with the next frames; silence once all has sounded. */
  void next(float[] left, float[] right, int frames) {
    Arrays.fill(left, 0, frames, 0);
    Arrays.fill(right, 0, frames, 0);
    hand.collect(frame + frames, sounding);
    voice.collect(frame + frames, sounding);
    breath.collect(frame + frames, sounding);
    for (Sounding sound : sounding) {
      sound.addTo(left, right, frame, frames);
    }
    drone.ifPresent(part -> part.addTo(left, right, frame, frames));
    long end = frame + frames;
    sounding.removeIf(sound -> sound.endsBy(end));
    startSoftly(left, right, frames);
    frame = end;
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
