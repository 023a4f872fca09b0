package org.matraloom.onset;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;

/**
 * Holds the live ear against the whole measure: {@code scripts/bench-ear RECORDING ...}
 *
 * <p>Prints of each recording and of all together how many onsets the whole measure finds, which
 * share of them the live ear puts within 15 ms, how many more it tells that are nowhere near one,
 * and the processor time of listening live against the length of the sound.
 */
final class LiveOnsetsReport {

  static final double NEAR_SECONDS = 0.015;
  private static final double FAR_SECONDS = 0.050;
  private static final int LEAST_WARM = 2;

  private LiveOnsetsReport() {}

  /**
   * What came of one recording.
   *
   * @param whole how many onsets the whole measure finds
   * @param near how many of them the live ear has within 15 ms
   * @param extra how many of the live ear are farther than 50 ms from all of the whole measure
   * @param lengthSeconds of the recording
   * @param busySeconds processor time of listening live
   */
  record Held(int whole, int near, int extra, double lengthSeconds, double busySeconds) {

    Held plus(Held other) {
      return new Held(
          whole + other.whole,
          near + other.near,
          extra + other.extra,
          lengthSeconds + other.lengthSeconds,
          busySeconds + other.busySeconds);
    }

    double share() {
      return (double) near / whole;
    }
  }

  /** The live ear's onsets; one that was told too early by another within 50 ms is replaced. */
  static List<Onset> live(Recording sound) throws IOException {
    List<Onset> found = new ArrayList<>();
    LiveOnsets.listen(
        sound,
        onset -> {
          int last = found.size() - 1;
          if (last >= 0
              && onset.seconds() - found.get(last).seconds() < OnsetCurve.LEAST_INTERVAL_SECONDS) {
            found.remove(last);
          }
          found.add(onset);
        });
    return found;
  }

  static Held held(List<Onset> whole, List<Onset> live, double lengthSeconds, double busySeconds) {
    int near = 0;
    for (Onset onset : whole) {
      near += distance(onset, live) <= NEAR_SECONDS ? 1 : 0;
    }
    int extra = 0;
    for (Onset onset : live) {
      extra += distance(onset, whole) > FAR_SECONDS ? 1 : 0;
    }
    return new Held(whole.size(), near, extra, lengthSeconds, busySeconds);
  }

  private static double distance(Onset onset, List<Onset> others) {
    return others.stream()
        .mapToDouble(other -> Math.abs(other.seconds() - onset.seconds()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Held of(Path file) throws IOException {
    OnsetCurve curve;
    try (Recording recording = Recordings.open(file)) {
      curve = OnsetCurve.of(recording);
    }
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    List<Onset> live;
    try (Recording recording = Recordings.open(file)) {
      live = live(recording);
    }
    long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    return held(curve.heard(OnsetCurve.USUAL_CONFIDENCE), live, curve.lengthSeconds(), busy / 1e9);
  }

  /**
   * Runs it.
   *
   * @param files recordings; or {@code --whole} and one, whose onsets are listed
   * @throws IOException if one cannot be read
   */
  public static void main(String[] files) throws IOException {
    if (files[0].equals("--whole")) {
      try (Recording recording = Recordings.open(Path.of(files[1]))) {
        OnsetCurve.of(recording)
            .heard(OnsetCurve.USUAL_CONFIDENCE)
            .forEach(onset -> System.out.println(onset.seconds()));
      }
      return;
    }
    for (int i = 0; i < LEAST_WARM; i++) {
      of(Path.of(files[0]));
    }
    Held all = new Held(0, 0, 0, 0, 0);
    for (String file : files) {
      Held one = of(Path.of(file));
      print(Path.of(file).getFileName().toString(), one);
      all = all.plus(one);
    }
    print("all", all);
  }

  private static void print(String name, Held held) {
    System.out.printf(
        Locale.ROOT,
        "%-28s %5d onsets, %.3f within 15 ms, %d more, %.1f %% of a core%n",
        name,
        held.whole(),
        held.share(),
        held.extra(),
        100 * held.busySeconds() / held.lengthSeconds());
  }
}
