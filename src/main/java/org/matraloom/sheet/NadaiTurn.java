package org.matraloom.sheet;

import org.matraloom.time.Ratio;

/**
 * A place from which a beat holds another number of matras.
 *
 * @param beat where, in beats of the performance
 * @param matrasPerBeat matras a beat from here on, kalam included
 */
public record NadaiTurn(Ratio beat, int matrasPerBeat) {}
