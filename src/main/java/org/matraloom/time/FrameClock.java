package org.matraloom.time;

/**
 * Turns exact positions into frames and seconds for one tempo and one sample rate.
 *
 * <p>Frame 0 is the origin, a position in beats. Every position is converted on its own, rounded
 * half up, so no error adds up along a piece and a change of nadai cannot move a beat.
 *
 * @param tempo the tempo of the beat
 * @param ratePerSecond frames a second, from 8000 to 192000
 * @param originBeat the position, in beats, that is frame 0
 */
public record FrameClock(Tempo tempo, int ratePerSecond, Ratio originBeat) {

  /**
   * Checks the rate.
   *
   * @throws IllegalArgumentException if the rate is outside 8000 to 192000
   */
  public FrameClock {
    if (ratePerSecond < 8_000 || ratePerSecond > 192_000) {
      throw new IllegalArgumentException(
          "sample rate " + ratePerSecond + " is outside 8000 to 192000 frames a second");
    }
  }

  /**
   * The frame nearest to a position, rounded half up.
   *
   * @param beat a position in beats, before or after the origin
   * @return frames from the origin; negative before it
   * @throws ArithmeticException if the frame does not fit a {@code long}
   */
  public long frameAt(Ratio beat) {
    return framesIn(beat.minus(originBeat));
  }

  /**
   * The whole number of frames nearest to a length, rounded half up.
   *
   * <p>For lengths that stand alone (a fade, a buffer). The length of something placed on the grid
   * is the difference of two {@link #frameAt} values.
   *
   * @param beats a length in beats
   * @return frames
   * @throws ArithmeticException if the result does not fit a {@code long}
   */
  public long framesIn(Ratio beats) {
    return tempo.unitsOf(beats, ratePerSecond);
  }

  /**
   * Seconds from the origin to a position, for printing.
   *
   * @param beat a position in beats
   * @return seconds; negative before the origin
   */
  public double secondsAt(Ratio beat) {
    return tempo.secondsOf(beat.minus(originBeat)).toDouble();
  }

  /**
   * How long so many frames last.
   *
   * @param frames a length in frames
   * @param ratePerSecond frames a second
   * @return seconds
   */
  public static double seconds(long frames, int ratePerSecond) {
    return (double) frames / ratePerSecond;
  }

  /**
   * The whole beat that is going on at a frame.
   *
   * @param frame frames from the origin
   * @return the last whole number of beats after the origin that falls on the frame or before it
   */
  public long beatsBefore(long frame) {
    double seconds = seconds(frame, ratePerSecond);
    long beats = (long) Math.floor(seconds / tempo.secondsOf(Ratio.ONE).toDouble());
    while (framesIn(Ratio.of(beats)) > frame) {
      beats--;
    }
    while (framesIn(Ratio.of(beats + 1)) <= frame) {
      beats++;
    }
    return beats;
  }
}
