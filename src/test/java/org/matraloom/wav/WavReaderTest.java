package org.matraloom.wav;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.voice.Noise;

/** Files of other programs are read, and broken ones are refused in words. */
class WavReaderTest {

  @TempDir Path folder;

  /** Each file holds 0, a half and minus one in its own kind of sample. */
  @ParameterizedTest
  @CsvSource({
    "8, 0100 0100 44ac0000 44ac0000 0100 0800, 80c000",
    "16, 0100 0100 44ac0000 88580100 0200 1000, 000000400080",
    "24, 0100 0100 44ac0000 cc040200 0300 1800, 000000000040000080",
    "32, 0100 0100 44ac0000 10b10200 0400 2000, 000000000000004000000080",
    "32, 0300 0100 44ac0000 10b10200 0400 2000, 000000000000003f000080bf",
    "64, 0300 0100 44ac0000 20620500 0800 4000, 0000000000000000000000000000e03f000000000000f0bf"
  })
  void everyKindOfSample(int bits, String format, String samples) throws IOException {
    Path file = file(chunk("fmt ", format), chunk("data", samples));
    try (WavReader reader = new WavReader(file)) {
      assertEquals(bits, reader.bits());
      assertEquals(44_100, reader.ratePerSecond());
      float[] read = new float[3];
      assertEquals(3, reader.read(read, 100));
      assertArrayEquals(new float[] {0, 0.5f, -1}, read);
    }
  }

  @Test
  void otherChunksArePassedOver() throws IOException {
    Path file =
        file(chunk("JUNK", "010203"), FORMAT_16, chunk("bext", "0102"), chunk("data", "00400040"));
    try (WavReader reader = new WavReader(file)) {
      assertEquals(2, reader.lengthFrames());
      assertEquals(List.of(), reader.cues());
    }
  }

  @Test
  void samplesThatBreakOffAreReadAsFarAsTheyGo() throws IOException {
    byte[] whole = Files.readAllBytes(file(FORMAT_16, chunk("data", "00400040004000400040")));
    Path file = folder.resolve("cut.wav");
    Files.write(file, Arrays.copyOf(whole, whole.length - 3));
    try (WavReader reader = new WavReader(file)) {
      assertEquals(3, reader.lengthFrames());
      assertEquals(3, reader.read(new float[10], 10));
    }
  }

  @Test
  void refusesWhatIsNoSoundFile() throws IOException {
    assertRefused("is not a WAVE file; give a .wav file", "title Gutter Song\n".getBytes());
    assertRefused("breaks off inside its header", new byte[0]);
    assertRefused("breaks off inside its header", "RIFF".getBytes());
    assertRefused(
        "has no format in it; is it cut short?", Files.readAllBytes(file(chunk("JUNK", "00"))));
    assertRefused("has no samples in it; is it cut short?", Files.readAllBytes(file(FORMAT_16)));
    assertRefused(
        "has no format in it; is it cut short?", Files.readAllBytes(file(chunk("data", "0000"))));
    assertRefused(
        "holds MPEG (MP3) samples of 0 bits, which are not read here;"
            + " save it as 16- or 24-bit PCM",
        Files.readAllBytes(
            file(chunk("fmt ", "5500 0200 44ac0000 803e0000 0100 0000"), chunk("data", "0000"))));
  }

  /** RF64 states the length of the samples in a chunk of its own (EBU Tech 3306, 2009). */
  @Test
  void samplesOfALongFileAreReadAsFarAsTheyGo() throws IOException {
    for (long stated : new long[] {4, 1L << 40, Long.MAX_VALUE, -1}) {
      byte[] length = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN).putLong(stated).array();
      byte[] data = chunk("data", "00400040");
      Arrays.fill(data, 4, 8, (byte) 0xFF);
      String sizes = "0000000000000000" + HexFormat.of().formatHex(length) + "000000000000000000";
      byte[] bytes = Files.readAllBytes(file(chunk("ds64", sizes), FORMAT_16, data));
      bytes[2] = '6';
      bytes[3] = '4';
      bytes[1] = 'F';
      Path file = Files.write(folder.resolve("long.wav"), bytes);
      try (WavReader reader = new WavReader(file)) {
        assertEquals(2, reader.lengthFrames(), "stated " + stated);
      }
    }
  }

  @Test
  void noBrokenHeaderGivesAnythingButAnIoException() throws IOException {
    Path good = folder.resolve("good.wav");
    try (WavWriter writer =
        new WavWriter(good, PcmFormat.USUAL, 100, List.of(new CuePoint(3, "avartana 1")))) {
      writer.write(new float[200], 100);
      writer.finish();
    }
    byte[] whole = Files.readAllBytes(good);
    Noise noise = new Noise(11);
    int read = 0;
    int refused = 0;
    for (int round = 0; round < 800; round++) {
      byte[] broken = whole.clone();
      for (int change = 0; change < 3; change++) {
        boolean head = noise.next() < 0;
        int at = (int) ((noise.next() + 1) / 2 * (head ? 44 : broken.length));
        broken[at] = (byte) (noise.next() * 128);
      }
      Path file = folder.resolve("broken.wav");
      Files.write(file, broken);
      try (WavReader reader = new WavReader(file)) {
        reader.read(new float[100 * reader.channels()], 100);
        read++;
      } catch (IOException said) {
        assertTrue(said.getMessage().contains("broken.wav"), said.getMessage());
        refused++;
      }
    }
    assertTrue(read > 100 && refused > 100, read + " read, " + refused + " refused");
  }

  private static final byte[] FORMAT_16 = chunk("fmt ", "0100 0100 44ac0000 88580100 0200 1000");

  private void assertRefused(String why, byte[] bytes) throws IOException {
    Path file = folder.resolve("refused.wav");
    Files.write(file, bytes);
    IOException refused = assertThrows(IOException.class, () -> new WavReader(file).close());
    assertEquals(file + " " + why, refused.getMessage());
  }

  private static byte[] chunk(String id, String hex) {
    byte[] inside = HexFormat.of().parseHex(hex.replace(" ", ""));
    byte[] chunk = new byte[8 + inside.length + (inside.length & 1)];
    System.arraycopy(id.getBytes(), 0, chunk, 0, 4);
    chunk[4] = (byte) inside.length;
    System.arraycopy(inside, 0, chunk, 8, inside.length);
    return chunk;
  }

  private Path file(byte[]... chunks) throws IOException {
    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    int length = 4 + Arrays.stream(chunks).mapToInt(chunk -> chunk.length).sum();
    bytes.writeBytes("RIFF".getBytes());
    bytes.writeBytes(new byte[] {(byte) length, (byte) (length >> 8), 0, 0});
    bytes.writeBytes("WAVE".getBytes());
    for (byte[] chunk : chunks) {
      bytes.writeBytes(chunk);
    }
    Path file = folder.resolve("made.wav");
    Files.write(file, bytes.toByteArray());
    return file;
  }
}
