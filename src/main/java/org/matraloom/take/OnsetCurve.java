package org.matraloom.take;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How likely it is, at every moment of a recording, that a syllable or a stroke begins. */
public final class OnsetCurve {

  /** The confidence from which an onset is reported where no score says what to expect. */
  public static final double USUAL_CONFIDENCE = 0.35;

  /** Judged by the sound alone, what is less sure than this is no onset whatever the pulse. */
  private static final double WORTH_WEIGHING = 0.10;

  /** Two onsets are at least this far apart. */
  static final double LEAST_INTERVAL_SECONDS = 0.050;

  /** No wide band rises by as much as this, in units of 10 dB: nothing begins. */
  private static final float LEAST_RISE = 0.1f;

  /** Rises are looked for this many steps around a moment. */
  private static final int RISE_REACH = 3;

  /** The curve is summed over so many steps to each side, as an onset may be spread in time. */
  private static final int SPREAD = 3;

  /** What the sum is for one certain onset: the targets of the training were so wide. */
  private static final float CERTAIN = 3;

  /** A peak of the summed curve is the highest within so many steps. */
  private static final int PEAK_REACH = 4;

  /**
   * What stays this far below the usual sounds of the take is not of it. The median of recorded
   * strokes and syllables is less than 20 dB above the faintest; knocks and clicks between them are
   * 30 dB down and more.
   */
  private static final double FAINT_DB = 28;

  /** Below this largest sample a recording is silent: -80 dB of full scale. */
  private static final float SILENT_PEAK = 1e-4f;

  private final BandEnergies energies;
  private final float[] likelihood;
  private final SoundLevels levels;
  private final float[] confidence;
  private final double lengthSeconds;

  private OnsetCurve(BandEnergies energies, float[] likelihood, float[] levelDb) {
    this.energies = energies;
    this.likelihood = likelihood;
    this.levels = new SoundLevels(energies, levelDb);
    this.lengthSeconds = energies.lengthSeconds();
    this.confidence = summed(likelihood);
  }

  /**
   * Listens to a recording from its beginning to its end.
   *
   * @param recording the recording; the caller closes it
   * @return its curve
   * @throws IOException if it cannot be read to its end
   */
  public static OnsetCurve of(Recording recording) throws IOException {
    BandEnergies energies = BandEnergies.of(recording);
    float[] likelihood = new float[energies.steps()];
    float[] levelDb = new float[energies.steps()];
    if (energies.peak() >= SILENT_PEAK) {
      OnsetFeatures features = OnsetFeatures.of(energies);
      OnsetNet net = OnsetNet.load();
      for (int step = 0; step < likelihood.length; step++) {
        levelDb[step] = features.highestLevelDb(step);
        if (rises(features, step)) {
          likelihood[step] = net.judge(features, step);
        }
      }
    }
    return new OnsetCurve(energies, likelihood, levelDb);
  }

  private static boolean rises(OnsetFeatures features, int step) {
    for (int s = step - RISE_REACH; s <= step + RISE_REACH; s++) {
      for (int band = 0; band < OnsetFeatures.WIDE_BANDS; band++) {
        if (features.rise(s, band) >= LEAST_RISE) {
          return true;
        }
      }
    }
    return false;
  }

  private static float[] summed(float[] likelihood) {
    float[] sum = new float[likelihood.length];
    for (int step = 0; step < sum.length; step++) {
      int last = Math.min(sum.length - 1, step + SPREAD);
      for (int s = Math.max(0, step - SPREAD); s <= last; s++) {
        sum[step] += likelihood[s] / CERTAIN;
      }
    }
    return sum;
  }

  /**
   * The length of the recording.
   *
   * @return seconds
   */
  public double lengthSeconds() {
    return lengthSeconds;
  }

  /**
   * Whether there is nothing to hear.
   *
   * @return true if no sample is above -80 dB of full scale
   */
  public boolean isSilent() {
    return energies.peak() < SILENT_PEAK;
  }

  /**
   * The onsets of at least some confidence, judged by the sound and by the pulse of those around.
   *
   * @param leastConfidence above 0, to 1; {@link #USUAL_CONFIDENCE} where no score helps
   * @return in order of time, at least 50 ms apart
   */
  public List<Onset> onsets(double leastConfidence) {
    List<Onset> heard = heard(Math.min(leastConfidence, WORTH_WEIGHING));
    PulseSupport pulse =
        new PulseSupport(
            heard.stream().filter(onset -> onset.confidence() >= USUAL_CONFIDENCE).toList());
    return heard.stream()
        .map(pulse::weighed)
        .filter(onset -> onset.confidence() >= leastConfidence)
        .toList();
  }

  /**
   * The onsets of at least some confidence, judged by the sound alone: for one who has a score to
   * go by and wants to know what is off its pulse.
   *
   * @param leastConfidence above 0, to 1
   * @return in order of time, at least 50 ms apart
   */
  List<Onset> heard(double leastConfidence) {
    List<Integer> peaks = new ArrayList<>();
    for (int step = 0; step < confidence.length; step++) {
      if (confidence[step] >= leastConfidence && isPeak(step)) {
        peaks.add(step);
      }
    }
    peaks.sort(Comparator.comparing(step -> -confidence[step]));
    List<Integer> apart = new ArrayList<>();
    boolean[] taken = new boolean[confidence.length];
    int reach = (int) Math.ceil(LEAST_INTERVAL_SECONDS * BandEnergies.STEPS_PER_SECOND) - 1;
    for (int step : peaks) {
      if (!taken[step]) {
        apart.add(step);
        int last = Math.min(taken.length - 1, step + reach);
        Arrays.fill(taken, Math.max(0, step - reach), last + 1, true);
      }
    }
    Collections.sort(apart);
    return withoutFaint(apart).stream()
        .map(step -> new Onset(secondsNear(step), Math.min(1, confidence[step])))
        .toList();
  }

  /** Leaves out what is far fainter than the take's usual sounds: a chair, lips, a far noise. */
  private List<Integer> withoutFaint(List<Integer> steps) {
    double[] levels =
        IntStream.range(0, steps.size()).mapToDouble(i -> levelAfter(steps, i)).toArray();
    double[] sure =
        IntStream.range(0, steps.size())
            .filter(i -> confidence[steps.get(i)] >= USUAL_CONFIDENCE)
            .mapToDouble(i -> levels[i])
            .sorted()
            .toArray();
    double least = sure.length == 0 ? 0 : sure[sure.length / 2] - FAINT_DB;
    return IntStream.range(0, steps.size())
        .filter(i -> levels[i] >= least)
        .mapToObj(steps::get)
        .toList();
  }

  /** The highest level of any wide band that follows, at most until just before the next onset. */
  private double levelAfter(List<Integer> steps, int index) {
    int from = steps.get(index);
    int next = index + 1 < steps.size() ? steps.get(index + 1) - 3 : confidence.length;
    return levels.highestDb(
        from, Math.max(from + 3, Math.min(from + SoundLevels.ATTACK_STEPS, next)));
  }

  private boolean isPeak(int step) {
    float here = smooth(step);
    for (int s = step - PEAK_REACH; s <= step + PEAK_REACH; s++) {
      if (s != step && (smooth(s) > here || (s < step && smooth(s) == here))) {
        return false;
      }
    }
    return true;
  }

  private float smooth(int step) {
    return 0.5f * at(confidence, step)
        + 0.25f * (at(confidence, step - 1) + at(confidence, step + 1));
  }

  /** The centre of gravity of the curve around its highest step near a peak. */
  private double secondsNear(int step) {
    int highest = step;
    for (int s = step - SPREAD - 2; s <= step + SPREAD + 2; s++) {
      if (at(likelihood, s) > at(likelihood, highest)) {
        highest = s;
      }
    }
    double weight = 0;
    double moment = 0;
    for (int s = highest - 2; s <= highest + 2; s++) {
      weight += at(likelihood, s);
      moment += at(likelihood, s) * s;
    }
    return Math.max(0, Math.min(lengthSeconds, energies.secondsAt(moment / weight)));
  }

  private static float at(float[] curve, int step) {
    return step < 0 || step >= curve.length ? 0 : curve[step];
  }

  /** How loud it is at every moment. */
  SoundLevels levels() {
    return levels;
  }
}
