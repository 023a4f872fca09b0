package org.matraloom.app;

import org.matraloom.sound.PcmFormat;
import picocli.CommandLine.Option;

/** How a sound file is written. */
final class FormatOptions {

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      defaultValue = "48000",
      description = "Frames a second: 44100, 48000 or 96000 (default ${DEFAULT-VALUE}).")
  private int rate;

  @Option(
      names = "--bits",
      paramLabel = "N",
      defaultValue = "16",
      description = "Bits a sample: 16 or 24 (default ${DEFAULT-VALUE}).")
  private int bits;

  @Option(names = "--mono", description = "One channel, for a single speaker or earbud.")
  private boolean mono;

  PcmFormat format() {
    try {
      return new PcmFormat(rate, bits, mono ? 1 : 2);
    } catch (IllegalArgumentException notOffered) {
      throw new UserError(notOffered.getMessage());
    }
  }
}
