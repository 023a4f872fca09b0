package org.matraloom.schedule;

/** How prominent the place of a sollu is; never a matter of its time. */
public enum Stress {
  /** The first sollu of a round. */
  ROUND,
  /** On samam. */
  SAMAM,
  /** The first sollu of a named phrase or of a kanakku group. */
  PHRASE,
  /** Anywhere else. */
  NONE
}
