package org.matraloom.session;

import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * A sollu that was heard while it was said.
 *
 * @param place which sollu of the pass, from 0
 * @param sollu what was asked for there
 * @param beat where it belongs, in beats of the performance
 * @param onsetFrame where it was heard, in frames captured
 * @param lateSeconds how late its felt beat was; negative if early
 */
public record SaidMark(int place, Sollu sollu, Ratio beat, long onsetFrame, double lateSeconds) {}
