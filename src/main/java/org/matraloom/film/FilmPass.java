package org.matraloom.film;

import org.matraloom.schedule.Timeline;
import org.matraloom.sheet.Sheet;
import org.matraloom.sound.Mix;

/**
 * The piece once, at one tempo.
 *
 * @param timeline what happens, the count-in included
 * @param sheet the page, for the tempo of the timeline
 * @param mix how loud each part is
 * @param name how it is taken, such as a share of the tempo; empty if there is but one way
 * @param wordsHidden whether the sheet holds no sollus, to recite from memory
 */
public record FilmPass(Timeline timeline, Sheet sheet, Mix mix, String name, boolean wordsHidden) {}
