package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every format gives back the samples where they were recorded; every spoilt file an answer. */
class RecordingsTest {

  private static final float[] BURSTS = SoundFiles.bursts(SoundFiles.RATE);
  private static final ByteOrder LITTLE = ByteOrder.LITTLE_ENDIAN;
  private static final ByteOrder BIG = ByteOrder.BIG_ENDIAN;

  @TempDir private Path folder;

  @Test
  void wavesOfWholeNumbers() throws IOException {
    for (int bits : new int[] {16, 24, 32}) {
      Path file = folder.resolve(bits + ".wav");
      SoundFiles.wav(file, 1, 1, SoundFiles.RATE, bits, SoundFiles.whole(BURSTS, bits, LITTLE));
      assertSame(BURSTS, SoundFiles.readAll(file), 1.01 / (1 << 15));
    }
    byte[] unsigned = SoundFiles.whole(BURSTS, 8, LITTLE);
    for (int i = 0; i < unsigned.length; i++) {
      unsigned[i] += (byte) 128;
    }
    Path file = folder.resolve("8.wav");
    SoundFiles.wav(file, 1, 1, SoundFiles.RATE, 8, unsigned);
    assertSame(BURSTS, SoundFiles.readAll(file), 1.01 / (1 << 7));
  }

  @Test
  void wavesOfFloats() throws IOException {
    ByteBuffer single = ByteBuffer.allocate(BURSTS.length * 4).order(LITTLE);
    ByteBuffer twice = ByteBuffer.allocate(BURSTS.length * 8).order(LITTLE);
    for (float sample : BURSTS) {
      single.putFloat(sample);
      twice.putDouble(sample);
    }
    Path file = folder.resolve("f.wav");
    SoundFiles.wav(file, 3, 1, SoundFiles.RATE, 32, single.array());
    assertSame(BURSTS, SoundFiles.readAll(file), 0);
    SoundFiles.wav(file, 3, 1, SoundFiles.RATE, 64, twice.array());
    assertSame(BURSTS, SoundFiles.readAll(file), 0);
    single.putFloat(4, Float.NaN);
    SoundFiles.wav(file, 3, 1, SoundFiles.RATE, 32, single.array());
    assertSame(BURSTS, SoundFiles.readAll(file), 0);
  }

  // ITU-T G.711 (1988), tables 1a and 2a: decision values at the ends of the segments, scaled to 16
  // bits: mu-law 0x80 is +8031 of 8159 (4 times in 16 bits: 32124), 0xFF is 0; A-law 0xAA is +4032
  // of 4096 (8 times in 16 bits: 32256), 0xD5 is +1 (8).
  @Test
  void telephoneLaws() throws IOException {
    Path file = folder.resolve("law.wav");
    SoundFiles.wav(file, 7, 1, 8_000, 8, new byte[] {(byte) 0x80, 0, (byte) 0xFF, 0x7F});
    assertSame(
        new float[] {32_124 / 32_768f, -32_124 / 32_768f, 0, 0}, SoundFiles.readAll(file), 0);
    SoundFiles.wav(file, 6, 1, 8_000, 8, new byte[] {(byte) 0xAA, 0x2A, (byte) 0xD5, 0x55});
    assertSame(
        new float[] {32_256 / 32_768f, -32_256 / 32_768f, 8 / 32_768f, -8 / 32_768f},
        SoundFiles.readAll(file),
        0);
  }

  @Test
  void channelsAreMixed() throws IOException {
    float[] stereo = new float[BURSTS.length * 2];
    for (int i = 0; i < BURSTS.length; i++) {
      stereo[2 * i] = BURSTS[i];
    }
    Path file = folder.resolve("stereo.wav");
    SoundFiles.wav(file, 1, 2, SoundFiles.RATE, 16, SoundFiles.whole(stereo, 16, LITTLE));
    float[] half = BURSTS.clone();
    for (int i = 0; i < half.length; i++) {
      half[i] /= 2;
    }
    assertSame(half, SoundFiles.readAll(file), 1e-4);
  }

  @Test
  void aiffOfBothByteOrders() throws IOException {
    Path file = folder.resolve("a.aiff");
    SoundFiles.aiff(file, "NONE", 16, SoundFiles.whole(BURSTS, 16, BIG));
    assertSame(BURSTS, SoundFiles.readAll(file), 1e-4);
    SoundFiles.aiff(file, "NONE", 24, SoundFiles.whole(BURSTS, 24, BIG));
    assertSame(BURSTS, SoundFiles.readAll(file), 1e-4);
    SoundFiles.aiff(file, "sowt", 16, SoundFiles.whole(BURSTS, 16, LITTLE));
    assertSame(BURSTS, SoundFiles.readAll(file), 1e-4);
    try (Recording recording = Recordings.open(file)) {
      assertEquals(SoundFiles.RATE, recording.ratePerSecond());
    }
  }

  @Test
  void flacGivesEverySampleBack() throws IOException {
    for (int bits : new int[] {16, 24}) {
      Path file = folder.resolve(bits + ".flac");
      FlacFile.write(file, BURSTS, bits);
      assertSame(BURSTS, SoundFiles.readAll(file), 1.01 / (1 << 15));
    }
  }

  @Test
  void opusHasNoDelay() throws Exception {
    float[] sound = SoundFiles.bursts(48_000);
    Path file = folder.resolve("o.opus");
    SoundFiles.opus(file, sound);
    float[] heard = SoundFiles.readAll(file);
    assertEquals(sound.length, heard.length);
    assertEquals(0, lag(sound, heard), 1);
  }

  @Test
  void compressedFilesHaveNoDelay() throws IOException {
    for (String name : List.of("bursts.mp3", "bursts.ogg", "bursts.m4a")) {
      float[] heard = SoundFiles.readAll(resource(name));
      assertEquals(BURSTS.length, heard.length, name);
      assertEquals(0, lag(BURSTS, heard), 1, name);
    }
  }

  @Test
  void aNameProvesNothing() throws IOException {
    Path file = folder.resolve("really.wav");
    Files.copy(resource("bursts.mp3"), file);
    assertEquals(BURSTS.length, SoundFiles.readAll(file).length);
  }

  @Test
  void unfilledLengthsAreReadToTheEnd() throws IOException {
    Path file = folder.resolve("open.wav");
    SoundFiles.wav(file, 1, 1, SoundFiles.RATE, 16, SoundFiles.whole(BURSTS, 16, LITTLE));
    byte[] bytes = Files.readAllBytes(file);
    for (int unfilled : new int[] {0, -1}) {
      ByteBuffer.wrap(bytes).order(LITTLE).putInt(40, unfilled);
      Files.write(file, bytes);
      assertSame(BURSTS, SoundFiles.readAll(file), 1e-4);
    }
    Files.write(file, Arrays.copyOf(bytes, 44 + 2 * 20_000 + 1));
    assertSame(Arrays.copyOf(BURSTS, 20_000), SoundFiles.readAll(file), 1e-4);
  }

  @Test
  void otherKindsAreNamed() throws IOException {
    expect("empty.wav", new byte[0], "is empty");
    expect("letter.wav", "Dear pupil".getBytes(StandardCharsets.UTF_8), "is not a sound file");
    expect("head.wav", "RIFF....WAVEfmt ".getBytes(StandardCharsets.UTF_8), "is it cut short?");
    expect("phone.caf", "caff0000".getBytes(StandardCharsets.UTF_8), "Core Audio");
    expect("call.amr", "#!AMR\n".getBytes(StandardCharsets.UTF_8), "AMR");
    expect("alac.m4a", Files.readAllBytes(resource("alac.m4a")), "another codec than AAC");
    byte[] whole = Files.readAllBytes(resource("bursts.m4a"));
    expect("cut.m4a", Arrays.copyOf(whole, whole.length / 2), "is cut short");
    Path adpcm = folder.resolve("adpcm.wav");
    SoundFiles.wav(adpcm, 0x11, 1, SoundFiles.RATE, 4, new byte[100]);
    expect("ima.wav", Files.readAllBytes(adpcm), "IMA ADPCM");
    SoundFiles.wav(adpcm, 1, 1, 12, 16, new byte[100]);
    expect("slow.wav", Files.readAllBytes(adpcm), "12 samples a second");
  }

  @Test
  void spoiltFilesNeverBreakTheProgram() throws Exception {
    Path sound = folder.resolve("sound");
    SoundFiles.wav(sound, 1, 1, SoundFiles.RATE, 16, SoundFiles.whole(BURSTS, 16, LITTLE));
    byte[] wav = Files.readAllBytes(sound);
    SoundFiles.aiff(sound, "NONE", 16, SoundFiles.whole(BURSTS, 16, BIG));
    byte[] aiff = Files.readAllBytes(sound);
    FlacFile.write(sound, BURSTS, 16);
    byte[] flac = Files.readAllBytes(sound);
    SoundFiles.opus(sound, SoundFiles.bursts(48_000));
    byte[] opus = Files.readAllBytes(sound);
    byte[] mp3 = Files.readAllBytes(resource("bursts.mp3"));
    byte[] ogg = Files.readAllBytes(resource("bursts.ogg"));
    byte[] m4a = Files.readAllBytes(resource("bursts.m4a"));
    SplittableRandom random = new SplittableRandom(6);
    int refused = 0;
    int read = 0;
    for (byte[] whole : List.of(wav, aiff, flac, opus, mp3, ogg, m4a)) {
      for (int round = 0; round < 24; round++) {
        byte[] spoilt = spoil(whole, random);
        Path file = folder.resolve("spoilt");
        Files.write(file, spoilt);
        try {
          SoundFiles.readAll(file);
          read++;
        } catch (IOException answer) {
          assertTrue(answer.getMessage().startsWith(file.toString()), answer.getMessage());
          refused++;
        }
      }
    }
    assertTrue(refused > 20 && read > 20, refused + " refused, " + read + " read");
  }

  /** Cuts a file short, or changes some of its bytes, mostly near its beginning. */
  private static byte[] spoil(byte[] whole, SplittableRandom random) {
    if (random.nextInt(3) == 0) {
      return Arrays.copyOf(whole, random.nextInt(1, whole.length));
    }
    byte[] spoilt = whole.clone();
    int reach = random.nextBoolean() ? Math.min(200, spoilt.length) : spoilt.length;
    for (int i = random.nextInt(1, 20); i > 0; i--) {
      spoilt[random.nextInt(4, reach)] = (byte) random.nextInt();
    }
    return spoilt;
  }

  private void expect(String name, byte[] bytes, String part) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, bytes);
    RecordingException error =
        assertThrows(RecordingException.class, () -> SoundFiles.readAll(file), name);
    assertTrue(error.getMessage().startsWith(file.toString()), error.getMessage());
    assertTrue(error.getMessage().contains(part), error.getMessage());
  }

  private static void assertSame(float[] expected, float[] actual, double tolerance) {
    assertEquals(expected.length, actual.length);
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], tolerance, "sample " + i);
    }
  }

  /** By how many samples the second sound is later than the first. */
  private static int lag(float[] sound, float[] heard) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int lag = -2_500; lag <= 2_500; lag++) {
      double sum = 0;
      for (int i = 3_000; i < Math.min(sound.length, heard.length) - 3_000; i++) {
        sum += sound[i] * heard[i + lag];
      }
      if (sum > most) {
        most = sum;
        best = lag;
      }
    }
    return best;
  }

  private Path resource(String name) throws IOException {
    Path copy = folder.resolve("copy-" + name);
    if (!Files.exists(copy)) {
      try (InputStream in = getClass().getResourceAsStream(name)) {
        Files.copy(in, copy);
      }
    }
    return copy;
  }
}
