package org.matraloom.device;

/**
 * A silence that was heard because the device had nothing to play while more was to come.
 *
 * @param atFrame the last frame known to have been heard before it, within some tens of
 *     milliseconds
 * @param frames how long it lasted; 0 while that is not known yet, or if it was too short to be
 *     measured
 */
public record DeviceGap(long atFrame, long frames) {}
