package org.matraloom.loudness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KWeightingTest {

  private static final double PRINTED = 1e-10;

  @Test
  void givesBackTheCoefficientsOfBs1770AnnexOneAt48Kilohertz() {
    assertSection(
        new KWeighting.Section(
            1.53512485958697,
            -2.69169618940638,
            1.19839281085285,
            -1.69065929318241,
            0.73248077421585),
        KWeighting.shelf(48_000));
    assertSection(
        new KWeighting.Section(1, -2, 1, -1.99004745483398, 0.99007225036621),
        KWeighting.highPass(48_000));
  }

  /** Worked out by hand from the analogue pair; agrees with libebur128 at this rate. */
  @Test
  void followsTheAnalogueFilterAt44100() {
    assertSection(
        new KWeighting.Section(
            1.53084123005035,
            -2.65097999515473,
            1.16907907992159,
            -1.66365511325602,
            0.71259542807323),
        KWeighting.shelf(44_100));
    assertSection(
        new KWeighting.Section(1, -2, 1, -1.98916967362980, 0.98919903578704),
        KWeighting.highPass(44_100));
  }

  /** Magnitudes worked out from the printed coefficients, to the hundredths given. */
  @ParameterizedTest
  @CsvSource({
    "20,-13.28",
    "50,-3.93",
    "100,-1.13",
    "500,0.04",
    "997,0.691",
    "1000,0.698",
    "2000,3.07",
    "4000,3.97",
    "10000,4.04"
  })
  void weighsASineAsTheCurveSays(double hertz, double expectedDb) {
    int rate = 48_000;
    KWeighting filter = new KWeighting(rate);
    double sum = 0;
    for (int frame = 0; frame < 2 * rate; frame++) {
      double out = filter.filter(StrictMath.sin(2 * StrictMath.PI * hertz * frame / rate));
      if (frame >= rate) {
        sum += out * out;
      }
    }
    assertEquals(expectedDb, 10 * StrictMath.log10(2 * sum / rate), 0.006);
  }

  private static void assertSection(KWeighting.Section expected, KWeighting.Section given) {
    assertEquals(expected.b0(), given.b0(), PRINTED);
    assertEquals(expected.b1(), given.b1(), PRINTED);
    assertEquals(expected.b2(), given.b2(), PRINTED);
    assertEquals(expected.a1(), given.a1(), PRINTED);
    assertEquals(expected.a2(), given.a2(), PRINTED);
  }
}
