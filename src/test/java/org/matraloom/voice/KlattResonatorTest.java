package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The resonator of D. H. Klatt, J. Acoust. Soc. Am. 67 (1980), p. 974. */
class KlattResonatorTest {

  /** 500 Hz, 60 Hz wide, at 10 kHz: A 0.096408, B 1.866595, C -0.963003. */
  @Test
  void hasTheCoefficientsOfThePaper() {
    double[] impulse = impulseResponse(10_000, 500, 60, 3);
    assertEquals(0.096408, impulse[0], 1e-6);
    assertEquals(1.866595 * 0.096408, impulse[1], 1e-6);
    assertEquals((1.866595 * 1.866595 - 0.963003) * 0.096408, impulse[2], 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"48000, 738, 80", "44100, 340, 60", "96000, 2046, 80", "16000, 6500, 200"})
  void letsSteadyAirThroughUnchangedAndResonatesWhereItShould(int rate, double hz, double width) {
    double[] impulse = impulseResponse(rate, hz, width, rate);
    assertEquals(1, magnitude(impulse, rate, 0), 1e-9);
    double r = Math.exp(-Math.PI * width / rate);
    double w0 = 2 * Math.PI * hz / rate;
    double a = 1 - 2 * r * Math.cos(w0) + r * r;
    for (double at : new double[] {100, 0.5 * hz, hz, 1.3 * hz, 0.4 * rate}) {
      double w = 2 * Math.PI * at / rate;
      double near = Math.sqrt(1 + r * r - 2 * r * Math.cos(w - w0));
      double far = Math.sqrt(1 + r * r - 2 * r * Math.cos(w + w0));
      double expected = a / (near * far);
      assertEquals(expected, magnitude(impulse, rate, at), 1e-6 * expected, at + " Hz");
    }
  }

  @Test
  void itsInverseTakesItAway() {
    Noise noise = new Noise(77);
    double[] wave = new double[1000];
    for (int i = 0; i < wave.length; i++) {
      wave[i] = noise.next();
    }
    double[] passed = wave.clone();
    KlattResonator there = new KlattResonator(48_000);
    KlattResonator back = new KlattResonator(48_000);
    there.tune(270, 100);
    back.tune(270, 100);
    there.resonate(passed, passed.length);
    back.cancel(passed, passed.length);
    assertArrayEquals(wave, passed, 1e-9);
  }

  @Test
  void aBandHasItsGainAtItsPeakAndFallsOnBothSides() {
    double[] noise = new double[48_000];
    noise[0] = 1;
    double[] sum = new double[noise.length];
    new KlattBand(48_000, 1770, 350, 0.5).add(noise, noise.length, sum);
    assertEquals(0.5, magnitude(sum, 48_000, 1770), 1e-3);
    assertEquals(0, magnitude(sum, 48_000, 0), 1e-9);
    double below = 20 * Math.log10(magnitude(sum, 48_000, 110) / magnitude(sum, 48_000, 220));
    assertEquals(-12, below, 0.6, "dB an octave, far below the peak");
  }

  private static double[] impulseResponse(int rate, double hz, double width, int frames) {
    double[] block = new double[frames];
    block[0] = 1;
    KlattResonator resonator = new KlattResonator(rate);
    resonator.tune(hz, width);
    resonator.resonate(block, frames);
    return block;
  }

  private static double magnitude(double[] impulse, int rate, double hz) {
    double real = 0;
    double imaginary = 0;
    for (int i = 0; i < impulse.length; i++) {
      real += impulse[i] * Math.cos(2 * Math.PI * hz * i / rate);
      imaginary += impulse[i] * Math.sin(2 * Math.PI * hz * i / rate);
    }
    return Math.hypot(real, imaginary);
  }
}
