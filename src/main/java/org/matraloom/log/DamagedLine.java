package org.matraloom.log;

/**
 * A line of the log that cannot be read; it is skipped and stays where it is.
 *
 * @param number which line of the file, from 1
 * @param bytes how long it is
 * @param reason what is wrong with it, in a few words
 */
public record DamagedLine(long number, long bytes, String reason) {}
