package org.matraloom.pulse;

import java.util.Arrays;

/**
 * Where the beats of a take fall: {@code time = begin + length x + growth x²}, {@code x} being the
 * beats since the first that was said. Every run of the take has its own beginning. A pulse that
 * wanders is later or earlier than that, beat by beat: {@link #wanders()}.
 */
public final class PulseLine {

  private final double firstBeat;
  private final double lengthSeconds;
  private final double growthSeconds;
  private final double[] beginSeconds;
  private final PulseDeviation wander;

  /**
   * A line.
   *
   * @param firstBeat the beat from which {@code x} is counted
   * @param lengthSeconds the length of a beat there, above 0
   * @param growthSeconds the coefficient of {@code x²}
   * @param beginSeconds where the first beat falls or would have fallen, for each run
   */
  public PulseLine(
      double firstBeat, double lengthSeconds, double growthSeconds, double... beginSeconds) {
    this(firstBeat, lengthSeconds, growthSeconds, beginSeconds, PulseDeviation.NONE);
  }

  private PulseLine(
      double firstBeat,
      double lengthSeconds,
      double growthSeconds,
      double[] beginSeconds,
      PulseDeviation wander) {
    this.firstBeat = firstBeat;
    this.lengthSeconds = lengthSeconds;
    this.growthSeconds = growthSeconds;
    this.beginSeconds = beginSeconds.clone();
    this.wander = wander;
  }

  /**
   * The same line with a pulse that wanders about it.
   *
   * @param about how it wanders
   * @return the line with it
   */
  public PulseLine wandering(PulseDeviation about) {
    return new PulseLine(firstBeat, lengthSeconds, growthSeconds, beginSeconds, about);
  }

  /**
   * Whether the pulse wanders about the line so much that every sollu is measured from the pulse
   * around it.
   *
   * @return false if the line alone is the pulse
   */
  public boolean wanders() {
    return wander != PulseDeviation.NONE;
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
    return beginSeconds[run - 1]
        + x * (lengthSeconds + x * growthSeconds)
        + wander.lateSeconds(beat, run);
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
