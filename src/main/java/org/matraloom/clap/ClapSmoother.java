package org.matraloom.clap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the places of a grid fall, by the claps that were heard at some of them.
 *
 * <p>Phase and period wander at random (A. M. Wing and A. B. Kristofferson, Percept. Psychophys. 14
 * (1973) 5-12, have the two sources of scatter: a clock and the hand); a fixed-interval smoother
 * (H. E. Rauch, F. Tung and C. T. Striebel, AIAA J. 3 (1965) 1445-1450) takes claps before and
 * after into account. How much it wanders and how far a hand is off is what makes the claps
 * likeliest; a machine that does not wander is taken for one, and then the grid is a straight line.
 */
final class ClapSmoother {

  /** How far a clap is off its place. */
  private static final double[] HAND_SECONDS = {0.0015, 0.003, 0.006, 0.010, 0.016};

  /** What is steady is a machine, and no farther off than this. */
  private static final double MACHINE_SECONDS = 0.003;

  /** Wander from one place to the next: of the phase in seconds, of the period as a share of it. */
  private static final double[][] WANDERS = {
    {0, 0}, {0, 0.0005}, {0, 0.0015}, {0, 0.004}, {0.003, 0.0005}, {0.006, 0.001}
  };

  /** So much likelier must a beat that wanders be, as a logarithm. */
  private static final double FOR_WANDER = 2;

  /** A wander that is so much less likely than the likeliest is not excluded, as a logarithm. */
  private static final double NEARLY = 3;

  private static final double START_SECONDS = 0.030;
  private static final double START_PERIOD = 0.02;

  private final List<ClapTrack.Clap> claps;
  private final int first;
  private final int last;
  private final double period;

  /**
   * Takes the claps.
   *
   * @param claps in order of time, at least two
   * @param first the first place that is asked for, not after the first clap
   * @param last the last place that is asked for, not before the last clap
   */
  ClapSmoother(List<ClapTrack.Clap> claps, int first, int last) {
    this.claps = claps;
    this.first = first;
    this.last = last;
    ClapTrack.Clap begin = claps.get(0);
    ClapTrack.Clap end = claps.get(claps.size() - 1);
    this.period = (end.seconds() - begin.seconds()) / (end.place() - begin.place());
  }

  /**
   * Where the places fall.
   *
   * @param seconds when each falls, from the first to the last
   * @param spreadSeconds how well each is known, as a standard deviation
   */
  record Smooth(double[] seconds, double[] spreadSeconds) {}

  /**
   * Smooths the claps.
   *
   * @return what the likeliest wander says; how well it is known by the widest wander that is
   *     nearly as likely, as few claps hardly tell a hand from a machine
   */
  Smooth smooth() {
    List<Pass> passes = new ArrayList<>();
    for (double[] wander : WANDERS) {
      Pass likeliest = new Pass(0, 0, 1);
      likeliest.likelihood = Double.NEGATIVE_INFINITY;
      for (double hand : HAND_SECONDS) {
        if (wander == WANDERS[0] && hand > MACHINE_SECONDS) {
          continue;
        }
        Pass pass = new Pass(wander[0], wander[1] * period, hand);
        pass.forward();
        if (pass.likelihood > likeliest.likelihood) {
          likeliest = pass;
        }
      }
      passes.add(likeliest);
    }
    Pass best = passes.get(0);
    for (Pass pass : passes.subList(1, passes.size())) {
      if (pass.likelihood - FOR_WANDER > best.likelihood) {
        best = pass;
      }
    }
    double[] spread = new double[last - first + 1];
    for (Pass pass : passes) {
      if (pass == best || pass.likelihood > best.likelihood - NEARLY) {
        double[] each = pass.backward().spreadSeconds();
        Arrays.setAll(spread, i -> Math.max(spread[i], each[i]));
      }
    }
    return new Smooth(best.backward().seconds(), spread);
  }

  private final class Pass {
    private final double phaseChange;
    private final double periodChange;
    private final double hand;
    private final double[][] before = new double[last - first + 1][];
    private final double[][] after = new double[last - first + 1][];
    private double likelihood;

    Pass(double phaseChange, double periodChange, double hand) {
      this.phaseChange = phaseChange * phaseChange;
      this.periodChange = periodChange * periodChange;
      this.hand = hand * hand;
    }

    /** States are phase, period, and the variances of the phase, of both, of the period. */
    void forward() {
      ClapTrack.Clap begin = claps.get(0);
      double off = START_PERIOD * period;
      double reach = begin.place() - first;
      double[] state = {
        begin.seconds() - reach * period,
        period,
        START_SECONDS * START_SECONDS + reach * reach * off * off,
        -reach * off * off,
        off * off
      };
      int next = 0;
      for (int i = 0; i < before.length; i++) {
        before[i] = state.clone();
        if (next < claps.size() && claps.get(next).place() == first + i) {
          likelihood += correct(state, claps.get(next).seconds());
          next++;
        }
        after[i] = state.clone();
        state[0] += state[1];
        state[2] += 2 * state[3] + state[4] + phaseChange;
        state[3] += state[4];
        state[4] += periodChange;
      }
    }

    private double correct(double[] state, double seconds) {
      double variance = state[2] + hand;
      double off = seconds - state[0];
      double gain = state[2] / variance;
      double periodGain = state[3] / variance;
      state[0] += gain * off;
      state[1] += periodGain * off;
      state[4] -= periodGain * state[3];
      state[3] -= gain * state[3];
      state[2] -= gain * state[2];
      return -0.5 * (off * off / variance + Math.log(variance));
    }

    Smooth backward() {
      double[] seconds = new double[after.length];
      double[] spread = new double[after.length];
      double[] state = after[after.length - 1].clone();
      for (int i = after.length - 1; i >= 0; i--) {
        if (i < after.length - 1) {
          state = smoothed(after[i], before[i + 1], state);
        }
        seconds[i] = state[0];
        spread[i] = Math.sqrt(Math.max(0, state[2]));
      }
      return new Smooth(seconds, spread);
    }

    /** One step back: what is known here, what was due next, and what is known of the next. */
    private double[] smoothed(double[] here, double[] due, double[] next) {
      double determinant = due[2] * due[4] - due[3] * due[3];
      double a = here[2] + here[3];
      double c = here[3] + here[4];
      double phaseByPhase = (a * due[4] - here[3] * due[3]) / determinant;
      double phaseByPeriod = (here[3] * due[2] - a * due[3]) / determinant;
      double periodByPhase = (c * due[4] - here[4] * due[3]) / determinant;
      double periodByPeriod = (here[4] * due[2] - c * due[3]) / determinant;
      double phase = next[2] - due[2];
      double both = next[3] - due[3];
      double period = next[4] - due[4];
      return new double[] {
        here[0] + phaseByPhase * (next[0] - due[0]) + phaseByPeriod * (next[1] - due[1]),
        here[1] + periodByPhase * (next[0] - due[0]) + periodByPeriod * (next[1] - due[1]),
        here[2]
            + phaseByPhase * (phaseByPhase * phase + 2 * phaseByPeriod * both)
            + phaseByPeriod * phaseByPeriod * period,
        here[3]
            + phaseByPhase * (periodByPhase * phase + periodByPeriod * both)
            + phaseByPeriod * (periodByPhase * both + periodByPeriod * period),
        here[4]
            + periodByPhase * (periodByPhase * phase + 2 * periodByPeriod * both)
            + periodByPeriod * periodByPeriod * period
      };
    }
  }
}
