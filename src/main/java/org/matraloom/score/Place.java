package org.matraloom.score;

/**
 * A place in the written score.
 *
 * @param line from 1
 * @param column from 1, in characters as a reader counts them
 */
public record Place(int line, int column) {}
