package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A faint peak is likelier on the pulse than off it, and as likely as ever where there is none. */
class PulseSupportTest {

  private static final double MATRA = 0.2;

  @Test
  void aFaintPeakOnThePulseIsBelievedAndOneOffItIsNot() {
    for (double waver : new double[] {0, 0.005, 0.010}) {
      SplittableRandom random = new SplittableRandom(3);
      PulseSupport pulse =
          new PulseSupport(
              sure(
                  IntStream.range(0, 60)
                      .filter(i -> i % 7 != 3)
                      .mapToDouble(i -> i * MATRA + waver * (2 * random.nextDouble() - 1))));
      for (int i = 3; i < 60; i += 7) {
        assertTrue(pulse.supportAt(i * MATRA) > 1.5, waver + ": on the pulse");
        assertTrue(pulse.supportAt((i + 0.5) * MATRA) < 0.6, waver + ": off the pulse");
      }
    }
  }

  @Test
  void whereIntervalsFollowNoPulseThereIsLittleToSay() {
    SplittableRandom random = new SplittableRandom(5);
    double[] times = new double[400];
    for (int i = 1; i < times.length; i++) {
      times[i] = times[i - 1] + 0.1 + 0.4 * random.nextDouble();
    }
    PulseSupport pulse = new PulseSupport(sure(DoubleStream.of(times)));
    double sum = 0;
    for (int i = 0; i < 500; i++) {
      sum += StrictMath.log(pulse.supportAt(5 + random.nextDouble() * (times[399] - 10)));
    }
    assertEquals(0, sum / 500, 0.2);
  }

  @Test
  void aLateButSureOnsetStays() {
    PulseSupport pulse = new PulseSupport(sure(IntStream.range(0, 40).mapToDouble(i -> i * MATRA)));
    Onset late = pulse.weighed(new Onset(4.09, 0.95));
    assertTrue(late.confidence() >= OnsetCurve.SURE_CONFIDENCE, "" + late);
    Onset faint = pulse.weighed(new Onset(4.09, 0.40));
    assertTrue(faint.confidence() < OnsetCurve.USUAL_CONFIDENCE, "" + faint);
  }

  @Test
  void fewOnsetsSayNothing() {
    assertEquals(1, new PulseSupport(List.of()).supportAt(1));
    assertEquals(1, new PulseSupport(sure(DoubleStream.of(0.2, 0.4, 0.6))).supportAt(0.8));
    assertEquals(0.3, new PulseSupport(List.of()).weighed(new Onset(2, 0.3)).confidence(), 1e-9);
  }

  private static List<Onset> sure(DoubleStream times) {
    return times.mapToObj(seconds -> new Onset(seconds, 0.9)).toList();
  }
}
