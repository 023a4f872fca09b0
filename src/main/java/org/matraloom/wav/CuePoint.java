package org.matraloom.wav;

/**
 * A named place in a sound file.
 *
 * @param frame frames from the beginning, not negative
 * @param label its name
 */
public record CuePoint(long frame, String label) {}
