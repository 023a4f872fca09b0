package org.matraloom.wav;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.voice.Noise;

/**
 * Files are laid out as RIFF/WAVE says.
 *
 * <p>Source of the expected bytes: Microsoft and IBM, "Multimedia Programming Interface and Data
 * Specifications 1.0", 1991, and Microsoft's mmreg.h for the extensible form (from memory: the PCM
 * GUID and the speaker masks).
 */
class WavWriterTest {

  @TempDir Path folder;

  @Test
  void plainHeaderForSixteenBits() throws IOException {
    byte[] file = write(new PcmFormat(44_100, 16, 2), new float[] {0, 0.5f, -1, 1}, List.of());
    assertEquals(
        "52494646 2c000000 57415645"
            + " 666d7420 10000000 0100 0200 44ac0000 10b10200 0400 1000"
            + " 64617461 08000000 0000 0040 0080 ff7f",
        hex(file, 4, 4, 4, 4, 4, 2, 2, 4, 4, 2, 2, 4, 4, 2, 2, 2, 2));
  }

  @Test
  void extensibleHeaderForTwentyFourBits() throws IOException {
    byte[] file = write(new PcmFormat(96_000, 24, 2), new float[] {0.5f, -1}, List.of());
    assertEquals(
        "52494646 42000000 57415645"
            + " 666d7420 28000000 feff 0200 00770100 00ca0800 0600 1800"
            + " 1600 1800 03000000 0100000000001000800000aa00389b71"
            + " 64617461 06000000 000040 000080",
        hex(file, 4, 4, 4, 4, 4, 2, 2, 4, 4, 2, 2, 2, 2, 4, 16, 4, 4, 3, 3));
  }

  @Test
  void oddSamplesGetAPadByteThatIsCountedByTheFileOnly() throws IOException {
    PcmFormat mono = new PcmFormat(48_000, 24, 1);
    byte[] file = write(mono, new float[] {0.5f}, List.of());
    assertEquals(60 + 8 + 3 + 1, file.length);
    assertEquals("04000000", hex(Arrays.copyOfRange(file, 40, 44), 4), "mask of a mono file");
    assertEquals("03000000", hex(Arrays.copyOfRange(file, 64, 68), 4));
    assertEquals(file.length - 8, Byte.toUnsignedInt(file[4]));
    assertEquals(0, file[file.length - 1]);
  }

  @Test
  void cueAndLabelChunks() throws IOException {
    List<CuePoint> cues = List.of(new CuePoint(0, "one"), new CuePoint(258, "four"));
    byte[] file = write(new PcmFormat(48_000, 16, 1), new float[300], cues);
    byte[] end = Arrays.copyOfRange(file, 44 + 600, file.length);
    assertEquals(
        "63756520 34000000 02000000"
            + " 01000000 00000000 64617461 00000000 00000000 00000000"
            + " 02000000 02010000 64617461 00000000 00000000 02010000"
            + " 4c495354 26000000 6164746c"
            + " 6c61626c 08000000 01000000 6f6e6500"
            + " 6c61626c 09000000 02000000 666f757200 00",
        hex(end, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 5, 1));
    assertEquals(file.length - 8, (file[4] & 0xFF) + 256 * (file[5] & 0xFF));
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    float[] samples = new float[6_000];
    Noise noise = new Noise(3);
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (float) noise.next();
    }
    List<CuePoint> cues =
        List.of(new CuePoint(1, "avartana 1"), new CuePoint(77, "round 1: Mazhai \u092e, nadai 4"));
    for (int bits : new int[] {16, 24}) {
      for (int channels : new int[] {1, 2}) {
        PcmFormat format = new PcmFormat(48_000, bits, channels);
        write(format, samples, cues);
        try (WavReader reader = new WavReader(folder.resolve("out.wav"))) {
          assertEquals(48_000, reader.ratePerSecond());
          assertEquals(bits, reader.bits());
          assertEquals(channels, reader.channels());
          assertEquals(6_000 / channels, reader.lengthFrames());
          assertEquals(cues, reader.cues());
          float[] back = new float[6_000];
          assertEquals(6_000 / channels, reader.read(back, 1_000_000));
          assertEquals(0, reader.read(back, 10));
          PcmCodec codec = new PcmCodec(bits);
          for (int i = 0; i < back.length; i++) {
            assertEquals(codec.decode(codec.encode(samples[i])), back[i]);
          }
        }
      }
    }
  }

  @Test
  void refusesMoreThanFourGigabytesBeforeItStarts() throws IOException {
    Path target = folder.resolve("long.wav");
    IOException refused =
        assertThrows(
            IOException.class,
            () ->
                new WavWriter(
                    target, new PcmFormat(96_000, 24, 2), 8L * 3_600 * 96_000, List.of()));
    assertEquals(
        target
            + " would be too long: a WAVE file holds 4 GB, which is 124 minutes at this rate and"
            + " sample size, and this is 480 minutes; render fewer rounds, or take mono, 16 bits"
            + " or a lower rate",
        refused.getMessage());
    assertEquals(List.of(), files());
  }

  @Test
  void theLimitIsTheThirtyTwoBitSizeField() throws IOException {
    PcmFormat mono = new PcmFormat(48_000, 16, 1);
    long fit = (0xFFFF_FFFFL + 8 - 44 - 1) / 2;
    new WavWriter(folder.resolve("fits.wav"), mono, fit, List.of()).close();
    assertThrows(
        IOException.class,
        () -> new WavWriter(folder.resolve("long.wav"), mono, fit + 1, List.of()));
    assertEquals(List.of(), files());
  }

  @Test
  void aFailureLeavesTheOlderFileAndNothingElse() throws IOException {
    Path target = folder.resolve("out.wav");
    Files.writeString(target, "older");
    assertThrows(
        UncheckedIOException.class,
        () -> {
          try (WavWriter writer = new WavWriter(target, PcmFormat.USUAL, 100, List.of())) {
            writer.write(new float[20], 10);
            assertEquals(2, files().size(), "a part file lies beside it");
            throw new UncheckedIOException(new IOException("disk full"));
          }
        });
    assertEquals("older", Files.readString(target));
    assertEquals(List.of("out.wav"), files());

    write(PcmFormat.USUAL, new float[20], List.of());
    assertEquals(List.of("out.wav"), files());
    assertEquals(44 + 40, Files.size(target));
  }

  @Test
  void moreThanWasAnnouncedIsRefused() throws IOException {
    try (WavWriter writer =
        new WavWriter(folder.resolve("out.wav"), PcmFormat.USUAL, 10, List.of())) {
      assertThrows(IllegalStateException.class, () -> writer.write(new float[22], 11));
    }
    assertEquals(List.of(), files());
  }

  @Test
  void saysWhereItCannotWrite() throws IOException {
    Path nowhere = folder.resolve("missing").resolve("out.wav");
    IOException refused =
        assertThrows(
            IOException.class, () -> new WavWriter(nowhere, PcmFormat.USUAL, 10, List.of()));
    assertEquals(
        "cannot write " + nowhere + ": there is no folder " + nowhere.getParent(),
        refused.getMessage());
    refused =
        assertThrows(
            IOException.class, () -> new WavWriter(folder, PcmFormat.USUAL, 10, List.of()));
    assertEquals(folder + " is a folder; give the name of a file", refused.getMessage());
  }

  @Test
  void aDeviceIsNeverReplaced() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device), "there is such a device on this system");
    IOException refused =
        assertThrows(
            IOException.class, () -> new WavWriter(device, PcmFormat.USUAL, 10, List.of()));
    assertEquals("/dev/null is a device; give the name of a file", refused.getMessage());
  }

  @Test
  void tellsTheFormatsThatAreOffered() {
    assertThrows(IllegalArgumentException.class, () -> new PcmFormat(22_050, 16, 2));
    assertThrows(IllegalArgumentException.class, () -> new PcmFormat(48_000, 32, 2));
    assertThrows(IllegalArgumentException.class, () -> new PcmFormat(48_000, 16, 0));
    assertEquals(6, new PcmFormat(48_000, 24, 2).bytesPerFrame());
  }

  private byte[] write(PcmFormat format, float[] samples, List<CuePoint> cues) throws IOException {
    Path target = folder.resolve("out.wav");
    int frames = samples.length / format.channels();
    try (WavWriter writer = new WavWriter(target, format, frames, cues)) {
      writer.write(Arrays.copyOf(samples, format.channels()), 1);
      writer.write(Arrays.copyOfRange(samples, format.channels(), samples.length), frames - 1);
      writer.finish();
    }
    return Files.readAllBytes(target);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  private static String hex(byte[] bytes, int... lengths) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (int length : lengths) {
      out.append(at == 0 ? "" : " ").append(HexFormat.of().formatHex(bytes, at, at + length));
      at += length;
    }
    assertEquals(bytes.length, at, "all bytes are looked at");
    return out.toString();
  }
}
