package org.matraloom.sound;

/**
 * Where a rendering lies in the track that it belongs to.
 *
 * @param startFrame the frame of the track at which it begins, 0 or more
 * @param trackFrames how long the whole track is, in frames
 */
public record TrackPlace(long startFrame, long trackFrames) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the rendering begins before or after the track
   */
  public TrackPlace {
    if (startFrame < 0 || startFrame > trackFrames) {
      throw new IllegalArgumentException(
          "a rendering begins inside its track of " + trackFrames + " frames, given " + startFrame);
    }
  }

  /**
   * The place of a rendering that is a track by itself.
   *
   * @param frames its length in frames
   * @return from frame 0 to its end
   */
  public static TrackPlace whole(long frames) {
    return new TrackPlace(0, frames);
  }
}
