/**
 * A piece as a film to teach with: the lines of the sheet, the hand, and the sound of a track.
 *
 * <p>A film is cards and passes one after another ({@link org.matraloom.film.FilmPlan}). Places are
 * exact beats, then frames of sound by the clock of the pass, then pictures by {@link
 * org.matraloom.time.PictureClock}, each rounded once. Lengths on the screen are pixels of a screen
 * of 1920 by 1080 or 1080 by 1920. Entry class: {@link org.matraloom.film.FilmMaker}.
 */
package org.matraloom.film;
