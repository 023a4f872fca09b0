package org.matraloom.sound;

/**
 * Lays the drone under a rendering, where its frames lie in the track, and lets it out at the end.
 */
final class DronePart {

  private final SrutiDrone drone;
  private final TrackPlace place;
  private final Mix.Gains gains;
  private final int fadeFrames;

  DronePart(SrutiDrone drone, TrackPlace place, Mix mix) {
    this.drone = drone;
    this.place = place;
    this.gains = mix.gains(Part.DRONE, 0);
    this.fadeFrames = drone.ratePerSecond();
  }

  void addTo(float[] left, float[] right, long blockFrame, int frames) {
    for (int i = 0; i < frames; i++) {
      long frame = place.startFrame() + blockFrame + i;
      long toGo = place.trackFrames() - frame;
      if (toGo <= 0) {
        return;
      }
      float sample = drone.sampleAt(frame);
      if (toGo < fadeFrames) {
        sample *= (float) toGo / fadeFrames;
      }
      left[i] += gains.left() * sample;
      right[i] += gains.right() * sample;
    }
  }
}
