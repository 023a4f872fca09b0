package org.matraloom.sound;

import org.matraloom.time.FrameClock;

/**
 * A change of what a rendering plays while it goes on: another tempo, mix or place.
 *
 * <p>Strokes and sollus that have begun ring out. To leave the beat where it is, give the clock and
 * its frame such that a beat on both sides of the change falls on the same frame.
 *
 * @param next what is played from then on; its timeline holds nothing before the change
 * @param clock where its events fall
 * @param clockFrame the frame of the rendering that is frame 0 of the clock
 * @param fromFrame the first frame of the rendering whose strokes are those of the new timeline
 * @param silentFrame the first frame of the rendering whose sollus are no longer those of the
 *     timeline before
 */
public record PlayChange(
    Passage next, FrameClock clock, long clockFrame, long fromFrame, long silentFrame) {}
