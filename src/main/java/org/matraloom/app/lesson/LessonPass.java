package org.matraloom.app.lesson;

import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.staircase.Help;

/**
 * One pass: what is said, and with what help.
 *
 * @param what its name in words
 * @param composition what is said, at its tempo
 * @param timeline the same laid out, with what is heard of the hand
 * @param help what is played with it
 */
record LessonPass(String what, Composition composition, Timeline timeline, Help help) {

  /** The tempo in whole beats a minute. */
  int tempo() {
    return (int) Math.round(composition.tempo().beatsPerMinute().toDouble());
  }

  /** What is played next, in one line. */
  String words() {
    return what + ", " + tempo() + " beats a minute, " + help.words();
  }
}
