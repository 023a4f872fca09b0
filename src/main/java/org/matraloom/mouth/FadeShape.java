package org.matraloom.mouth;

/** The one shape of every fade and crossfade. */
final class FadeShape {

  private FadeShape() {}

  /** From 0 to 1 without a corner, as the part goes from 0 to 1. */
  static double at(double part) {
    return 0.5 - 0.5 * StrictMath.cos(Math.PI * part);
  }
}
