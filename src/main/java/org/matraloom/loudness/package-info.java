/**
 * How loud a sound is for a listener, and how high it peaks.
 *
 * <p>After ITU-R BS.1770-4: loudness in LUFS, true peaks in dBTP. Entry classes: {@link
 * org.matraloom.loudness.LoudnessMeter}, {@link org.matraloom.loudness.TruePeak}, and {@link
 * org.matraloom.loudness.Levels} for a file.
 */
package org.matraloom.loudness;
