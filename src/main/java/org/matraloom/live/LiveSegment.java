package org.matraloom.live;

import org.matraloom.sound.Mix;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A stretch of live playing with one tempo, one mix and one run through the piece.
 *
 * <p>Beats of the piece may come again and again; <em>live</em> beats only go up. They differ by
 * whole avartanas, so that the hand never breaks off.
 *
 * @param fromBeat the live beat on which it begins
 * @param shiftBeats live beats minus beats of the piece, whole avartanas
 * @param clockBeat the live beat at which the tempo was set
 * @param clockFrame the frame of that beat
 * @param tempo the tempo
 * @param ratePerSecond frames a second
 * @param section where the mouth began or will begin
 * @param mix how loud each part is
 */
public record LiveSegment(
    long fromBeat,
    long shiftBeats,
    long clockBeat,
    long clockFrame,
    Tempo tempo,
    int ratePerSecond,
    PieceSection section,
    Mix mix) {

  /** The frame of a live beat. */
  long frameAt(Ratio beat) {
    return clockFrame + clock(Ratio.of(clockBeat)).frameAt(beat);
  }

  long frameAt(long beat) {
    return frameAt(Ratio.of(beat));
  }

  long fromFrame() {
    return frameAt(fromBeat);
  }

  /** The live beat that is going on at a frame. */
  long beatAt(long frame) {
    return clockBeat + clock(Ratio.of(clockBeat)).beatsBefore(frame - clockFrame);
  }

  /** The first live beat of this lap that falls on a frame or after it. */
  long beatFrom(long frame) {
    long beat = beatAt(frame);
    return Math.max(fromBeat, frameAt(beat) < frame ? beat + 1 : beat);
  }

  Ratio live(Ratio pieceBeat) {
    return pieceBeat.plus(Ratio.of(shiftBeats));
  }

  Ratio ofPiece(long liveBeat) {
    return Ratio.of(liveBeat - shiftBeats);
  }

  /** The clock of the piece's own beats; its frame 0 is {@link #clockFrame}. */
  FrameClock pieceClock() {
    return clock(Ratio.of(clockBeat - shiftBeats));
  }

  private FrameClock clock(Ratio origin) {
    return new FrameClock(tempo, ratePerSecond, origin);
  }

  /** The same run through the piece from a later beat on, at another tempo. */
  LiveSegment at(Tempo next, long beat) {
    return new LiveSegment(
        beat, shiftBeats, beat, frameAt(beat), next, ratePerSecond, section, mix);
  }

  /** The same run through the piece from a later beat on, in another mix. */
  LiveSegment with(Mix next, long beat) {
    return new LiveSegment(
        beat, shiftBeats, clockBeat, clockFrame, tempo, ratePerSecond, section, next);
  }

  /** Another run through the piece, from a later beat on. */
  LiveSegment to(PieceSection next, long shift, long beat) {
    return new LiveSegment(beat, shift, clockBeat, clockFrame, tempo, ratePerSecond, next, mix);
  }
}
