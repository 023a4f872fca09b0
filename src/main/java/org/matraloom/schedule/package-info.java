/**
 * Turns a performance into time-stamped events: the hand, the ticks, the sollus and the marks.
 *
 * <p>Positions are exact beats; beat 0 is the samam of the avartana in which the performance
 * starts, and a count-in lies before it. Events come one at a time, in order, so that the length of
 * a piece costs no memory. Entry class: {@link org.matraloom.schedule.Timeline}.
 */
package org.matraloom.schedule;
