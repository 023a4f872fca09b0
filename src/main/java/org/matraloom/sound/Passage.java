package org.matraloom.sound;

import org.matraloom.schedule.Timeline;

/**
 * A part of a track with a tempo of its own.
 *
 * @param timeline what happens; its composition gives the tempo
 * @param mix how loud each part is
 */
public record Passage(Timeline timeline, Mix mix) {}
