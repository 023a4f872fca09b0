package org.matraloom.wav;

/**
 * The one place where float samples become whole numbers and whole numbers floats.
 *
 * <p>Full scale is 2<sup>bits-1</sup>. A sample is scaled, rounded to the nearest whole number, a
 * half away from zero so that both signs are treated alike, and clipped to the range of the format.
 * No dither is added, so the same samples are the same bytes.
 */
public final class PcmCodec {

  private static final double SHORT_SCALE = 1 << (Short.SIZE - 1);

  private final int bits;
  private final double fullScale;
  private final long lowest;

  /**
   * The conversion of one sample size.
   *
   * @param bits bits a sample, 8 to 32
   */
  public PcmCodec(int bits) {
    this.bits = bits;
    this.fullScale = 1L << (bits - 1);
    this.lowest = -(1L << (bits - 1));
  }

  /**
   * Encodes one sample.
   *
   * @param sample any number; full scale is 1
   * @return from -2<sup>bits-1</sup> to 2<sup>bits-1</sup> - 1; 0 for a NaN
   */
  public int encode(float sample) {
    double scaled = sample * fullScale;
    long rounded = (long) (scaled < 0 ? scaled - 0.5 : scaled + 0.5);
    if (rounded < lowest) {
      return (int) lowest;
    }
    return (int) (rounded > -1 - lowest ? -1 - lowest : rounded);
  }

  /**
   * Encodes samples as little-endian bytes.
   *
   * @param samples what to encode, from its beginning
   * @param count how many samples
   * @param bytes where the bytes go, at least {@code count * bits / 8}
   */
  public void encode(float[] samples, int count, byte[] bytes) {
    int at = 0;
    float before = Float.NaN;
    int value = 0;
    for (int i = 0; i < count; i++) {
      float sample = samples[i];
      if (sample != before) {
        value = encode(sample);
        before = sample;
      }
      bytes[at++] = (byte) value;
      for (int shift = 8; shift < bits; shift += 8) {
        bytes[at++] = (byte) (value >> shift);
      }
    }
  }

  /**
   * Encodes samples of 16 bits, the usual size, three times as fast.
   *
   * @param samples what to encode, from its beginning
   * @param count how many samples
   * @param values where the whole numbers go, at least {@code count}
   * @throws IllegalStateException if the sample size is another
   */
  public void encode(float[] samples, int count, short[] values) {
    if (bits != Short.SIZE) {
      throw new IllegalStateException("samples of " + bits + " bits are no short numbers");
    }
    for (int i = 0; i < count; i++) {
      double scaled = samples[i] * SHORT_SCALE;
      int rounded = (int) (scaled < 0 ? scaled - 0.5 : scaled + 0.5);
      if (rounded != (short) rounded) {
        rounded = rounded < 0 ? Short.MIN_VALUE : Short.MAX_VALUE;
      }
      values[i] = (short) rounded;
    }
  }

  /**
   * Turns an encoded sample back.
   *
   * @param value a whole number of this size
   * @return the sample, full scale at 1
   */
  public float decode(int value) {
    return (float) (value / (double) (1L << (bits - 1)));
  }
}
