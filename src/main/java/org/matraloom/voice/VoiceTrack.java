package org.matraloom.voice;

import java.util.Arrays;

/**
 * One parameter over time, as a row of targets that are approached and never overshot.
 *
 * <p>From the moment of a target on, the distance to it shrinks by the factor e in each time
 * constant.
 */
final class VoiceTrack {

  private double[] fromSeconds = new double[4];
  private double[] targets = new double[4];
  private double[] constants = new double[4];
  private int count;

  private int next;
  private double value;
  private double goal;
  private double constant;
  private double keptFor;
  private double kept;

  /** Starts a track at a value. */
  VoiceTrack(double atRest) {
    value = atRest;
    goal = atRest;
  }

  /**
   * Adds a target; one that is earlier than the last added begins with that.
   *
   * @param atSeconds from when on
   * @param target what is approached
   * @param constantSeconds the time constant; 0 for a jump
   */
  void approach(double atSeconds, double target, double constantSeconds) {
    if (count == targets.length) {
      fromSeconds = Arrays.copyOf(fromSeconds, 2 * count);
      targets = Arrays.copyOf(targets, 2 * count);
      constants = Arrays.copyOf(constants, 2 * count);
    }
    fromSeconds[count] = count == 0 ? atSeconds : Math.max(atSeconds, fromSeconds[count - 1]);
    targets[count] = target;
    constants[count] = constantSeconds;
    count++;
  }

  /**
   * Moves on by one step.
   *
   * @param atSeconds the time that is reached, never before that of the last call
   * @param stepSeconds how long the step is
   * @return the value there
   */
  double step(double atSeconds, double stepSeconds) {
    while (next < count && fromSeconds[next] <= atSeconds) {
      goal = targets[next];
      constant = constants[next];
      if (constant == 0) {
        value = goal;
      }
      next++;
    }
    if (value != goal) {
      if (stepSeconds / constant != keptFor) {
        keptFor = stepSeconds / constant;
        kept = StrictMath.exp(-keptFor);
      }
      value = goal + (value - goal) * kept;
    }
    return value;
  }
}
