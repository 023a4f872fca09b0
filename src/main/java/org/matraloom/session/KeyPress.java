package org.matraloom.session;

/**
 * A key that was pressed.
 *
 * @param action what it asks for
 * @param number the round that is asked for, from 1; 0 for every other action
 * @param nanos when, by the clock of the JVM
 */
record KeyPress(KeyAction action, int number, long nanos) {}
