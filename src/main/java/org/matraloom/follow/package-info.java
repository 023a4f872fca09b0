/**
 * Which sound of a take is which sollu of the score.
 *
 * <p>The sollus asked are {@link org.matraloom.follow.ExpectedSollu}; they are paired with onsets
 * by time and by sound together, without assuming a tempo. Moments are seconds from the beginning
 * of the recording, deviations seconds or beats as the name says. Entry class: {@link
 * org.matraloom.follow.Alignment}.
 */
package org.matraloom.follow;
