package org.matraloom.wav;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The bytes before the samples of a WAVE file.
 *
 * <p>Source: Microsoft and IBM, "Multimedia Programming Interface and Data Specifications 1.0",
 * 1991, RIFF and WAVE; Microsoft, mmreg.h, WAVEFORMATEXTENSIBLE. Plain PCM is written for 16 bits,
 * the extensible form above that, as Microsoft asks.
 */
public final class WavHeader {

  static final int PCM = 1;
  static final int FLOAT = 3;
  static final int EXTENSIBLE = 0xFFFE;

  /** The last 14 bytes of KSDATAFORMAT_SUBTYPE_PCM; the first two are the plain format tag. */
  static final byte[] GUID_TAIL = {
    0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xAA, 0, 0x38, (byte) 0x9B, 0x71
  };

  private static final int MASK_MONO = 0x4;
  private static final int MASK_STEREO = 0x3;

  private WavHeader() {}

  static int length(PcmFormat format) {
    return 12 + 8 + formatLength(format) + 8;
  }

  /** The header of a file with so many bytes of samples and so many bytes of chunks after them. */
  static ByteBuffer of(PcmFormat format, long dataBytes, long trailingBytes) {
    return of(format, new byte[0], dataBytes, trailingBytes);
  }

  /**
   * The header of a file with whole chunks between the format and the samples.
   *
   * @param format how samples are written
   * @param chunks whole chunks, of an even number of bytes
   * @param dataBytes bytes of samples
   * @param trailingBytes bytes of chunks after them
   * @return the header, ready to be read
   */
  public static ByteBuffer of(PcmFormat format, byte[] chunks, long dataBytes, long trailingBytes) {
    long padding = dataBytes & 1;
    int length = length(format) + chunks.length;
    ByteBuffer bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put(id("RIFF")).putInt((int) (length - 8 + dataBytes + padding + trailingBytes));
    bytes.put(id("WAVE"));
    bytes.put(id("fmt ")).putInt(formatLength(format));
    bytes.putShort((short) (isPlain(format) ? PCM : EXTENSIBLE));
    bytes.putShort((short) format.channels());
    bytes.putInt(format.ratePerSecond());
    bytes.putInt(format.ratePerSecond() * format.bytesPerFrame());
    bytes.putShort((short) format.bytesPerFrame());
    bytes.putShort((short) format.bits());
    if (!isPlain(format)) {
      bytes.putShort((short) 22).putShort((short) format.bits());
      bytes.putInt(format.channels() == 1 ? MASK_MONO : MASK_STEREO);
      bytes.putShort((short) PCM).put(GUID_TAIL);
    }
    bytes.put(chunks);
    bytes.put(id("data")).putInt((int) dataBytes);
    return bytes.flip();
  }

  /**
   * The name of a chunk.
   *
   * @param fourCharacters four letters or signs of ASCII
   * @return its four bytes
   */
  public static byte[] id(String fourCharacters) {
    return fourCharacters.getBytes(StandardCharsets.US_ASCII);
  }

  private static boolean isPlain(PcmFormat format) {
    return format.bits() <= 16;
  }

  private static int formatLength(PcmFormat format) {
    return isPlain(format) ? 16 : 40;
  }
}
