package org.matraloom.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.time.MeasuredTempo;

/**
 * Where the guide was heard while a take was recorded, as the recorder of this program notes it in
 * the file: the only thing that tells a constant lead from none.
 *
 * @param originBeat a beat of the guide
 * @param originSeconds when that beat was heard, from the beginning of the recording
 * @param beatsPerMinute the tempo of the guide
 */
public record GuideStart(double originBeat, double originSeconds, double beatsPerMinute) {

  private static final Pattern NOTE =
      Pattern.compile(
          "; tempo: (\\d+)(?:/(\\d+))?; origin beat: (-?\\d+)(?:/(\\d+))?;"
              + " start frame: +(-?\\d+); round trip frames: +\\d+; frames a second: (\\d+)");

  /** A take at another tempo than the guide's was not said to it. */
  private static final double SAME_TEMPO = 0.02;

  /**
   * Reads the note of a take.
   *
   * @param file a recording
   * @return nothing if it has no note, or if the delay of the devices was never measured, without
   *     which the place of the guide is not known closely enough
   * @throws IOException if the file cannot be read
   */
  public static Optional<GuideStart> of(Path file) throws IOException {
    Matcher note = NOTE.matcher(RecordedNote.of(file));
    if (!note.find()) {
      return Optional.empty();
    }
    double tempo = ratio(note.group(1), note.group(2));
    double origin = ratio(note.group(3), note.group(4));
    double seconds = Double.parseDouble(note.group(5)) / Double.parseDouble(note.group(6));
    return Optional.of(new GuideStart(origin, seconds, tempo));
  }

  private static double ratio(String num, String den) {
    return Double.parseDouble(num) / (den == null ? 1 : Double.parseDouble(den));
  }

  /** When a beat of the performance was heard, in seconds from the beginning of the recording. */
  double secondsAt(double beat) {
    return originSeconds + new MeasuredTempo(beatsPerMinute).secondsOf(beat - originBeat);
  }

  /** How long a beat of the guide lasts, in seconds. */
  double beatSeconds() {
    return new MeasuredTempo(beatsPerMinute).beatSeconds();
  }

  /**
   * How far after the guide the sollus were said.
   *
   * @param expected the sollus of the score
   * @param sollus what was said
   * @param beatsPerMinute the tempo of the take
   * @return the median over all sollus, in seconds, negative if ahead; empty if the take was not
   *     said at the tempo of the guide
   */
  OptionalDouble leadSeconds(
      List<ExpectedSollu> expected, List<SaidSollu> sollus, double beatsPerMinute) {
    if (Math.abs(this.beatsPerMinute / beatsPerMinute - 1) > SAME_TEMPO) {
      return OptionalDouble.empty();
    }
    double[] late =
        sollus.stream()
            .mapToDouble(
                said ->
                    said.feltSeconds() - secondsAt(expected.get(said.place()).beat().toDouble()))
            .toArray();
    return late.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(RobustStatistics.median(late));
  }
}
