/**
 * The written score: text read to a {@link org.matraloom.score.Composition}, and changed in place.
 *
 * <p>{@link org.matraloom.notation.ScoreReader} reads a {@code .loom} score and tells all its
 * errors at once; {@link org.matraloom.notation.ScoreEditor} changes one. Places in the text are
 * lines and columns from 1, a column being one character as a reader counts them (a grapheme
 * cluster).
 *
 * <p>No text makes the reader throw, hang or run out of memory. The limits, each with an error of
 * its own:
 *
 * <ul>
 *   <li>a file has at most 1 MB (1,000,000 bytes), a line at most 10,000 characters, a word or a
 *       name at most 200;
 *   <li>brackets and phrases stand at most 32 deep inside each other, and the brackets for speed
 *       multiply to at most 64 times as fast;
 *   <li>a group has 1 to 99 sollus, each held 1 to 99 matras, and a karvai of at most 99;
 *   <li>something is said 1 to 999 times, and what is said takes some time;
 *   <li>a performance has at most 10,000 rounds and rests, passes at most 2,000,000 sollus and
 *       marks, and lasts at most 24 hours at the written tempo;
 *   <li>fractions of a beat are those that a nadai up to 9 in any kalam has: they divide 10,080;
 *   <li>at most 100 errors are shown.
 * </ul>
 */
package org.matraloom.notation;
