package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Tempo;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavReader;

/** A take is a whole WAVE file at every moment, and says what it belongs to. */
class TakeWriterTest {

  private static final PcmFormat MONO = new PcmFormat(48_000, 16, 1);

  private final Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
  private final TakeNote note =
      new TakeNote(
          "gutter.loom", "title Gutter Song\n", timeline, Optional.empty(), Optional.of(480L));

  @TempDir private Path folder;

  private Path target() {
    return folder.resolve("take.wav");
  }

  private static byte[] block(int bytes, int value) {
    byte[] block = new byte[bytes];
    Arrays.fill(block, (byte) value);
    return block;
  }

  @Test
  void whatIsWrittenCanBeReadAtOnceThoughNothingIsClosed() throws Exception {
    try (TakeWriter take = new TakeWriter(target(), MONO, note)) {
      for (int turn = 1; turn <= 5; turn++) {
        take.write(block(4_800, turn), 4_800);
        assertEquals(2_400L * turn, take.frames());
        try (WavReader reader = new WavReader(target())) {
          assertEquals(2_400L * turn, reader.lengthFrames());
        }
        try (AudioInputStream java = AudioSystem.getAudioInputStream(target().toFile())) {
          assertEquals(2_400L * turn, java.getFrameLength());
          assertEquals(48_000, java.getFormat().getSampleRate());
        }
      }
    }
  }

  @Test
  void samplesComeBackInOrder() throws IOException {
    try (TakeWriter take = new TakeWriter(target(), MONO, note)) {
      take.write(block(100, 1), 100);
      take.write(block(100, 2), 50);
      take.startsAt(12_345);
      take.write(block(100, 3), 100);
    }
    float[] samples = new float[200];
    try (WavReader reader = new WavReader(target())) {
      assertEquals(125, reader.read(samples, 200));
    }
    assertEquals(0x0101 / 32768f, samples[49]);
    assertEquals(0x0202 / 32768f, samples[50]);
    assertEquals(0x0303 / 32768f, samples[75]);
  }

  @Test
  void theNoteIsInTheFileAndThePlaceOfTheGuideIsPutInLater() throws IOException {
    try (TakeWriter take = new TakeWriter(target(), MONO, note)) {
      take.write(block(96_000, 0), 96_000);
      String before = text();
      assertTrue(
          before.contains("score: gutter.loom; rounds: 1-3; tempo: 60; origin beat: -8;"), before);
      assertTrue(before.contains("start frame:      unknown; round trip frames:          480"));
      assertTrue(before.contains("title Gutter Song\n"));
      take.startsAt(6_861);
      assertTrue(text().contains("start frame:         6861;"));
    }
    try (WavReader reader = new WavReader(target())) {
      assertEquals(48_000, reader.lengthFrames());
      assertEquals(new CuePoint(6_861, "count-in"), reader.cues().get(0));
      assertTrue(
          reader.cues().contains(new CuePoint(6_861 + 8 * 48_000, "avartana 1")),
          reader.cues().toString());
    }
  }

  private String text() throws IOException {
    return new String(Files.readAllBytes(target()), StandardCharsets.ISO_8859_1);
  }

  @Test
  void anOddNumberOfBytesIsEvened() throws IOException {
    PcmFormat odd = new PcmFormat(48_000, 24, 1);
    try (TakeWriter take = new TakeWriter(target(), odd, note)) {
      take.write(block(9, 7), 9);
    }
    assertEquals(0, Files.size(target()) % 2);
    try (WavReader reader = new WavReader(target())) {
      assertEquals(3, reader.lengthFrames());
    }
  }

  @Test
  void aTakeIsNeverOverwritten() throws IOException {
    Files.writeString(target(), "an older take");
    IOException refused =
        assertThrows(IOException.class, () -> new TakeWriter(target(), MONO, note));
    assertTrue(refused.getMessage().contains("never overwritten"), refused.getMessage());
    assertEquals("an older take", Files.readString(target()));
  }
}
