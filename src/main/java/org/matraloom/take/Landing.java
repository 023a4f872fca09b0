package org.matraloom.take;

/**
 * How the take lands.
 *
 * @param place the last sollu, its place among {@link Alignment#expected()}
 * @param errorSeconds how much later than the pulse of the take puts it; negative if earlier
 * @param errorMatras the same in matras
 * @param lands whether it is near enough: {@link Tolerance#landingSeconds}
 */
public record Landing(int place, double errorSeconds, double errorMatras, boolean lands) {}
