/**
 * The three kinds of time and the only conversions between them.
 *
 * <p>A position in music is an exact number of beats ({@link org.matraloom.time.Ratio}); a position
 * in sound is a {@code long} count of frames; seconds are {@code double} and appear only at the
 * edges of the program. {@link org.matraloom.time.FrameClock} turns an absolute position in beats
 * into a frame by rounding once; nothing steps along by adding rounded lengths. {@link
 * org.matraloom.time.Tempo} knows how long beats last, {@link org.matraloom.time.MeasuredTempo}
 * does for a tempo that was heard.
 */
package org.matraloom.time;
