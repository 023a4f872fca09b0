package org.matraloom.breath;

import org.matraloom.score.Sequence;

/**
 * A sequence with one small change.
 *
 * @param sequence the changed sequence
 * @param place where the change is, in words, as in "after takadimi"
 * @param fit how well the place suits
 * @param eachTime whether the change stands inside a repeat and so is heard every time
 */
record Variant(Sequence sequence, String place, Fit fit, boolean eachTime) {

  /** How well a place suits a breath, best first. */
  enum Fit {
    BETWEEN_PHRASES,
    BETWEEN_WORDS,
    INSIDE_WORD
  }
}
