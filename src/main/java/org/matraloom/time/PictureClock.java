package org.matraloom.time;

/**
 * Which picture of a film belongs to which frame of its sound.
 *
 * <p>Both are counted from the beginning of the film. A frame is turned into a picture by its own
 * place, rounded once to the nearest, so pictures never drift away from the sound.
 *
 * @param picturesPerSecond pictures a second, 1 to 120
 * @param ratePerSecond frames of sound a second, 8000 to 192000
 */
public record PictureClock(int picturesPerSecond, int ratePerSecond) {

  private static final int MOST_PICTURES = 120;
  private static final long MS_PER_SECOND = 1_000;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public PictureClock {
    if (picturesPerSecond < 1 || picturesPerSecond > MOST_PICTURES) {
      throw new IllegalArgumentException(
          "a film has 1 to " + MOST_PICTURES + " pictures a second, given " + picturesPerSecond);
    }
    if (ratePerSecond < 8_000 || ratePerSecond > 192_000) {
      throw new IllegalArgumentException(
          "sample rate " + ratePerSecond + " is outside 8000 to 192000 frames a second");
    }
  }

  /**
   * The picture that begins nearest to a frame of sound.
   *
   * @param frame frames from the beginning, 0 or more
   * @return pictures from the beginning, rounded half up
   */
  public long pictureAt(long frame) {
    return nearest(frame, picturesPerSecond, ratePerSecond);
  }

  /**
   * The frame of sound nearest to the beginning of a picture.
   *
   * @param picture pictures from the beginning, 0 or more
   * @return frames from the beginning, rounded half up
   */
  public long frameAt(long picture) {
    return nearest(picture, ratePerSecond, picturesPerSecond);
  }

  /**
   * How many frames of sound fill a whole number of seconds.
   *
   * @param seconds a length in seconds
   * @return frames
   */
  public long framesIn(int seconds) {
    return Math.multiplyExact((long) seconds, ratePerSecond);
  }

  /**
   * How many pictures are needed for so many frames of sound.
   *
   * @param frames a length from the beginning
   * @return pictures, the last one begun included
   */
  public long picturesFor(long frames) {
    long whole = Math.multiplyExact(frames, (long) picturesPerSecond);
    return -Math.floorDiv(-whole, (long) ratePerSecond);
  }

  /**
   * When a frame is heard, for lists that count in thousandths of a second.
   *
   * @param frame frames from the beginning
   * @return ms, rounded half up
   */
  public long millisecondsAt(long frame) {
    return nearest(frame, MS_PER_SECOND, ratePerSecond);
  }

  private static long nearest(long count, long to, long from) {
    long doubled = Math.multiplyExact(Math.multiplyExact(count, to), 2);
    return Math.floorDiv(doubled + from, 2 * from);
  }
}
