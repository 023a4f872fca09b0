package org.matraloom.voice;

/**
 * The first three formants of a steady sound.
 *
 * @param f1 Hz
 * @param f2 Hz
 * @param f3 Hz
 */
record PhoneFormants(double f1, double f2, double f3) {}
