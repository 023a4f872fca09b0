/**
 * What a score says, as immutable records: talas and their kriyas, sollus, phrases, compositions,
 * and the performance that follows from them.
 *
 * <p>Lengths and positions are exact ({@link org.matraloom.time.Ratio}) and counted in beats unless
 * a name says matras or aksharas. Beat 0 of a performance is the samam of the avartana in which it
 * starts. Entry classes: {@link org.matraloom.score.Composition} and {@link
 * org.matraloom.score.Performance}.
 */
package org.matraloom.score;
