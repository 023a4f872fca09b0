package org.matraloom.sound;

/**
 * Lays the drone under a rendering, where its frames lie in the track, and lets it out at the end.
 *
 * <p>A change of the mix moves its level within {@value #GLIDE_MS} ms.
 */
final class DronePart {

  private static final int GLIDE_MS = 20;

  private final SrutiDrone drone;
  private final TrackPlace place;
  private final int fadeFrames;
  private final int glideFrames;
  private Mix.Gains gains;
  private Mix.Gains before;
  private int glided;

  DronePart(SrutiDrone drone, TrackPlace place, Mix mix) {
    this.drone = drone;
    this.place = place;
    this.fadeFrames = drone.ratePerSecond();
    this.glideFrames = drone.ratePerSecond() * GLIDE_MS / 1000;
    this.gains = gains(mix);
    this.before = gains;
    this.glided = glideFrames;
  }

  /** Takes the level of another mix; one that is on its way already goes on from where it is. */
  void mix(Mix mix) {
    before =
        new Mix.Gains(gliding(before.left(), gains.left()), gliding(before.right(), gains.right()));
    gains = gains(mix);
    glided = 0;
  }

  private static Mix.Gains gains(Mix mix) {
    return mix.sounds(MixPart.DRONE) ? mix.gains(MixPart.DRONE, 0) : new Mix.Gains(0, 0);
  }

  private float gliding(float from, float to) {
    return glided == glideFrames ? to : from + (to - from) * glided / glideFrames;
  }

  private boolean isSilent() {
    return glided == glideFrames && gains.left() == 0 && gains.right() == 0;
  }

  void addTo(float[] left, float[] right, long blockFrame, int frames) {
    if (isSilent()) {
      return;
    }
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
      left[i] += gliding(before.left(), gains.left()) * sample;
      right[i] += gliding(before.right(), gains.right()) * sample;
      glided = Math.min(glideFrames, glided + 1);
    }
  }
}
