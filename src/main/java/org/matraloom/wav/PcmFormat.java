package org.matraloom.wav;

/**
 * How samples are written as whole numbers.
 *
 * @param ratePerSecond frames a second: 44100, 48000 or 96000
 * @param bits bits a sample: 16 or 24
 * @param channels 1 (mono) or 2 (stereo)
 */
public record PcmFormat(int ratePerSecond, int bits, int channels) {

  /** The usual format: 48000 frames a second, 16 bits, stereo. */
  public static final PcmFormat USUAL = new PcmFormat(48_000, 16, 2);

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if one of them is not offered
   */
  public PcmFormat {
    if (ratePerSecond != 44_100 && ratePerSecond != 48_000 && ratePerSecond != 96_000) {
      throw new IllegalArgumentException(
          "the rate is 44100, 48000 or 96000 frames a second, given " + ratePerSecond);
    }
    if (bits != 16 && bits != 24) {
      throw new IllegalArgumentException("a sample has 16 or 24 bits, given " + bits);
    }
    if (channels != 1 && channels != 2) {
      throw new IllegalArgumentException("there are 1 or 2 channels, given " + channels);
    }
  }

  /**
   * The size of one frame.
   *
   * @return bytes
   */
  public int bytesPerFrame() {
    return bits / 8 * channels;
  }
}
