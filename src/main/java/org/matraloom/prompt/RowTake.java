package org.matraloom.prompt;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.WavReader;

/**
 * A row as it was recorded.
 *
 * @param sound its samples, one channel, full scale at 1
 * @param ratePerSecond frames a second
 * @param startSeconds where the count-in is heard to begin
 */
public record RowTake(float[] sound, int ratePerSecond, double startSeconds) {

  private static final int LONGEST_SECONDS = 120;
  private static final String COUNT_IN = "count-in";

  /**
   * Reads a recording that was made for a row.
   *
   * @param file the recording
   * @return nothing if it does not tell where its count-in is, or is no such recording
   * @throws IOException if it cannot be read
   */
  public static Optional<RowTake> read(Path file) throws IOException {
    try (WavReader reader = new WavReader(file)) {
      Optional<CuePoint> begin =
          reader.cues().stream().filter(cue -> cue.label().equals(COUNT_IN)).findFirst();
      int rate = reader.ratePerSecond();
      boolean isRow = reader.channels() == 1 && reader.lengthFrames() <= LONGEST_SECONDS * rate;
      if (begin.isEmpty() || !isRow) {
        return Optional.empty();
      }
      float[] sound = new float[(int) reader.lengthFrames()];
      reader.read(sound, sound.length);
      return Optional.of(new RowTake(sound, rate, (double) begin.get().frame() / rate));
    }
  }

  /**
   * Hears it.
   *
   * @param row what was asked for in it
   * @return what judges it
   */
  public SayJudge judge(AskedRow row) {
    return new SayJudge(row, sound, ratePerSecond, startSeconds);
  }
}
