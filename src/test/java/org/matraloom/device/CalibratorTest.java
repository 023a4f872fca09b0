package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.matraloom.live.Rivers;

/** The whole measurement on devices whose delay is known. */
@Timeout(120)
class CalibratorTest {

  private final FakeOut out = new FakeOut();

  @Test
  void theDelayOfTheDevicesIsMeasured() throws IOException {
    out.letGo();
    FakeIn in = new FakeIn(out, 444);
    RoundTrip trip = new Calibrator(Rivers.MONO).measure(out, in, "roof", "well");
    assertEquals(444, trip.frames(), 2_000, "as exact as the clocks of these devices");
    assertEquals(0, trip.spreadFrames());
    assertEquals("roof", trip.output());
    assertEquals("well", trip.input());
  }

  @Test
  void aDeviceThatGoesIsTold() {
    FakeIn in = new FakeIn(out, 0);
    out.letGo();
    in.breakWith(new DeviceException("the well gives no more sound"));
    IOException gone =
        assertThrows(
            IOException.class, () -> new Calibrator(Rivers.MONO).measure(out, in, "roof", "well"));
    assertTrue(gone.getMessage().contains("the well gives no more"), gone.getMessage());
  }
}
