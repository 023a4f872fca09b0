package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class HabitLayoutsTest {

  private static final List<ExpectedSollu> ASKED = SaidAs.expected(SaidAs.FOUR_AND_FIVE);

  private static double[] beatOfFive(double[] way) {
    double[] beat = Arrays.copyOfRange(way, 32, 37);
    return Arrays.stream(beat).map(t -> t / SaidAs.BEAT - 8).toArray();
  }

  @Test
  void theWrittenWayComesFirst() {
    double[][] ways = HabitLayouts.of(ASKED);
    assertEquals(5, ways.length);
    for (double[] way : ways) {
      assertArrayEquals(
          Arrays.copyOf(ways[0], 32), Arrays.copyOf(way, 32), 1e-9, "four is said as written");
    }
    assertArrayEquals(new double[] {0, 0.2, 0.4, 0.6, 0.8}, beatOfFive(ways[0]), 1e-9);
    assertArrayEquals(new double[] {0, 0.25, 0.5, 0.75, 1}, beatOfFive(ways[1]), 1e-9);
    assertArrayEquals(new double[] {0, 0.25, 0.5, 0.75, 0.91}, beatOfFive(ways[2]), 1e-9);
    assertArrayEquals(
        new double[] {0, 0.25, 0.5, 0.5 + 1 / 6.0, 0.5 + 2 / 6.0}, beatOfFive(ways[3]), 1e-9);
    assertArrayEquals(
        new double[] {0, 1 / 6.0, 2 / 6.0, 3 / 6.0, 4 / 6.0}, beatOfFive(ways[4]), 1e-9);
  }

  @Test
  void oneNadaiHasOneWay() {
    assertEquals(1, HabitLayouts.of(ASKED.subList(0, 32)).length);
  }
}
