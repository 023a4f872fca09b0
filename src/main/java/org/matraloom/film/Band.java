package org.matraloom.film;

import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;

/**
 * A part of the screen that is drawn anew when what it shows has changed.
 *
 * @param area where it is
 * @param shows what it shows; equal for two that look the same
 * @param draw draws it on paper
 */
record Band(Rectangle2D area, Object shows, Consumer<FilmPen> draw) {}
