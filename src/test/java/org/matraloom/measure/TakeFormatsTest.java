package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.follow.SaidAs;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;

/** One take in many codings gives one answer. */
class TakeFormatsTest {

  private static final int RATE = 22_050;
  private static final int PCM = 1;
  private static final int FLOAT = 3;
  private static final int MU_LAW = 7;

  private static final Timeline TIMELINE = SaidAs.timeline(SaidAs.FOUR_AND_FIVE);

  @TempDir private Path folder;
  private float[] sound;

  @BeforeEach
  void say() {
    double[] times =
        SaidAs.expected(SaidAs.FOUR_AND_FIVE).stream()
            .mapToDouble(sollu -> 0.8 + sollu.seconds())
            .toArray();
    sound = SpokenTake.syllablesAt(RATE, times, new SplittableRandom(21)).sound();
  }

  private void assertMeasured(int tag, int bits, byte[] data, String what) throws IOException {
    Path file = folder.resolve("take.wav");
    SoundFiles.wav(file, tag, 1, RATE, bits, data);
    TakeFindings found;
    try (Recording recording = Recordings.open(file)) {
      found = TakeFindings.of(TIMELINE, OnsetCurve.of(recording));
    }
    assertTrue(found.doubt().isEmpty(), what + ": " + found.doubt());
    assertEquals(80, found.pulse().orElseThrow().beatsPerMinute(), 0.2, what);
    assertTrue(found.alignment().missed().size() <= 3, what + ": " + found.alignment().missed());
    assertTrue(found.landing().orElseThrow().lands(), what + ": " + found.landing());
  }

  @Test
  void wholeNumbersAndFloat() throws IOException {
    assertMeasured(PCM, 16, SoundFiles.whole(sound, 16, ByteOrder.LITTLE_ENDIAN), "16 bits");
    assertMeasured(PCM, 24, SoundFiles.whole(sound, 24, ByteOrder.LITTLE_ENDIAN), "24 bits");
    byte[] eight = SoundFiles.whole(sound, 8, ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < eight.length; i++) {
      eight[i] ^= (byte) 0x80;
    }
    assertMeasured(PCM, 8, eight, "8 bits");
    ByteBuffer floats = ByteBuffer.allocate(4 * sound.length).order(ByteOrder.LITTLE_ENDIAN);
    for (float sample : sound) {
      floats.putFloat(sample);
    }
    assertMeasured(FLOAT, 32, floats.array(), "float");
  }

  /** ITU-T G.711: segments of sixteen steps, all bits inverted. */
  @Test
  void muLaw() throws IOException {
    ByteArrayOutputStream coded = new ByteArrayOutputStream();
    for (float sample : sound) {
      int size = Math.min(32_635, Math.round(Math.abs(sample) * 32_767)) + 132;
      int segment = 24 - Integer.numberOfLeadingZeros(size);
      int step = (size >> (segment + 3)) & 15;
      coded.write(~((sample < 0 ? 0x80 : 0) | segment << 4 | step));
    }
    assertMeasured(MU_LAW, 8, coded.toByteArray(), "mu-law");
  }

  @Test
  void clippedAndQuiet() throws IOException {
    float[] clipped = new float[sound.length];
    float[] quiet = new float[sound.length];
    for (int i = 0; i < sound.length; i++) {
      clipped[i] = Math.max(-1, Math.min(1, 12 * sound[i]));
      quiet[i] = 0.02f * sound[i];
    }
    assertMeasured(PCM, 16, SoundFiles.whole(clipped, 16, ByteOrder.LITTLE_ENDIAN), "clipped");
    assertMeasured(PCM, 16, SoundFiles.whole(quiet, 16, ByteOrder.LITTLE_ENDIAN), "quiet");
  }
}
