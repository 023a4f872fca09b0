/**
 * Compositions for practice, made from a few numbers or from a score of the user: switches of
 * nadai, the join before and after a change, loops, call and answer, speeds and tempo ladders.
 *
 * <p>A drill is a {@link org.matraloom.score.Composition} like any other, so that it can be written
 * as a score, edited, printed, rendered and played. Each begins and ends where the tala says it
 * should: no drill shifts a beat.
 */
package org.matraloom.practice;
