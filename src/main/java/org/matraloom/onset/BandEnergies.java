package org.matraloom.onset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.recording.Recording;

/**
 * The energy of a recording in bands of hearing, {@value #STEPS_PER_SECOND} times a second.
 *
 * <p>Windows of 12 ms are short enough to keep a burst apart from the vowel after it. The {@value
 * #BANDS} bands lie evenly on the mel scale (O'Shaughnessy, "Speech Communication", 1987) from 200
 * to 8000 Hz at every sample rate; those above what the rate can carry stay empty.
 */
public final class BandEnergies {

  /** How many bands there are, from the lowest to the highest. */
  public static final int BANDS = HearingBands.BANDS;

  static final int STEPS_PER_SECOND = HearingBands.STEPS_PER_SECOND;

  private static final int CHUNK_STEPS = 4_096;

  private final int ratePerSecond;
  private final HearingBands hearing;
  private final List<float[]> chunks = new ArrayList<>();
  private int steps;
  private float peak;
  private long lengthFrames;

  /** Nothing has been heard. */
  BandEnergies(int ratePerSecond) {
    this.ratePerSecond = ratePerSecond;
    hearing = HearingBands.at(ratePerSecond);
  }

  /**
   * Listens to a whole recording.
   *
   * @throws IOException if it cannot be read to its end
   */
  static BandEnergies of(Recording recording) throws IOException {
    BandEnergies energies = new BandEnergies(recording.ratePerSecond());
    energies.lengthFrames = new EnergyAnalysis(energies).run(recording);
    return energies;
  }

  /** The bands at this sample rate. */
  HearingBands hearing() {
    return hearing;
  }

  /**
   * The next window.
   *
   * @param from where its energies are, one for each band that is used
   * @param at the place of the first
   */
  void add(float[] from, int at) {
    if (steps % CHUNK_STEPS == 0) {
      chunks.add(new float[CHUNK_STEPS * BANDS]);
    }
    System.arraycopy(
        from, at, chunks.get(steps / CHUNK_STEPS), steps % CHUNK_STEPS * BANDS, usedBands());
    steps++;
  }

  /** What is new in a window, for the largest sample. */
  void loudness(float[] window) {
    int frames = hearing.windowFrames();
    for (int i = frames - hearing.stepFrames(); i < frames; i++) {
      peak = Math.max(peak, Math.abs(window[i]));
    }
  }

  /** The sound has ended after so many frames. */
  void end(long frames) {
    lengthFrames = frames;
  }

  /**
   * How many bands the sample rate can carry.
   *
   * @return bands, at most {@link #BANDS}
   */
  public int usedBands() {
    return hearing.bands().size();
  }

  /**
   * The number of windows.
   *
   * @return windows
   */
  public int steps() {
    return steps;
  }

  /** The largest sample, full scale at 1. */
  float peak() {
    return peak;
  }

  /**
   * The mean energy of a band's spectrum lines in one window; a full-scale sine gives about 0.1.
   *
   * <p>Windows that reach over an end of the recording repeat the nearest whole one: where a
   * recording is cut, nothing begins.
   *
   * @param step which window, from 0
   * @param band which band, from 0
   * @return energy, not in decibels
   */
  public float energy(int step, int band) {
    int first = hearing.windowsCutOff();
    int last = (int) (lengthFrames / hearing.stepFrames()) - 1;
    int whole = Math.max(0, Math.min(last, Math.max(first, step)));
    return chunks.get(whole / CHUNK_STEPS)[whole % CHUNK_STEPS * BANDS + band];
  }

  /**
   * The length of the recording.
   *
   * @return frames at its own rate
   */
  public long lengthFrames() {
    return lengthFrames;
  }

  /** The length of the recording. */
  double lengthSeconds() {
    return (double) lengthFrames / ratePerSecond;
  }

  /**
   * The middle of a window, in seconds; the first windows reach back before the recording.
   *
   * @param step which window, from 0, or a place between two
   * @return seconds from the beginning of the recording; negative for the first windows
   */
  public double secondsAt(double step) {
    return hearing.middleFrame(step) / ratePerSecond;
  }

  /** The window whose middle is nearest to a moment; the first or the last outside. */
  int stepAt(double seconds) {
    double step =
        (seconds * ratePerSecond + hearing.windowFrames() / 2.0) / hearing.stepFrames() - 1;
    return (int) Math.max(0, Math.min(steps - 1, Math.round(step)));
  }
}
