package org.matraloom.sheet;

import org.matraloom.time.Ratio;

/**
 * A place where a phrase named in the round's own phrase begins, or where what follows it goes on.
 *
 * @param beat where, in beats of the performance
 * @param name the phrase, or empty where no named phrase begins
 * @param round the round it belongs to; 0 for a silence between rounds
 */
record PhraseOpening(Ratio beat, String name, int round) {}
