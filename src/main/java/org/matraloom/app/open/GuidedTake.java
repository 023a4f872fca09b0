package org.matraloom.app.open;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.shelf.ScoreName;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.wav.PcmFormat;

/**
 * A take that was said to the guide of the page, over devices whose round trip is known: it is
 * written with the place of its guide, as {@code record} does.
 */
final class GuidedTake {

  /** The head of a WAVE file with one format and one data chunk, as the page sends it. */
  static final int HEAD_BYTES = 44;

  private static final PcmFormat FORMAT = new PcmFormat(PcmFormat.USUAL.ratePerSecond(), 16, 1);
  private static final int HUNDREDTHS = 100;

  private final Lexicon lexicon;

  GuidedTake(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** Whether a page tells where its guide was. */
  static boolean isOne(Map<String, String> query) {
    return query.containsKey("guideFrame");
  }

  /**
   * Writes a take.
   *
   * @param query what the page tells: {@code guideFrame}, the frame of the take at which the
   *     guide's first frame is heard, with the round trip in it; {@code tripFrames}; {@code tempo}
   *     in hundredths of a beat a minute; {@code countIn} in avartanas
   */
  void write(Path target, ScoreName name, String text, Map<String, String> query, byte[] wave)
      throws IOException {
    Composition composition =
        ScoreReader.read(text, "", lexicon)
            .composition()
            .orElseThrow(() -> new UserError("the score has errors; mend them first"));
    Ratio tempo = Ratio.of(whole(query, "tempo"), HUNDREDTHS);
    long countIn = whole(query, "countIn");
    if (!Tempo.inRange(tempo) || countIn < 0 || countIn > ScoreTimeline.MOST_COUNT_IN) {
      throw new UserError("the take tells a tempo or a count-in that there is not");
    }
    Performance performance = Performance.of(composition.at(new Tempo(tempo)));
    TakeNote note =
        new TakeNote(
            name.file(),
            text,
            ScoreTimeline.of(performance, (int) countIn),
            Optional.of(whole(query, "guideFrame")),
            Optional.of(whole(query, "tripFrames")));
    byte[] samples = Arrays.copyOfRange(wave, Math.min(HEAD_BYTES, wave.length), wave.length);
    try (TakeWriter writer = new TakeWriter(target, FORMAT, note)) {
      writer.write(samples, samples.length / FORMAT.bytesPerFrame() * FORMAT.bytesPerFrame());
    }
  }

  static long whole(Map<String, String> query, String name) {
    try {
      return Math.toIntExact(Long.parseLong(query.getOrDefault(name, "")));
    } catch (ArithmeticException | NumberFormatException noNumber) {
      throw new UserError(
          name + " is a whole number, given " + query.getOrDefault(name, "nothing"));
    }
  }
}
