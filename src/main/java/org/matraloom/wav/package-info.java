/**
 * Sound files that are written, and WAVE files that are read, this program's own and others'.
 *
 * <p>The one place where float samples become whole numbers: floats have full scale at 1.0, whole
 * numbers 2<sup>bits-1</sup>. Positions are frames, rates frames a second. A file appears under its
 * name when it is whole. Entry classes: {@link org.matraloom.wav.WavWriter}, {@link
 * org.matraloom.wav.WavReader} and {@link org.matraloom.wav.Mp3File}; what any WAVE file holds
 * around its samples is read in {@link org.matraloom.wav.WavLayout} alone.
 */
package org.matraloom.wav;
