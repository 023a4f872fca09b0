package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.staircase.StairStep;

/** Plays passes and records what is said to them. */
public interface PassPlayer {

  /**
   * Plays one pass and records it.
   *
   * @param pass what is played
   * @param target the file of the take, which does not exist
   * @return how far it was played, and what was heard of it meanwhile
   * @throws IOException if a device or the disk has gone; what was recorded is kept
   */
  PlayedPass play(LessonPass pass, Path target) throws IOException;

  /**
   * Tells how the last pass went and what was decided, and waits a moment.
   *
   * @param step what comes next
   * @param sentence what is said of the last pass
   * @param decision what was decided
   * @return false if a key asked for the end of the session
   * @throws IOException if a device has gone
   */
  boolean tell(StairStep step, String sentence, String decision) throws IOException;

  /**
   * Rests the voice: tells so, and waits.
   *
   * @param seconds how long
   * @param sentence why
   * @return false if a key asked for the end of the session
   * @throws IOException if the terminal has gone
   */
  boolean rest(double seconds, String sentence) throws IOException;
}
