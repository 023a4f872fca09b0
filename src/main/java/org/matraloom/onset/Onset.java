package org.matraloom.onset;

/**
 * A moment at which a syllable or a stroke begins.
 *
 * @param seconds from the beginning of the recording; where the consonant is released or the sound
 *     attacks, not where the beat is felt
 * @param confidence 0 to 1; how sure it is that something begins here
 */
public record Onset(double seconds, double confidence) {}
