package org.matraloom.app.cli;

import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.Option;

/** How a sound file is written. */
public final class FormatOptions {

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

  /**
   * How samples are written.
   *
   * @return the format
   * @throws UserError if there is no such rate, number of bits or of channels
   */
  public PcmFormat format() {
    try {
      return new PcmFormat(rate, bits, mono ? 1 : 2);
    } catch (IllegalArgumentException notOffered) {
      throw new UserError(notOffered.getMessage());
    }
  }
}
