package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** Pairs are found again in made-up takes of which it is known what was said. */
class ScoreFollowerTest {

  /** Groups of a korvai said twice at four a beat and once at five, at 80 beats a minute. */
  private static final double[] EXPECTED = korvai();

  private static final boolean[] ENTRIES = entries();

  @Test
  void aPlainTakeIsPairedWholly() {
    Made take = new Made(1);
    take.say(0, EXPECTED.length, 1.0, 0);
    assertPairs(take, 1);
  }

  @Test
  void tempoMayBeAQuarterOff() {
    for (double stretch : new double[] {0.76, 0.85, 0.95, 1.05, 1.15, 1.25, 1.33}) {
      Made take = new Made(2);
      take.say(0, EXPECTED.length, stretch, 0.010);
      assertPairs(take, 0.98);
    }
  }

  @Test
  void missingExtraAndBleedAreBorne() {
    int paired = 0;
    int said = 0;
    for (long seed = 0; seed < 40; seed++) {
      Made take = new Made(seed);
      take.leaveOut = 0.05;
      take.drift = take.random.nextDouble(-0.03, 0.03);
      take.say(0, EXPECTED.length, take.random.nextDouble(0.78, 1.3), 0.012);
      take.addExtra(15);
      take.addBleed(0.75);
      int[] counts = counts(take);
      paired += counts[0];
      said += counts[1];
    }
    assertTrue(paired > 0.95 * said, paired + " of " + said);
  }

  @Test
  void aRestartIsFollowed() {
    Made take = new Made(7);
    take.say(0, 50, 1.1, 0.008);
    take.pause(1.7);
    take.say(0, EXPECTED.length, 1.1, 0.008);
    assertPairs(take, 0.95);
  }

  @Test
  void aTakeMayBeginLateAndBreakOff() {
    Made take = new Made(9);
    take.say(3, 90, 0.9, 0.008);
    assertPairs(take, 0.97);
  }

  @Test
  void nothingIsPairedWithNothing() {
    assertEquals(List.of(), pair(EXPECTED, ENTRIES, List.of()));
    List<Onset> one = List.of(new Onset(1, 1));
    assertEquals(List.of(), pair(new double[0], new boolean[0], one));
  }

  /** By time alone: nothing is known of lags, matras or sounds. */
  private static List<Alignment.Said> pair(
      double[] expected, boolean[] entries, List<Onset> onsets) {
    int sollus = expected.length;
    return new PairingSearch(
            new double[][] {expected},
            new double[sollus],
            entries,
            new int[sollus],
            onsets,
            SoundColours.unknown(onsets.size()),
            PairingModel.plain(sollus))
        .find()
        .said();
  }

  private static void assertPairs(Made take, double share) {
    int[] counts = counts(take);
    assertTrue(counts[0] >= share * counts[1], counts[0] + " of " + counts[1]);
    assertTrue(counts[2] <= (1 - share) * counts[1] + 1e-9, counts[2] + " wrong of " + counts[1]);
  }

  /** Rightly paired, said, and wrongly paired. */
  private static int[] counts(Made take) {
    take.sort();
    List<Onset> onsets = take.heard.stream().map(Heard::onset).toList();
    int right = 0;
    int wrong = 0;
    for (Alignment.Said said : pair(EXPECTED, ENTRIES, onsets)) {
      if (take.heard.get(said.onset()).sollu == said.sollu()) {
        right++;
      } else {
        wrong++;
      }
    }
    int said = (int) take.heard.stream().filter(heard -> heard.sollu >= 0).count();
    assertTrue(said > 50, "sollus were said: " + said);
    return new int[] {right, said, wrong};
  }

  private record Heard(Onset onset, int sollu) {}

  /** A take that is put together; what is no sollu of the score has the number -1. */
  private static final class Made {
    private final SplittableRandom random;
    private final List<Heard> heard = new ArrayList<>();
    private double now = 0.9;
    private double leaveOut;
    private double drift;

    Made(long seed) {
      random = new SplittableRandom(seed);
    }

    void say(int from, int to, double stretch, double jitterSeconds) {
      double start = now;
      for (int k = from; k < to; k++) {
        double share = (EXPECTED[k] - EXPECTED[from]) / EXPECTED[EXPECTED.length - 1];
        now = start + (EXPECTED[k] - EXPECTED[from]) * stretch * (1 + drift * share);
        if (random.nextDouble() >= leaveOut) {
          double late = jitterSeconds * (random.nextDouble() + random.nextDouble() - 1) * 2;
          heard.add(new Heard(new Onset(now + late, random.nextDouble(0.7, 1)), k));
        }
      }
    }

    void pause(double seconds) {
      now += seconds;
    }

    void addExtra(int count) {
      for (int i = 0; i < count; i++) {
        double at = random.nextDouble(0.3, now);
        heard.add(new Heard(new Onset(at, random.nextDouble(0.2, 0.7)), -1));
      }
    }

    /** Clicks of a beat that nobody said, halfway between matras. */
    void addBleed(double every) {
      for (double at = 0.35; at < now; at += every * 1.07) {
        heard.add(new Heard(new Onset(at, 0.5), -1));
      }
    }

    void sort() {
      heard.sort(Comparator.comparingDouble(item -> item.onset.seconds()));
    }
  }

  private static double[] korvai() {
    List<Double> times = new ArrayList<>();
    double beat = 0;
    int[] groups = {3, 4, 5, 4, 5, 6, 5, 6, 7, 9, 9, 9};
    for (int nadai : new int[] {4, 4, 5}) {
      for (int group : groups) {
        for (int i = 0; i < group; i++) {
          times.add((beat + (double) i / nadai) * 0.75);
        }
        beat += (group + 1.0) / nadai;
      }
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static boolean[] entries() {
    boolean[] entries = new boolean[EXPECTED.length];
    for (int k = 0; k < entries.length; k++) {
      entries[k] = k == 0 || k % (EXPECTED.length / 3) == 0;
    }
    return entries;
  }
}
