package org.matraloom.film;

import java.io.IOException;

/** The program that codes films is not there, or could not. */
public final class FilmFault extends IOException {

  private static final long serialVersionUID = 1L;

  FilmFault(String message) {
    super(message);
  }
}
