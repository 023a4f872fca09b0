package org.matraloom.recording;

import java.math.BigDecimal;

/** The sample rates at which a recording can be measured. */
final class SampleRates {

  static final int LOWEST = 4_000;
  static final int HIGHEST = 768_000;

  private SampleRates() {}

  /** Why a rate is not taken, to follow the name of the file. */
  static String refusal(double ratePerSecond) {
    return "claims "
        + (Double.isFinite(ratePerSecond)
            ? BigDecimal.valueOf(ratePerSecond).stripTrailingZeros().toPlainString()
            : "no number of")
        + " samples a second; "
        + LOWEST
        + " to "
        + HIGHEST
        + " are read. Is the header damaged?";
  }
}
