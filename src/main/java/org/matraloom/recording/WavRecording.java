package org.matraloom.recording;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;

/**
 * A WAVE file: PCM of 8 to 32 bits, float, mu-law or A-law; plain, extensible or RF64.
 *
 * <p>A file whose length was never filled in, or whose samples break off, is read as far as it
 * goes. Layout: Microsoft, "Multiple channel audio data and WAVE files" (2007); RF64: EBU Tech 3306
 * (2009).
 */
final class WavRecording extends PcmRecording {

  private static final int CHUNK_HEAD = 8;
  private static final int PLAIN_FORMAT = 16;
  private static final int EXTENSIBLE_FORMAT = 40;
  private static final int EXTENSIBLE = 0xFFFE;
  private static final long UNKNOWN_LENGTH = 0xFFFF_FFFFL;

  WavRecording(Path file) throws IOException {
    super(file, ByteOrder.LITTLE_ENDIAN);
  }

  @Override
  void readHeader() throws IOException {
    ByteBuffer head = take(0, 12);
    if (!name(head.position(8)).equals("WAVE")) {
      throw fault("is a RIFF file but not WAVE; give a recording of sound");
    }
    long size = sizeBytes();
    long longLength = UNKNOWN_LENGTH;
    long position = 12;
    while (position + CHUNK_HEAD <= size) {
      ByteBuffer chunk = take(position, CHUNK_HEAD);
      String name = name(chunk);
      long length = Integer.toUnsignedLong(chunk.getInt());
      position += CHUNK_HEAD;
      if (name.equals("ds64")) {
        longLength = take(position, 16).getLong(8);
      } else if (name.equals("fmt ")) {
        readFormat(take(position, (int) Math.min(length, EXTENSIBLE_FORMAT)));
      } else if (name.equals("data")) {
        long stated = length == UNKNOWN_LENGTH ? longLength : length;
        boolean open = stated == UNKNOWN_LENGTH || stated < 0 || (stated == 0 && size > position);
        data(position, open ? size - position : Math.min(stated, size - position));
        length = open ? size - position : stated;
      }
      position += length + (length & 1);
    }
  }

  private void readFormat(ByteBuffer format) throws IOException {
    if (format.limit() < PLAIN_FORMAT) {
      throw fault("breaks off inside its header");
    }
    int tag = Short.toUnsignedInt(format.getShort(0));
    int channels = Short.toUnsignedInt(format.getShort(2));
    int frameBytes = Short.toUnsignedInt(format.getShort(12));
    if (tag == EXTENSIBLE && format.limit() >= EXTENSIBLE_FORMAT) {
      tag = Short.toUnsignedInt(format.getShort(24));
    }
    int sampleBytes = channels == 0 ? 0 : frameBytes / channels;
    SampleKind kind = kind(tag, sampleBytes, Short.toUnsignedInt(format.getShort(14)));
    format(kind, ByteOrder.LITTLE_ENDIAN, channels, Integer.toUnsignedLong(format.getInt(4)));
  }

  private SampleKind kind(int tag, int sampleBytes, int bits) throws IOException {
    SampleKind kind =
        switch (tag) {
          case 1 -> pcm(sampleBytes);
          case 3 ->
              sampleBytes == 8
                  ? SampleKind.FLOAT_64
                  : sampleBytes == 4 ? SampleKind.FLOAT_32 : null;
          case 6 -> SampleKind.A_LAW;
          case 7 -> SampleKind.MU_LAW;
          default -> null;
        };
    if (kind == null || kind.bytes() != sampleBytes) {
      throw fault(
          "holds "
              + codec(tag)
              + " samples of "
              + bits
              + " bits, which are not read here; save it as 16- or 24-bit PCM");
    }
    return kind;
  }

  private static SampleKind pcm(int sampleBytes) {
    return switch (sampleBytes) {
      case 1 -> SampleKind.UNSIGNED_8;
      case 2 -> SampleKind.PCM_16;
      case 3 -> SampleKind.PCM_24;
      case 4 -> SampleKind.PCM_32;
      default -> null;
    };
  }

  private static String codec(int tag) {
    return switch (tag) {
      case 1 -> "PCM";
      case 2 -> "Microsoft ADPCM";
      case 3 -> "float";
      case 0x11 -> "IMA ADPCM";
      case 0x31 -> "GSM 6.10";
      case 0x50, 0x55 -> "MPEG (MP3)";
      default -> "format " + tag;
    };
  }
}
