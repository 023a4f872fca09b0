package org.matraloom.measure;

/**
 * How the take lands.
 *
 * @param place the last sollu, its place among {@code Alignment.expected()}
 * @param errorSeconds how much later it is than it was due; negative if earlier
 * @param errorMatras the same in matras
 * @param lands whether it is near enough: {@link Tolerance#landingSeconds}
 * @param against what told the reciter when it was due
 */
public record TakeLanding(
    int place, double errorSeconds, double errorMatras, boolean lands, LandingBeat against) {}
