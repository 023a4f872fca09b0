/**
 * A class's whole set as pages that need no server and no script: contents, pieces, homework.
 *
 * <p>Whoever makes the files of a piece lists them as {@link org.matraloom.site.SiteFile}; this
 * room writes the pages that lead to them. Lengths are seconds, tempi beats a minute. Entry
 * classes: {@link org.matraloom.site.ClassList}, {@link org.matraloom.site.SitePages}.
 */
package org.matraloom.site;
