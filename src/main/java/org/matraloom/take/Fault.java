package org.matraloom.take;

/**
 * One thing that went wrong.
 *
 * @param words what and where, a sentence
 * @param practice what helps
 */
record Fault(String words, Practice practice) {}
