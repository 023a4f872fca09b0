package org.matraloom.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Performance;

/**
 * Which rounds of a score a take was recorded to, as the recorder of this program notes it.
 *
 * @param first the first round, from 1
 * @param last the last round, not before the first
 */
public record RecordedRounds(int first, int last) {

  private static final Pattern NOTE =
      Pattern.compile("score: [^;]*; rounds: (\\d{1,6})-(\\d{1,6}); tempo: ");

  /**
   * Reads the note of a take.
   *
   * @param file a recording
   * @return nothing if it has no such note
   * @throws IOException if the file cannot be read
   */
  public static Optional<RecordedRounds> of(Path file) throws IOException {
    Matcher note = NOTE.matcher(RecordedNote.of(file));
    return note.find()
        ? Optional.of(
            new RecordedRounds(Integer.parseInt(note.group(1)), Integer.parseInt(note.group(2))))
        : Optional.empty();
  }

  /**
   * The rounds of a performance that were recorded.
   *
   * @param whole the performance of the score
   * @return these rounds of it, each at its place in the tala; the whole if the score has other
   *     rounds by now
   */
  public Performance in(Performance whole) {
    boolean exist = first >= 1 && first <= last && last <= whole.rounds().size();
    return exist ? whole.onlyRounds(first, last) : whole;
  }
}
