/**
 * Sound files that are written, and the WAVE files of this program read again.
 *
 * <p>The one place where float samples become whole numbers: floats have full scale at 1.0, whole
 * numbers 2<sup>bits-1</sup>. Positions are frames, rates frames a second. A file appears under its
 * name when it is whole. Entry classes: {@link org.matraloom.wav.WavWriter}, {@link
 * org.matraloom.wav.WavReader} and {@link org.matraloom.wav.Mp3File}.
 */
package org.matraloom.wav;
