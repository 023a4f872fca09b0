package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.UserError;
import org.matraloom.log.PracticeLog;
import org.matraloom.onset.KnownSounds;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.staircase.StairSettings;

/**
 * What a practice session is asked to be.
 *
 * @param composition what is practised; it keeps to one tala
 * @param lexicon how its sollus are said, and how fast a mouth may go
 * @param tempi between what the tempo is to move
 * @param onlyTheWhole whether words, joins and sections are left out
 * @param explains whether each step is told with its reason
 * @param folder a new folder for the takes
 * @param log where each pass is noted, if anywhere
 * @param leadIn whole avartanas of plain words before those that lead in to the whole, as far as
 *     they are counted in; empty for no words
 */
public record LessonOrder(
    Composition composition,
    Lexicon lexicon,
    Tempi tempi,
    boolean onlyTheWhole,
    boolean explains,
    Path folder,
    Optional<PracticeLog> log,
    Optional<Integer> leadIn) {

  /**
   * What is wished of the tempo.
   *
   * @param goal whole beats a minute; the score's own tempo if not given
   * @param from where it begins, in whole beats a minute; if not given, what the log says, else
   *     four fifths of the goal
   * @param clearRate the limit of the mouth in matras a second; that of the lexicon if not given
   */
  public record Tempi(Optional<Integer> goal, Optional<Integer> from, Optional<Double> clearRate) {}

  /** Refuses a piece that changes its tala. */
  public LessonOrder {
    OneTala.of(composition, "a practice session");
  }

  /** Between what the tempo moves; refuses a wish that cannot be. */
  StairSettings settings() throws IOException {
    return LessonTempi.settings(
        composition, tempi.goal(), begin(), LessonTempi.mouth(tempi.clearRate(), lexicon));
  }

  private Optional<Integer> begin() throws IOException {
    return tempi.from().isPresent() || log.isEmpty()
        ? tempi.from()
        : LessonTempi.leftOff(log.get().read(), pieces().title());
  }

  private LessonPieces pieces() {
    return new LessonPieces(composition, lexicon, leadIn);
  }

  /**
   * The session, with its folder made.
   *
   * @param player plays and records
   * @param mouth what the ear knows of who recites
   * @return a session that has not begun
   * @throws UserError if a tempo is none, or faster than a mouth can follow
   * @throws IOException if the log cannot be read or the folder cannot be made, or is there already
   */
  public Lesson lesson(PassPlayer player, KnownSounds mouth) throws IOException {
    Course course = new Course(pieces(), settings(), onlyTheWhole);
    LessonNotes notes = new LessonNotes(folder, log);
    return new Lesson(
        course, player, new PassEar(lexicon, mouth), notes, explains, Lesson.REST_AFTER_SECONDS);
  }
}
