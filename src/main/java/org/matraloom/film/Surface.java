package org.matraloom.film;

import java.awt.Color;
import java.awt.Shape;

/** What shapes are laid on, in pixels of the large screen. */
interface Surface {

  /** Lays a shape over what is there. */
  void fill(Shape shape, Color color);
}
