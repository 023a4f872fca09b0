package org.matraloom.score;

/** A finger of the counting hand, from the little finger on, where every count begins. */
public enum Finger {
  /** The little finger, always the first count after the clap. */
  LITTLE,
  /** The ring finger. */
  RING,
  /** The middle finger. */
  MIDDLE,
  /** The index finger. */
  INDEX,
  /** The thumb, the fifth count. */
  THUMB
}
