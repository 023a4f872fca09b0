package org.matraloom.recording;

import java.nio.ByteBuffer;

/** How one uncompressed sample is stored. */
enum SampleKind {
  UNSIGNED_8(1),
  SIGNED_8(1),
  PCM_16(2),
  PCM_24(3),
  PCM_32(4),
  FLOAT_32(4),
  FLOAT_64(8),
  MU_LAW(1),
  A_LAW(1);

  private final int bytes;

  SampleKind(int bytes) {
    this.bytes = bytes;
  }

  /** The stored size in bytes. */
  int bytes() {
    return bytes;
  }

  /** Takes the next sample, in the byte order of the buffer; full scale is 1. */
  float take(ByteBuffer from) {
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
    return from.order() == java.nio.ByteOrder.BIG_ENDIAN
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
