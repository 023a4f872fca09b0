package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SrutiDroneTest {

  private static final int RATE = 48_000;

  /** One cent is the step in which a drone can be set. */
  @ParameterizedTest
  @CsvSource({
    "82.4,48000",
    "130.81,48000",
    "138.59,44100",
    "146.83,96000",
    "207.65,48000",
    "220.13,48000",
    "440,44100",
    "599,48000"
  })
  void everyStringIsInTuneToACent(double hertz, int rate) {
    for (double ratio : new double[] {0.5, 0.75, 1}) {
      float[] stroke = PluckedString.stroke(hertz * ratio, 7, rate, 3 * rate, 0x7361L);
      double measured = pitchNear(hertz * ratio, stroke, 0, 2 * rate, rate);
      assertEquals(0, cents(measured, hertz * ratio), 0.5, hertz + " * " + ratio);
    }
  }

  @ParameterizedTest
  @CsvSource({"C3", "C#3+23", "Eb3-40", "F3", "A3"})
  void theWholeDroneStandsOnItsTonic(String note) {
    Sruti sruti = Sruti.parse(note);
    int rate = 8_000;
    float[] drone = drone(sruti, rate, 27 * rate);
    for (double ratio : new double[] {0.5, 0.75, 1}) {
      double measured = pitchNear(sruti.hertz() * ratio, drone, 6 * rate, 21 * rate, rate);
      assertEquals(0, cents(measured, sruti.hertz() * ratio), 1, note + " * " + ratio);
    }
  }

  @Test
  void aCentMoreIsACentHigher() {
    double low = Sruti.parse("D3").hertz();
    double high = Sruti.parse("D3+1").hertz();
    assertEquals(1, cents(high, low), 1e-9);
    float[] lowStroke = PluckedString.stroke(low, 7, RATE, 3 * RATE, 1);
    float[] highStroke = PluckedString.stroke(high, 7, RATE, 3 * RATE, 1);
    double step =
        cents(
            pitchNear(high, highStroke, 0, 2 * RATE, RATE),
            pitchNear(low, lowStroke, 0, 2 * RATE, RATE));
    assertEquals(1, step, 0.1);
  }

  @Test
  void neverFallsSilentOnceAllStringsHaveSounded() {
    float[] drone = drone(new Sruti(138.59), RATE, 30 * RATE);
    int window = RATE / 10;
    double quietest = Double.MAX_VALUE;
    double loudest = 0;
    for (int from = 4 * RATE; from + window <= drone.length; from += window) {
      double sum = 0;
      for (int i = from; i < from + window; i++) {
        sum += drone[i] * drone[i];
      }
      quietest = Math.min(quietest, Math.sqrt(sum / window));
      loudest = Math.max(loudest, Math.sqrt(sum / window));
    }
    assertTrue(20 * Math.log10(loudest / quietest) < 12, loudest + " and " + quietest);
  }

  @Test
  void repeatsExactlyAndPeaksAtOne() {
    SrutiDrone drone = new SrutiDrone(new Sruti(150), RATE);
    long cycle = Math.round(158 * 4 / 150.0 * RATE);
    double peak = 0;
    for (long frame = 2 * cycle; frame < 3 * cycle; frame++) {
      assertEquals(drone.sampleAt(frame), drone.sampleAt(frame + 100_000 * cycle));
      peak = Math.max(peak, Math.abs(drone.sampleAt(frame)));
    }
    assertTrue(peak <= 1 && peak > 0.8, "peak " + peak);
  }

  private static float[] drone(Sruti sruti, int rate, int frames) {
    SrutiDrone drone = new SrutiDrone(sruti, rate);
    float[] samples = new float[frames];
    for (int frame = 0; frame < frames; frame++) {
      samples[frame] = drone.sampleAt(frame);
    }
    return samples;
  }

  private static double cents(double hertz, double reference) {
    return 1200 * Math.log(hertz / reference) / Math.log(2);
  }

  /** The top of the spectrum within 20 cents, under a Hann window, to a fiftieth of a cent. */
  private static double pitchNear(double hertz, float[] samples, int from, int length, int rate) {
    float[] windowed = new float[length];
    for (int i = 0; i < length; i++) {
      double window = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / length);
      windowed[i] = (float) (samples[from + i] * window);
    }
    double coarse = strongest(hertz, 20, 0.5, windowed, rate);
    return strongest(coarse, 0.5, 0.02, windowed, rate);
  }

  private static double strongest(
      double hertz, double rangeCents, double stepCents, float[] windowed, int rate) {
    double best = hertz;
    double strength = 0;
    for (double cents = -rangeCents; cents <= rangeCents; cents += stepCents) {
      double candidate = hertz * Math.pow(2, cents / 1200);
      double found = strength(candidate, windowed, rate);
      if (found > strength) {
        strength = found;
        best = candidate;
      }
    }
    return best;
  }

  private static double strength(double hertz, float[] windowed, int rate) {
    double turnReal = Math.cos(2 * Math.PI * hertz / rate);
    double turnImaginary = Math.sin(2 * Math.PI * hertz / rate);
    double cosine = 1;
    double sine = 0;
    double real = 0;
    double imaginary = 0;
    for (float sample : windowed) {
      real += sample * cosine;
      imaginary += sample * sine;
      double turned = cosine * turnReal - sine * turnImaginary;
      sine = sine * turnReal + cosine * turnImaginary;
      cosine = turned;
    }
    return Math.hypot(real, imaginary);
  }
}
