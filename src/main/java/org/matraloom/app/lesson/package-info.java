/**
 * The command that listens, decides and goes on: a practice session.
 *
 * <p>Tempi are whole beats a minute. Entry class: {@link org.matraloom.app.lesson.PractiseCommand};
 * {@link org.matraloom.app.lesson.Lesson} is the session itself, on whatever {@link
 * org.matraloom.app.lesson.PassPlayer} plays it.
 */
package org.matraloom.app.lesson;
