package org.matraloom.device;

/**
 * A sound device of this machine.
 *
 * @param name what it is called by the system
 * @param plays whether it can play
 * @param records whether it can record
 */
public record SoundDevice(String name, boolean plays, boolean records) {}
