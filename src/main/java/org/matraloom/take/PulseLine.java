package org.matraloom.take;

import java.util.Arrays;

/**
 * Where the beats of a take fall: {@code time = begin + length x + growth x²}, {@code x} being the
 * beats since the first that was said. Every run of the take has its own beginning.
 */
public final class PulseLine {

  private final double firstBeat;
  private final double lengthSeconds;
  private final double growthSeconds;
  private final double[] beginSeconds;

  /**
   * A line.
   *
   * @param firstBeat the beat from which {@code x} is counted
   * @param lengthSeconds the length of a beat there, above 0
   * @param growthSeconds the coefficient of {@code x²}
   * @param beginSeconds where the first beat falls or would have fallen, for each run
   */
  PulseLine(double firstBeat, double lengthSeconds, double growthSeconds, double... beginSeconds) {
    this.firstBeat = firstBeat;
    this.lengthSeconds = lengthSeconds;
    this.growthSeconds = growthSeconds;
    this.beginSeconds = beginSeconds.clone();
  }

  /**
   * Where a position falls.
   *
   * @param beat beats of the performance
   * @param run which run of the take, from 1
   * @return seconds from the beginning of the recording
   */
  public double secondsAt(double beat, int run) {
    double x = beat - firstBeat;
    return beginSeconds[run - 1] + x * (lengthSeconds + x * growthSeconds);
  }

  /**
   * The length of a beat.
   *
   * @param beat beats of the performance
   * @return seconds
   */
  public double beatSeconds(double beat) {
    return lengthSeconds + 2 * growthSeconds * (beat - firstBeat);
  }

  /**
   * How many runs there are: one more than restarts.
   *
   * @return at least 1
   */
  public int runs() {
    return beginSeconds.length;
  }

  @Override
  public String toString() {
    return "PulseLine["
        + firstBeat
        + ", "
        + lengthSeconds
        + ", "
        + growthSeconds
        + ", "
        + Arrays.toString(beginSeconds)
        + "]";
  }
}
