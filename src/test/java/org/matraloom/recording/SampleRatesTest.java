package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A rate is refused in figures that a person reads. */
class SampleRatesTest {

  @Test
  void aRateIsWrittenOutAndWhatIsNoneIsNot() {
    String rest = " samples a second; 4000 to 768000 are read. Is the header damaged?";
    assertEquals("claims 10000000" + rest, SampleRates.refusal(1e7));
    assertEquals("claims 1" + rest, SampleRates.refusal(1));
    assertEquals("claims 0.5" + rest, SampleRates.refusal(0.5));
    assertEquals("claims no number of" + rest, SampleRates.refusal(Double.POSITIVE_INFINITY));
    assertEquals("claims no number of" + rest, SampleRates.refusal(Double.NaN));
  }
}
