package org.matraloom.onset;

import be.tarsos.dsp.AudioDispatcher;
import be.tarsos.dsp.AudioEvent;
import be.tarsos.dsp.AudioProcessor;
import java.io.IOException;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.matraloom.recording.Recording;

/**
 * Finds onsets while a sound goes on: each is told {@value #DELAY_MS} ms after it, by the same nets
 * as in {@link OnsetCurve}.
 *
 * <p>What differs from a recording that is looked at as a whole: the nets see 40 ms of what comes
 * after a moment instead of 112, and the level that was heard last stands for the rest; the floor
 * and the usual loudness are those of the sound so far; the pulse and the hum of a voiced stop have
 * no say. A surer onset within 50 ms takes the place of the one before it.
 */
public final class LiveOnsets implements AudioProcessor {

  /** How long after a sound its onset is told, in milliseconds of sound. */
  public static final int DELAY_MS = 66;

  /**
   * So many steps after a moment are looked at; with 8 one own sollu in thirty is more than 15 ms
   * off what the whole take tells, with 10 one in sixty.
   */
  private static final int AHEAD_STEPS = 10;

  /** The nets' answer is awaited for so many steps after a peak. */
  private static final int TAIL_STEPS = 5;

  /** The nets look back over so many steps, and more. */
  private static final int KEPT_STEPS = 128;

  /** The answers that are kept; a peak is looked for in the middle of them. */
  private static final int KEPT_ANSWERS = 32;

  /** The floor is found anew after so many steps, a fifth of a second. */
  private static final int FLOOR_STEPS = 50;

  /**
   * Before anything was said the loudest band is taken to be this strong, 40 dB under a sine at
   * full scale; otherwise the first breath in digital silence would be a shout.
   */
  private static final double ASSUMED_PEAK = 1e-5;

  private final int ratePerSecond;
  private final BandEnergies whole;
  private final HearingBands hearing;
  private final WindowAnalysis analysis;
  private final Consumer<Onset> listener;
  private final float[] energies;
  private final EnergyHistogram[] heard;
  private final OnsetFeatures features = new OnsetFeatures(KEPT_STEPS);
  private final OnsetNet net = OnsetNet.load();
  private final float[] answers = new float[KEPT_ANSWERS];
  private final OnsetPeaks peaks = new OnsetPeaks(answers);
  private final UsualLevel usual = new UsualLevel();

  private float[] floor;
  private int steps;
  private int lastStep = -OnsetCurve.LEAST_STEPS;
  private double lastConfidence;

  private LiveOnsets(int ratePerSecond, Consumer<Onset> listener) {
    this.ratePerSecond = ratePerSecond;
    this.whole = new BandEnergies(ratePerSecond);
    this.hearing = whole.hearing();
    this.analysis = hearing.analysis();
    this.listener = listener;
    this.energies = new float[hearing.bands().size()];
    this.heard =
        Stream.generate(EnergyHistogram::new)
            .limit(energies.length)
            .toArray(EnergyHistogram[]::new);
    this.floor = BandFloor.of(heard, ASSUMED_PEAK);
  }

  /**
   * Listens until the sound ends; TarsosDSP's dispatcher cuts it into windows.
   *
   * @param sound gives what has been heard so far and waits for more
   * @param listener told each onset, in seconds from the beginning of the sound, by this thread
   * @return what {@link OnsetCurve} needs of the whole sound, which need not be looked at again
   * @throws IOException if the sound breaks off
   */
  public static BandEnergies listen(Recording sound, Consumer<Onset> listener) throws IOException {
    LiveOnsets live = new LiveOnsets(sound.ratePerSecond(), listener);
    RecordingStream stream = new RecordingStream(sound, live.hearing.windowFrames());
    AudioDispatcher dispatcher =
        new AudioDispatcher(
            stream,
            live.hearing.windowFrames(),
            live.hearing.windowFrames() - live.hearing.stepFrames());
    dispatcher.setZeroPadFirstBuffer(true);
    dispatcher.addAudioProcessor(live);
    dispatcher.run();
    if (stream.failure().isPresent()) {
      throw stream.failure().get();
    }
    live.whole.end(stream.frames());
    return live.whole;
  }

  @Override
  public boolean process(AudioEvent event) {
    analysis.put(event.getFloatBuffer(), 0, energies, 0);
    whole.loudness(event.getFloatBuffer());
    whole.add(energies, 0);
    if (steps >= hearing.windowsCutOff()) {
      learn();
    }
    features.add(energies, floor);
    steps++;
    System.arraycopy(answers, 1, answers, 0, KEPT_ANSWERS - 1);
    int judged = steps - 1 - AHEAD_STEPS;
    boolean mayBegin = judged >= hearing.windowsCutOff() && features.rises(judged);
    answers[KEPT_ANSWERS - 1] = mayBegin ? net.judge(features, judged) : 0;
    peaks
        .peakAt(KEPT_ANSWERS - 1 - TAIL_STEPS, OnsetCurve.USUAL_CONFIDENCE)
        .ifPresent(peak -> found(peak, judged - KEPT_ANSWERS + 1));
    return true;
  }

  private void learn() {
    for (int b = 0; b < energies.length; b++) {
      heard[b].add(energies[b]);
    }
    if (steps % FLOOR_STEPS == 0) {
      floor = BandFloor.of(heard, ASSUMED_PEAK);
    }
  }

  private void found(OnsetPeaks.Peak peak, int firstStep) {
    int step = peak.step() + firstStep;
    boolean isSurer =
        step - lastStep >= OnsetCurve.LEAST_STEPS || peak.confidence() > lastConfidence;
    if (isSurer && usual.isNotFaint(levelDb(step), peak.confidence())) {
      lastStep = step;
      lastConfidence = peak.confidence();
      double frame = hearing.middleFrame(peak.centre() + firstStep);
      listener.accept(new Onset(Math.max(0, frame) / ratePerSecond, peak.confidence()));
    }
  }

  private double levelDb(int from) {
    double highest = 0;
    for (int step = from; step < steps; step++) {
      highest = Math.max(highest, features.highestLevelDb(step));
    }
    return highest;
  }

  @Override
  public void processingFinished() {
    // What began in the last 66 ms stays untold: the pass is over.
  }

  /** How loud the sure onsets are; what is far fainter than most of the last ones is none. */
  private static final class UsualLevel {
    private static final int KEPT = 33;

    private final double[] levelsDb = new double[KEPT];
    private int count;

    boolean isNotFaint(double levelDb, double confidence) {
      if (confidence >= OnsetCurve.SURE_CONFIDENCE) {
        levelsDb[count++ % KEPT] = levelDb;
      }
      int known = Math.min(count, KEPT);
      double[] sorted = Arrays.copyOf(levelsDb, known);
      Arrays.sort(sorted);
      return known == 0 || levelDb >= sorted[known / 2] - OnsetCurve.FAINT_DB;
    }
  }
}
