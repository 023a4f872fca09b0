package org.matraloom.follow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.recording.SoundFiles;

/**
 * A take with sound in which every sollu is a vowel of its own. Before a stop there is a closure; a
 * nasal, written with m or n, goes on from the vowel before.
 */
final class VoicedTake {

  private static final int RATE = 16_000;

  /** One period of a voice of 125 Hz. */
  private static final int PERIOD = 128;

  private static final double LEVEL = 0.2;
  private static final double FLOOR = 0.0005;
  private static final double CLOSURE_SECONDS = 0.035;
  private static final double ATTACK_SECONDS = 0.006;
  private static final double FIRST_AT = 0.5;

  final List<ExpectedSollu> expected;

  /** When each sollu is said; one after the last tells where that ends. */
  final double[] at;

  private final SplittableRandom random;
  private final double[][] wave;
  private final double[] gain;
  private final int[] kinds;
  private final Map<Integer, double[]> formants = new HashMap<>();

  VoicedTake(String score, long number) {
    this(score, number, 0.04);
  }

  /** The formants of a sollu vary by a share of their height. */
  VoicedTake(String score, long number, double varies) {
    random = new SplittableRandom(number);
    expected = SaidAs.expected(score);
    kinds = ExpectedSollu.kinds(expected);
    int size = expected.size();
    double matra = expected.get(size - 1).seconds() - expected.get(size - 2).seconds();
    at = new double[size + 1];
    wave = new double[size][];
    gain = new double[size];
    Arrays.fill(gain, 1);
    for (int k = 0; k < size; k++) {
      at[k] = FIRST_AT + expected.get(k).seconds() + random.nextDouble(-0.008, 0.008);
      wave[k] = voice(kinds[k], random.nextDouble(1 - varies, 1 + varies));
    }
    at[size] = at[size - 1] + matra;
  }

  /** The places of a sollu, in order. */
  int[] places(String sollu) {
    return IntStream.range(0, expected.size())
        .filter(k -> expected.get(k).sollu().spelling().equals(sollu))
        .toArray();
  }

  /** At a place something is said that is as much another sollu as a share tells. */
  void sounds(int place, int otherPlace, double share) {
    blends(place, place, otherPlace, share);
  }

  /** At a place something is said between two other sollus. */
  void blends(int place, int onePlace, int otherPlace, double share) {
    double[] one = voice(kinds[onePlace], 1);
    double[] other = voice(kinds[otherPlace], 1);
    wave[place] = new double[PERIOD];
    Arrays.setAll(wave[place], i -> (1 - share) * one[i] + share * other[i]);
  }

  /** What is said in any place is any of the sollus, by lot. */
  void mumbled() {
    for (int k = 0; k < wave.length; k++) {
      wave[k] = voice(kinds[random.nextInt(kinds.length)], random.nextDouble(0.96, 1.04));
    }
  }

  /** Noise is heard in place of a sollu. */
  void hisses(int place) {
    wave[place] = new double[0];
  }

  /** A sollu is so much softer than it would be. */
  void softer(int place, double db) {
    gain[place] = Math.pow(10, -db / 20);
  }

  SoundLevels levels() throws IOException {
    float[] sound = new float[(int) ((at[at.length - 1] + 0.6) * RATE)];
    for (int i = 0; i < sound.length; i++) {
      sound[i] = (float) (FLOOR * random.nextDouble(-1, 1));
    }
    for (int k = 0; k < wave.length; k++) {
      int from = (int) Math.round(at[k] * RATE);
      boolean closes = k + 1 < wave.length && !isSoft(k + 1);
      double length = at[k + 1] - at[k] - (closes ? CLOSURE_SECONDS : 0);
      for (int i = 0; i < length * RATE; i++) {
        double t = (double) i / RATE;
        double fade = Math.min(1, Math.min(t, length - t) / ATTACK_SECONDS);
        double voice =
            wave[k].length == 0 ? random.nextDouble(-1, 1) : wave[k][(from + i) % PERIOD];
        sound[from + i] += (float) (LEVEL * gain[k] * fade * voice);
      }
    }
    return OnsetCurve.of(SoundFiles.recording(sound, RATE)).levels();
  }

  /** What was heard; all but some. */
  List<Onset> onsets(Set<Integer> unheard) {
    return IntStream.range(0, expected.size())
        .filter(k -> !unheard.contains(k))
        .mapToObj(k -> new Onset(at[k], 0.9))
        .toList();
  }

  /** The pairing of what was heard. */
  PairingSearch.Found found(Set<Integer> unheard) {
    return new PairingSearch.Found(
        said(unheard), Optional.empty(), expected.stream().map(each -> 0.0).toList());
  }

  List<Alignment.Said> said(Set<Integer> unheard) {
    List<Alignment.Said> said = new ArrayList<>();
    for (int k = 0; k < expected.size(); k++) {
      if (!unheard.contains(k)) {
        said.add(new Alignment.Said(k, said.size()));
      }
    }
    return said;
  }

  private boolean isSoft(int place) {
    return "mn".indexOf(expected.get(place).sollu().spelling().charAt(0)) >= 0;
  }

  /** One period with two formants, of the same energy for every sollu. */
  private double[] voice(int kind, double higher) {
    double[] peaks =
        formants.computeIfAbsent(
            kind, k -> new double[] {300 + 170 * (k % 4), 1_000 + 520 * ((k * 3) % 5)});
    double[] period = new double[PERIOD];
    double energy = 0;
    for (int i = 0; i < PERIOD; i++) {
      for (int h = 1; h < PERIOD / 2; h++) {
        double hertz = (double) h * RATE / PERIOD;
        double weight =
            peak(hertz, peaks[0] * higher, 90) + 0.5 * peak(hertz, peaks[1] * higher, 140) + 0.01;
        period[i] += weight * Math.sin(2 * Math.PI * h * i / PERIOD + h * h);
      }
      energy += period[i] * period[i] / PERIOD;
    }
    double size = Math.sqrt(energy);
    return Arrays.stream(period).map(value -> value / size).toArray();
  }

  private static double peak(double hertz, double middle, double width) {
    double off = (hertz - middle) / width;
    return 1 / (1 + off * off);
  }
}
