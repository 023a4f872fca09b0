package org.matraloom.live;

import org.matraloom.time.Ratio;

/**
 * A stretch of a piece that can be gone to and looped: a round, or a named phrase in it.
 *
 * @param passage which passage of what is played, from 0
 * @param name the phrase's name
 * @param round the round it belongs to, from 1
 * @param startBeat where it begins, in beats of the piece
 * @param endBeat where it ends
 */
public record PieceSection(int passage, String name, int round, Ratio startBeat, Ratio endBeat) {}
