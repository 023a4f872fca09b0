package org.matraloom.take;

/**
 * A habit that the data of a round bear out.
 *
 * @param habit which
 * @param round in which round, from 1
 * @param amount how much of it: 0 is even, 1 the whole habit
 * @param sure how sure, 0 to 1: the share of the unevenness that it explains
 * @param beats in how many beats it was measured
 */
public record HabitFound(Habit habit, int round, double amount, double sure, int beats) {}
