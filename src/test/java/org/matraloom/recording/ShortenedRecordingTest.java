package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stretches are left out, and nothing else, however the recording is read. */
class ShortenedRecordingTest {

  /** Ten samples, 0 to 9. */
  private static final class Ten implements Recording {

    private int next;

    @Override
    public int ratePerSecond() {
      return 8_000;
    }

    @Override
    public int read(float[] block) {
      int read = 0;
      while (next < 10 && read < block.length) {
        block[read++] = next++;
      }
      return read;
    }

    @Override
    public void close() {
      next = 10;
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 64})
  void onlyTheStretchesAreLeftOut(int blockFrames) throws IOException {
    List<ShortenedRecording.LeftOut> out =
        List.of(
            new ShortenedRecording.LeftOut(-2, 3),
            new ShortenedRecording.LeftOut(3, 4),
            new ShortenedRecording.LeftOut(9, 100));
    List<Float> heard = new ArrayList<>();
    try (ShortenedRecording shortened = new ShortenedRecording(new Ten(), out)) {
      assertEquals(8_000, shortened.ratePerSecond());
      float[] block = new float[blockFrames];
      for (int read = shortened.read(block); read > 0; read = shortened.read(block)) {
        for (int i = 0; i < read; i++) {
          heard.add(block[i]);
        }
      }
    }
    assertArrayEquals(new Float[] {1f, 2f, 7f, 8f}, heard.toArray());
  }
}
