package org.matraloom.score;

/**
 * Says something about a line of a perform plan of each kind; a new kind is a new method for all.
 *
 * @param <R> what is said
 */
public interface StepVisitor<R> {

  /**
   * A phrase that is said.
   *
   * @param step the line
   * @return what is said of it
   */
  R say(Step.Say step);

  /**
   * A silence in beats.
   *
   * @param step the line
   * @return what is said of it
   */
  R restBeats(Step.RestBeats step);

  /**
   * A silence in matras.
   *
   * @param step the line
   * @return what is said of it
   */
  R restMatras(Step.RestMatras step);

  /**
   * A silence up to a place of the tala.
   *
   * @param step the line
   * @return what is said of it
   */
  R until(Step.Until step);

  /**
   * A part that begins.
   *
   * @param step the line
   * @return what is said of it
   */
  R part(Step.Part step);

  /**
   * A word to students.
   *
   * @param step the line
   * @return what is said of it
   */
  R tell(Step.Tell step);

  /**
   * A claim about the place in the tala.
   *
   * @param step the line
   * @return what is said of it
   */
  R stands(Step.Stands step);

  /**
   * What the second reciter does beside a line.
   *
   * @param step the line
   * @return what is said of it
   */
  R with(Step.With step);

  /**
   * A change of tala.
   *
   * @param step the line
   * @return what is said of it
   */
  R toTala(Step.ToTala step);
}
