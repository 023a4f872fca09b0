package org.matraloom.picture;

import java.util.List;

/**
 * What a picture holds, for those that write it.
 *
 * @param width its width, in points
 * @param height its height, in points
 * @param title what it shows, in a sentence for those who cannot see it
 * @param items what is drawn; what comes later covers what is there
 */
record PictureContent(double width, double height, String title, List<PictureItem> items) {}
