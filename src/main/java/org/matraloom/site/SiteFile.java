package org.matraloom.site;

/**
 * A file of a piece, and what it is.
 *
 * @param name its name in the folder of the piece, with slashes
 * @param words what it is, in a few words
 */
public record SiteFile(String name, String words) {

  /** Whether it is a film. */
  boolean isFilm() {
    return name.startsWith("film.");
  }
}
