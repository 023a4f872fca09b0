/**
 * What to play next after a pass that was heard: a staircase in tempo, then in help taken away.
 *
 * <p>Knows nothing of music or sound. Tempi are whole beats a minute. Entry class: {@link
 * org.matraloom.staircase.Staircase}.
 */
package org.matraloom.staircase;
