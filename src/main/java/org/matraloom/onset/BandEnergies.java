package org.matraloom.onset;

import be.tarsos.dsp.AudioDispatcher;
import be.tarsos.dsp.AudioEvent;
import be.tarsos.dsp.AudioProcessor;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.matraloom.recording.Recording;

/**
 * The energy of a recording in bands of hearing, {@value #STEPS_PER_SECOND} times a second.
 *
 * <p>Windows of 12 ms are short enough to keep a burst apart from the vowel after it. The {@value
 * #BANDS} bands lie evenly on the mel scale (O'Shaughnessy, "Speech Communication", 1987) from 200
 * to 8000 Hz at every sample rate; those above what the rate can carry stay empty.
 */
public final class BandEnergies implements AudioProcessor {

  /** How many bands there are, from the lowest to the highest. */
  public static final int BANDS = HearingBands.BANDS;

  static final int STEPS_PER_SECOND = HearingBands.STEPS_PER_SECOND;

  private static final int CHUNK_STEPS = 4_096;

  /** So many windows are gathered before all processors share them; a divisor of a chunk. */
  private static final int GATHERED_STEPS = 512;

  private final int ratePerSecond;
  private final HearingBands hearing;
  private final int windowFrames;
  private final int stepFrames;
  private final float[] gathered;
  private final List<WindowAnalysis> workers;
  private final List<float[]> chunks = new ArrayList<>();
  private int steps;
  private int waiting;
  private float peak;
  private long lengthFrames;

  BandEnergies(int ratePerSecond) {
    this.ratePerSecond = ratePerSecond;
    hearing = HearingBands.at(ratePerSecond);
    windowFrames = hearing.windowFrames();
    stepFrames = hearing.stepFrames();
    gathered = new float[GATHERED_STEPS * windowFrames];
    workers =
        Stream.generate(hearing::analysis)
            .limit(Runtime.getRuntime().availableProcessors())
            .toList();
  }

  /**
   * Runs a whole recording through the dispatcher.
   *
   * @throws IOException if it cannot be read to its end
   */
  static BandEnergies of(Recording recording) throws IOException {
    BandEnergies energies = new BandEnergies(recording.ratePerSecond());
    RecordingStream stream = new RecordingStream(recording, energies.windowFrames);
    AudioDispatcher dispatcher =
        new AudioDispatcher(
            stream, energies.windowFrames, energies.windowFrames - energies.stepFrames);
    dispatcher.setZeroPadFirstBuffer(true);
    dispatcher.addAudioProcessor(energies);
    dispatcher.run();
    if (stream.failure().isPresent()) {
      throw stream.failure().get();
    }
    energies.lengthFrames = stream.frames();
    return energies;
  }

  @Override
  public boolean process(AudioEvent event) {
    float[] buffer = event.getFloatBuffer();
    for (int i = windowFrames - stepFrames; i < windowFrames; i++) {
      peak = Math.max(peak, Math.abs(buffer[i]));
    }
    System.arraycopy(buffer, 0, gathered, waiting * windowFrames, windowFrames);
    waiting++;
    if (waiting == GATHERED_STEPS) {
      analyse();
    }
    return true;
  }

  @Override
  public void processingFinished() {
    analyse();
  }

  /** Every window for itself, so it does not matter which processor takes which. */
  private void analyse() {
    if (steps % CHUNK_STEPS == 0) {
      chunks.add(new float[CHUNK_STEPS * BANDS]);
    }
    float[] chunk = chunks.get(chunks.size() - 1);
    int first = steps % CHUNK_STEPS;
    int share = (waiting + workers.size() - 1) / workers.size();
    IntStream.range(0, workers.size())
        .parallel()
        .forEach(
            worker -> {
              int end = Math.min(waiting, (worker + 1) * share);
              for (int step = worker * share; step < end; step++) {
                workers
                    .get(worker)
                    .put(gathered, step * windowFrames, chunk, (first + step) * BANDS);
              }
            });
    steps += waiting;
    waiting = 0;
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
    int last = (int) (lengthFrames / stepFrames) - 1;
    int whole = Math.max(0, Math.min(last, Math.max(first, step)));
    return chunks.get(whole / CHUNK_STEPS)[whole % CHUNK_STEPS * BANDS + band];
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
    double step = (seconds * ratePerSecond + windowFrames / 2.0) / stepFrames - 1;
    return (int) Math.max(0, Math.min(steps - 1, Math.round(step)));
  }
}
