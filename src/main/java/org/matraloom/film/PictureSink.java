package org.matraloom.film;

import java.io.IOException;

/** Where the pictures of a film go, one after the other. */
interface PictureSink {

  /**
   * Takes the next picture.
   *
   * @param canvas holds it
   * @param changed whether it looks different from the one before
   * @throws IOException if it cannot be written
   */
  void put(FilmCanvas canvas, boolean changed) throws IOException;
}
