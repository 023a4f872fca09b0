/**
 * Lines through the beats of a take, and the numbers of a part that may be wrong.
 *
 * <p>Beats are counted in beats, moments are seconds from the beginning of the recording ({@code
 * double}), and every estimate withstands a good part of points that lie elsewhere. Entry classes:
 * {@link org.matraloom.pulse.PulseFit} and {@link org.matraloom.pulse.PulseLine}; medians and
 * spreads are {@link org.matraloom.pulse.RobustStatistics}.
 */
package org.matraloom.pulse;
