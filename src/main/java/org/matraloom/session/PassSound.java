package org.matraloom.session;

import org.matraloom.live.LivePiece;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Mix;
import org.matraloom.sound.TakeNote;
import org.matraloom.wav.PcmFormat;

/**
 * What is played and recorded in one pass.
 *
 * @param piece the guide, one passage
 * @param mix how loud each part of it is
 * @param taken the format of the take, 16 bits
 * @param note what the take belongs to
 * @param lexicon how its sollus are said
 */
public record PassSound(
    LivePiece piece, Mix mix, PcmFormat taken, TakeNote note, Lexicon lexicon) {}
