package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.recording.SoundFiles;

/** Peaks of a made answer of the net are where it was made to peak; the pulse parts close ones. */
class OnsetPeaksTest {

  private static final float[] CERTAIN = {0.1f, 0.5f, 1, 0.9f, 0.4f};

  /** The answer to a rolled r: its first tap, then seven steps later a louder one. */
  private static final float[] ROLLED = {
    0.15f, 0.37f, 0.34f, 0.19f, 0.18f, 0.05f, 0.06f, 0.16f, 0.70f, 0.66f, 0.23f
  };

  @Test
  void aPeakIsAtTheCentreOfGravityOfItsHighest() {
    float[] answer = new float[100];
    put(answer, 40, 0.2f, 1, 0.2f);
    put(answer, 70, 0.1f, 0.6f, 0.6f, 0.1f);
    List<OnsetPeaks.Peak> peaks = new OnsetPeaks(answer).atLeast(0.1);
    assertEquals(2, peaks.size());
    assertEquals(41, peaks.get(0).centre(), 1e-6);
    assertEquals(71.5, peaks.get(1).centre(), 0.2);
    assertEquals(1.4 / 3, peaks.get(0).confidence(), 1e-6);
  }

  @Test
  void twoTapsCloseTogetherAreTwoPeaksOfWhichTheSurerIsKept() {
    float[] answer = new float[100];
    put(answer, 50, ROLLED);
    List<OnsetPeaks.Peak> peaks = new OnsetPeaks(answer).atLeast(0.1);
    assertEquals(List.of(52, 58), peaks.stream().map(OnsetPeaks.Peak::step).toList());
    List<OnsetPeaks.Peak> apart = OnsetPeaks.apart(peaks, 13);
    assertEquals(List.of(58), apart.stream().map(OnsetPeaks.Peak::step).toList());
    assertEquals(peaks, OnsetPeaks.apart(peaks, 6));
  }

  @Test
  void nothingAtTheEdgesIsLostOrMadeUp() {
    float[] answer = new float[20];
    answer[0] = 1;
    answer[19] = 1;
    List<OnsetPeaks.Peak> peaks = new OnsetPeaks(answer).atLeast(0.1);
    assertEquals(List.of(0, 19), peaks.stream().map(OnsetPeaks.Peak::step).toList());
    assertEquals(List.of(), new OnsetPeaks(new float[20]).atLeast(0.1));
    assertEquals(List.of(), OnsetPeaks.apart(List.of(), 13));
  }

  @Test
  void ofTwoTapsTheOneOnThePulseIsTaken() throws IOException {
    BandEnergies energies = BandEnergies.of(SoundFiles.recording(new float[44_100 * 8], 44_100));
    float[] answer = new float[energies.steps()];
    for (int step = 100; step < 1_900; step += 50) {
      put(answer, step, step == 1_000 ? ROLLED : CERTAIN);
    }
    float[] levelDb = new float[answer.length];
    Arrays.fill(levelDb, 40);
    OnsetCurve curve = new OnsetCurve(energies, answer, levelDb);
    double onPulse = energies.secondsAt(1_001);
    assertTrue(isNear(curve.onsets(OnsetCurve.USUAL_CONFIDENCE), onPulse));
    List<Onset> heard = curve.heard(OnsetCurve.USUAL_CONFIDENCE);
    assertTrue(isNear(heard, energies.secondsAt(1_008.5)) && !isNear(heard, onPulse));
    assertEquals(36, heard.size());
    assertEquals(36, curve.onsets(OnsetCurve.USUAL_CONFIDENCE).size());
  }

  private static boolean isNear(List<Onset> onsets, double seconds) {
    return onsets.stream().anyMatch(onset -> Math.abs(onset.seconds() - seconds) < 0.006);
  }

  private static void put(float[] answer, int at, float... values) {
    System.arraycopy(values, 0, answer, at, values.length);
  }
}
