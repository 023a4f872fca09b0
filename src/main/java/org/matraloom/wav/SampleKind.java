package org.matraloom.wav;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** How one uncompressed sample is stored. */
public enum SampleKind {
  /** A whole number of 8 bits, silence at 128. */
  UNSIGNED_8(1),
  /** A whole number of 8 bits. */
  SIGNED_8(1),
  /** A whole number of 16 bits. */
  PCM_16(2),
  /** A whole number of 24 bits. */
  PCM_24(3),
  /** A whole number of 32 bits. */
  PCM_32(4),
  /** A float of 32 bits. */
  FLOAT_32(4),
  /** A float of 64 bits. */
  FLOAT_64(8),
  /** ITU-T G.711, mu-law. */
  MU_LAW(1),
  /** ITU-T G.711, A-law. */
  A_LAW(1);

  private final int bytes;

  SampleKind(int bytes) {
    this.bytes = bytes;
  }

  /**
   * The stored size.
   *
   * @return in bytes
   */
  public int bytes() {
    return bytes;
  }

  /**
   * Takes the next sample, in the byte order of the buffer.
   *
   * @param from where it is taken from
   * @return the sample, full scale at 1; 0 for a float that is no number
   */
  public float take(ByteBuffer from) {
    return switch (this) {
      case UNSIGNED_8 -> ((from.get() & 0xFF) - 128) / 128f;
      case SIGNED_8 -> from.get() / 128f;
      case PCM_16 -> from.getShort() / 32_768f;
      case PCM_24 -> whole24(from) / 8_388_608f;
      case PCM_32 -> from.getInt() / 2_147_483_648f;
      case FLOAT_32 -> finite(from.getFloat());
      case FLOAT_64 -> finite((float) from.getDouble());
      case MU_LAW -> muLaw(from.get());
      case A_LAW -> aLaw(from.get());
    };
  }

  private static int whole24(ByteBuffer from) {
    int first = from.get() & 0xFF;
    int middle = (from.get() & 0xFF) << 8;
    int last = from.get() & 0xFF;
    return from.order() == ByteOrder.BIG_ENDIAN
        ? (byte) first << 16 | middle | last
        : (byte) last << 16 | middle | first;
  }

  private static float finite(float sample) {
    return Float.isFinite(sample) ? sample : 0;
  }

  /** ITU-T G.711 mu-law: all bits inverted, sign, three bits of segment, four of step. */
  private static float muLaw(byte stored) {
    int bits = ~stored & 0xFF;
    int size = (((bits & 0x0F) << 3) + 132 << (bits >> 4 & 7)) - 132;
    return ((bits & 0x80) != 0 ? -size : size) / 32_768f;
  }

  /** ITU-T G.711 A-law: even bits inverted, sign, three bits of segment, four of step. */
  private static float aLaw(byte stored) {
    int bits = stored ^ 0x55;
    int segment = bits >> 4 & 7;
    int size = (bits & 0x0F) << 4;
    size = segment == 0 ? size + 8 : size + 264 << segment - 1;
    return ((bits & 0x80) != 0 ? size : -size) / 32_768f;
  }
}
