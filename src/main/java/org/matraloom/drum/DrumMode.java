package org.matraloom.drum;

/**
 * One way in which a head vibrates after a stroke: a sine that dies away.
 *
 * @param ratio its frequency, as a multiple of the lowest mode of its head
 * @param level how loud it begins, beside the other modes
 * @param decaySeconds after how long it has fallen to 1/e
 */
record DrumMode(double ratio, double level, double decaySeconds) {}
