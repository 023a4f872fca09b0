/**
 * The beat that is heard in a recording beside the voice: claps, clicks, ticks.
 *
 * <p>Moments are seconds from the beginning of the recording, strengths decibels. What is heard is
 * counted in its own beats; which beat of the score that is, {@code measure} says. Entry class:
 * {@link org.matraloom.clap.HeardBeat}.
 */
package org.matraloom.clap;
