package org.matraloom.onset;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.recording.Recording;

/** How likely it is, at every moment of a recording, that a syllable or a stroke begins. */
public final class OnsetCurve {

  /**
   * The confidence from which an onset is reported where no score says what to expect.
   *
   * <p>Chosen on voices that the net was not trained on: from 0.15 to 0.25 nothing changes much.
   */
  public static final double USUAL_CONFIDENCE = 0.20;

  /** From this confidence an onset says something of the others: of the pulse, of loudness. */
  public static final double SURE_CONFIDENCE = 0.35;

  /** Judged by the sound alone, what is less sure than this is no onset whatever the pulse. */
  private static final double WORTH_WEIGHING = 0.10;

  /** Two onsets are at least this far apart. */
  static final double LEAST_INTERVAL_SECONDS = 0.050;

  static final int LEAST_STEPS =
      (int) Math.ceil(LEAST_INTERVAL_SECONDS * BandEnergies.STEPS_PER_SECOND);

  /**
   * What stays this far below the usual sounds of the take is not of it. The median of recorded
   * strokes and syllables is less than 20 dB above the faintest; knocks and clicks between them are
   * 30 dB down and more.
   */
  static final double FAINT_DB = 28;

  /** Below this largest sample a recording is silent: -80 dB of full scale. */
  private static final float SILENT_PEAK = 1e-4f;

  private final BandEnergies energies;
  private final OnsetPeaks peaks;
  private final SoundLevels levels;
  private final double lengthSeconds;

  OnsetCurve(BandEnergies energies, float[] likelihood, float[] levelDb) {
    this.energies = energies;
    this.peaks = new OnsetPeaks(likelihood);
    this.levels = new SoundLevels(energies, levelDb);
    this.lengthSeconds = energies.lengthSeconds();
  }

  /**
   * Listens to a recording from its beginning to its end.
   *
   * @param recording the recording; the caller closes it
   * @return its curve
   * @throws IOException if it cannot be read to its end
   */
  public static OnsetCurve of(Recording recording) throws IOException {
    return of(BandEnergies.of(recording));
  }

  /**
   * Looks at what was heard of a recording.
   *
   * @param energies all of it
   * @return the curve that the recording itself has
   */
  public static OnsetCurve of(BandEnergies energies) {
    float[] likelihood = new float[energies.steps()];
    float[] levelDb = new float[energies.steps()];
    if (energies.peak() >= SILENT_PEAK) {
      OnsetFeatures features = OnsetFeatures.of(energies);
      int workers = Runtime.getRuntime().availableProcessors();
      OnsetNet net = OnsetNet.load();
      int share = (likelihood.length + workers - 1) / workers;
      IntStream.range(0, workers)
          .parallel()
          .forEach(
              worker ->
                  judge(net.forAnother(), features, worker * share, share, likelihood, levelDb));
    }
    return new OnsetCurve(energies, likelihood, levelDb);
  }

  /** Every step for itself, so it does not matter which processor takes which. */
  private static void judge(
      OnsetNet net,
      OnsetFeatures features,
      int from,
      int count,
      float[] likelihood,
      float[] levelDb) {
    for (int step = from; step < Math.min(likelihood.length, from + count); step++) {
      levelDb[step] = features.highestLevelDb(step);
      if (features.rises(step)) {
        likelihood[step] = net.judge(features, step);
      }
    }
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
   * <p>Where the sound speaks for two moments closer than onsets can be, as for the murmur of a
   * nasal and its release, the pulse has its say before one of them is dropped. Of the hum of a
   * voiced stop and its release the release counts ({@link HumJoin}).
   *
   * @param leastConfidence above 0, to 1; {@link #USUAL_CONFIDENCE} where no score helps
   * @return in order of time, at least 50 ms apart
   */
  public List<Onset> onsets(double leastConfidence) {
    PulseSupport pulse = new PulseSupport(heard(SURE_CONFIDENCE));
    List<OnsetPeaks.Peak> worth = peaks.atLeast(Math.min(leastConfidence, WORTH_WEIGHING));
    List<OnsetPeaks.Peak> weighed =
        new HumJoin(energies)
            .joined(worth).stream()
                .map(peak -> peak.withConfidence(pulse.weighed(onset(peak)).confidence()))
                .filter(peak -> peak.confidence() >= leastConfidence)
                .toList();
    return apart(weighed);
  }

  /**
   * The onsets of at least some confidence, judged by the sound alone: for one who has a score to
   * go by and wants to know what is off its pulse.
   *
   * @param leastConfidence above 0, to 1
   * @return in order of time, at least 50 ms apart
   */
  public List<Onset> heard(double leastConfidence) {
    return apart(peaks.atLeast(leastConfidence));
  }

  private List<Onset> apart(List<OnsetPeaks.Peak> peaks) {
    return withoutFaint(OnsetPeaks.apart(peaks, LEAST_STEPS)).stream().map(this::onset).toList();
  }

  private Onset onset(OnsetPeaks.Peak peak) {
    double seconds = Math.max(0, Math.min(lengthSeconds, energies.secondsAt(peak.centre())));
    return new Onset(seconds, peak.confidence());
  }

  /** Leaves out what is far fainter than the take's usual sounds: a chair, lips, a far noise. */
  private List<OnsetPeaks.Peak> withoutFaint(List<OnsetPeaks.Peak> apart) {
    double[] heights =
        IntStream.range(0, apart.size()).mapToDouble(i -> levelAfter(apart, i)).toArray();
    double[] sure =
        IntStream.range(0, apart.size())
            .filter(i -> peaks.confidence(apart.get(i).step()) >= SURE_CONFIDENCE)
            .mapToDouble(i -> heights[i])
            .sorted()
            .toArray();
    double least = sure.length == 0 ? 0 : sure[sure.length / 2] - FAINT_DB;
    return IntStream.range(0, apart.size())
        .filter(i -> heights[i] >= least)
        .mapToObj(apart::get)
        .toList();
  }

  /** The highest level of any wide band that follows, at most until just before the next onset. */
  private double levelAfter(List<OnsetPeaks.Peak> apart, int index) {
    int from = apart.get(index).step();
    int next = index + 1 < apart.size() ? apart.get(index + 1).step() - 3 : energies.steps();
    return levels.highestDb(
        from, Math.max(from + 3, Math.min(from + SoundLevels.ATTACK_STEPS, next)));
  }

  /**
   * How loud it is at every moment.
   *
   * @return the levels
   */
  public SoundLevels levels() {
    return levels;
  }
}
