package org.matraloom.measure;

/**
 * How one place of the beat is said.
 *
 * @param matrasPerBeat the nadai, kalam included
 * @param matra which matra of the beat, from 1
 * @param meanSeconds how much later than even it is said in the mean; negative if earlier
 * @param spreadSeconds the standard deviation
 * @param count how many sollus were measured
 */
public record Evenness(
    int matrasPerBeat, int matra, double meanSeconds, double spreadSeconds, int count) {}
