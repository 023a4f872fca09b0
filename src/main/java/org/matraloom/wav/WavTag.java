package org.matraloom.wav;

/** The number by which a WAVE file tells how its samples are stored (Microsoft, mmreg.h). */
final class WavTag {

  private WavTag() {}

  /** How a sample of so many bytes is stored; of its bits only the message knows. */
  static SampleKind kind(int tag, int sampleBytes, int bits) throws WavFault {
    SampleKind kind =
        switch (tag) {
          case WavHeader.PCM -> pcm(sampleBytes);
          case WavHeader.FLOAT ->
              sampleBytes == 8
                  ? SampleKind.FLOAT_64
                  : sampleBytes == 4 ? SampleKind.FLOAT_32 : null;
          case 6 -> SampleKind.A_LAW;
          case 7 -> SampleKind.MU_LAW;
          default -> null;
        };
    if (kind == null || kind.bytes() != sampleBytes) {
      throw new WavFault(
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
