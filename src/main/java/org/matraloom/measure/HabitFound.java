package org.matraloom.measure;

/**
 * A habit that the data of a round bear out.
 *
 * @param habit which
 * @param round in which round, from 1
 * @param amount how much of it, the median over the beats that have it: 0 is even, 1 the whole
 *     habit
 * @param sure how sure, 0 to 1: the share of the unevenness of the round that it explains
 * @param beats how many beats have it
 */
public record HabitFound(Habit habit, int round, double amount, double sure, int beats) {}
