package org.matraloom.onset;

import java.util.Arrays;
import java.util.Optional;
import org.matraloom.pulse.RobustStatistics;

/** How loud a recording is at every moment: the loudest wide band, in decibels above its floor. */
public final class SoundLevels {

  /** The level of an onset is looked for over so many steps: until the vowel after a breath. */
  static final int ATTACK_STEPS = 25;

  /** What is so far below the usual onset, in decibels, is quiet. */
  static final double QUIET_DB = 18;

  /** Nothing is quieter, in decibels above the floor, than the noise in which it stands. */
  private static final double NOISE_DB = 5;

  /** The burst and the vowel after an onset, in steps from it. */
  private static final int[][] COLOUR_STEPS = {{0, 5}, {8, 20}};

  /** A {@linkplain #colour colour} has so many parts. */
  public static final int COLOUR_PARTS = COLOUR_STEPS.length;

  private static final double SMALLEST_ENERGY = 1e-12;

  /** A rise is measured from so many steps before a moment to so many after it. */
  private static final int RISE_STEPS = 2;

  private final BandEnergies energies;
  private final float[] levelDb;

  /**
   * Keeps the levels.
   *
   * @param energies knows when each step is
   * @param levelDb one for each step
   */
  SoundLevels(BandEnergies energies, float[] levelDb) {
    this.energies = energies;
    this.levelDb = levelDb;
  }

  /**
   * The energies that the levels were taken from.
   *
   * @return the energies
   */
  public BandEnergies energies() {
    return energies;
  }

  /**
   * A stretch that stays quiet.
   *
   * @param fromSeconds where it begins, from the beginning of the recording
   * @param seconds how long it is
   */
  public record Quiet(double fromSeconds, double seconds) {}

  /**
   * A moment at which the sound grows.
   *
   * @param seconds the moment, from the beginning of the recording
   * @param db by how much, the mean of all bands, in decibels; bands that fall count as level
   */
  public record Rise(double seconds, double db) {}

  /**
   * The moment between two at which the sound grows most.
   *
   * @param fromSeconds the first moment, in seconds from the beginning of the recording
   * @param toSeconds the last moment, in the same
   * @return the steepest rise; of equal ones the first
   */
  public Rise steepestRise(double fromSeconds, double toSeconds) {
    int steepest = energies.stepAt(fromSeconds);
    double most = riseDb(steepest);
    for (int step = steepest + 1; step <= energies.stepAt(toSeconds); step++) {
      double here = riseDb(step);
      if (here > most) {
        most = here;
        steepest = step;
      }
    }
    return new Rise(energies.secondsAt(steepest), most);
  }

  private double riseDb(int step) {
    double sum = 0;
    for (int band = 0; band < energies.usedBands(); band++) {
      double after = energies.energy(step + RISE_STEPS, band) + SMALLEST_ENERGY;
      double before = energies.energy(step - RISE_STEPS, band) + SMALLEST_ENERGY;
      sum += Math.max(0, 10 * StrictMath.log10(after / before));
    }
    return sum / energies.usedBands();
  }

  /**
   * The longest stretch between two moments that stays under a level.
   *
   * @param fromSeconds the first moment, in seconds from the beginning of the recording
   * @param toSeconds the last moment, in the same
   * @param underDb the level, in decibels above the floor
   * @return the stretch; empty if it is never so quiet
   */
  public Optional<Quiet> longestQuiet(double fromSeconds, double toSeconds, double underDb) {
    int to = energies.stepAt(toSeconds);
    int begin = energies.stepAt(fromSeconds);
    int longest = 0;
    int longestFrom = begin;
    for (int step = begin; step <= to; step++) {
      if (step == to || levelDb[step] >= underDb) {
        if (step - begin > longest) {
          longest = step - begin;
          longestFrom = begin;
        }
        begin = step + 1;
      }
    }
    double from = energies.secondsAt(longestFrom);
    return longest == 0
        ? Optional.empty()
        : Optional.of(new Quiet(from, energies.secondsAt(longestFrom + longest) - from));
  }

  /**
   * The level of what begins at a moment.
   *
   * @param seconds the moment, in seconds from the beginning of the recording
   * @return decibels above the floor
   */
  public double attackDb(double seconds) {
    int from = energies.stepAt(seconds);
    return highestDb(from, from + ATTACK_STEPS);
  }

  /**
   * The highest level between two moments.
   *
   * @param fromSeconds the first moment, in seconds from the beginning of the recording
   * @param toSeconds the last moment, in the same
   * @return decibels above the floor
   */
  public double highestDb(double fromSeconds, double toSeconds) {
    int from = Math.max(0, energies.stepAt(fromSeconds));
    return highestDb(from, Math.max(from + 1, energies.stepAt(toSeconds)));
  }

  /**
   * What is below this, in decibels above the floor, is quiet beside what begins at moments.
   *
   * @param onsetSeconds the moments, in seconds from the beginning of the recording
   * @return decibels above the floor
   */
  public double quietDb(double[] onsetSeconds) {
    return Math.max(
        NOISE_DB,
        RobustStatistics.median(Arrays.stream(onsetSeconds).map(this::attackDb).toArray())
            - QUIET_DB);
  }

  /** The highest level from one step up to another, which is left out. */
  double highestDb(int fromStep, int toStep) {
    float highest = 0;
    for (int step = fromStep; step < Math.min(levelDb.length, toStep); step++) {
      highest = Math.max(highest, levelDb[step]);
    }
    return highest;
  }

  /**
   * The colour of what begins at a moment: for the burst and for the vowel, how loud each band is
   * beside the others, in tens of decibels.
   *
   * @param seconds the moment, in seconds from the beginning of the recording
   * @return the burst's bands, then the vowel's
   */
  public double[] colour(double seconds) {
    int bands = energies.usedBands();
    double[] colour = new double[bands * COLOUR_STEPS.length];
    int onset = energies.stepAt(seconds);
    for (int part = 0; part < COLOUR_STEPS.length; part++) {
      double mean = 0;
      for (int band = 0; band < bands; band++) {
        double sum = SMALLEST_ENERGY;
        for (int step = COLOUR_STEPS[part][0]; step < COLOUR_STEPS[part][1]; step++) {
          sum += energies.energy(Math.min(energies.steps() - 1, onset + step), band);
        }
        colour[part * bands + band] = StrictMath.log10(sum);
        mean += colour[part * bands + band] / bands;
      }
      for (int band = 0; band < bands; band++) {
        colour[part * bands + band] -= mean;
      }
    }
    return colour;
  }
}
