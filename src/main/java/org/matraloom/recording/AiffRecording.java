package org.matraloom.recording;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import org.matraloom.wav.SampleKind;

/**
 * An AIFF or AIFF-C file: PCM of 8 to 32 bits of either byte order, float, mu-law or A-law.
 *
 * <p>Layout: Apple, "Audio Interchange File Format AIFF-C", draft of 1991.
 */
final class AiffRecording extends PcmRecording {

  private static final int CHUNK_HEAD = 8;
  private static final int PLAIN_COMMON = 18;

  AiffRecording(Path file) throws IOException {
    super(file, ByteOrder.BIG_ENDIAN);
  }

  @Override
  void readHeader() throws IOException {
    String form = name(take(0, 12).position(8));
    if (!form.equals("AIFF") && !form.equals("AIFC")) {
      throw fault("is an IFF file but not AIFF; give a recording of sound");
    }
    long size = sizeBytes();
    long position = 12;
    while (position + CHUNK_HEAD <= size) {
      ByteBuffer chunk = take(position, CHUNK_HEAD);
      String name = name(chunk);
      long length = Integer.toUnsignedLong(chunk.getInt());
      position += CHUNK_HEAD;
      if (name.equals("COMM")) {
        readCommon(take(position, (int) Math.min(length, PLAIN_COMMON + 4)));
      } else if (name.equals("SSND") && length >= 8) {
        long start = position + 8 + Integer.toUnsignedLong(take(position, 4).getInt());
        data(start, Math.max(0, Math.min(position + length, size) - start));
      }
      position += length + (length & 1);
    }
  }

  private void readCommon(ByteBuffer common) throws IOException {
    if (common.limit() < PLAIN_COMMON) {
      throw fault("breaks off inside its header");
    }
    int channels = Short.toUnsignedInt(common.getShort(0));
    int bits = Short.toUnsignedInt(common.getShort(6));
    double rate = extended(common.getShort(8), common.getLong(10));
    String coding = common.limit() > PLAIN_COMMON ? name(common.position(PLAIN_COMMON)) : "NONE";
    SampleKind kind =
        switch (coding) {
          case "NONE", "twos", "sowt" -> pcm(bits);
          case "fl32", "FL32" -> SampleKind.FLOAT_32;
          case "fl64", "FL64" -> SampleKind.FLOAT_64;
          case "ulaw", "ULAW" -> SampleKind.MU_LAW;
          case "alaw", "ALAW" -> SampleKind.A_LAW;
          default -> null;
        };
    if (kind == null) {
      throw fault(
          "holds "
              + coding.trim()
              + " samples of "
              + bits
              + " bits, which are not read here; save it as 16- or 24-bit PCM");
    }
    ByteOrder order = coding.equals("sowt") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
    format(kind, order, channels, rate);
  }

  private static SampleKind pcm(int bits) {
    return switch ((bits + 7) / 8) {
      case 1 -> SampleKind.SIGNED_8;
      case 2 -> SampleKind.PCM_16;
      case 3 -> SampleKind.PCM_24;
      case 4 -> SampleKind.PCM_32;
      default -> null;
    };
  }

  /** An 80-bit extended number of IEEE 754, as rates are stored. */
  private static double extended(short signAndExponent, long mantissa) {
    int exponent = (signAndExponent & 0x7FFF) - 16_383 - 63;
    double size = (mantissa >>> 1) * 2.0;
    return signAndExponent < 0 ? -1 : Math.scalb(size, exponent);
  }
}
