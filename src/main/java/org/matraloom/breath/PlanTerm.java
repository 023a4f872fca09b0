package org.matraloom.breath;

import org.matraloom.form.Joint;

/**
 * What a plan is weighed by, the heaviest first; the order is strict, so that no amount of a later
 * term outweighs the least of an earlier one. Why in this order: docs/breathing.md, which a test
 * holds to this table.
 */
public enum PlanTerm {
  /** Thousandths of the limit by which stretches are too long. */
  OVER("over the limits"),
  /** Breaths inside a phrase. */
  INSIDE("inside a phrase"),
  /** Breaths without free air in the beat before the nadai changes. */
  CHANGE("before a change"),
  /** Breaths that begin too soon after the last one. */
  CLOSE("close together"),
  /** Joints before a last mora, and last free joints before a change of nadai, left unused. */
  UNUSED_FIRST("no breath in hand"),
  /** Other free joints left unused. */
  UNUSED("free air not used"),
  /** Breaths at a long sound or silence inside a phrase, without free air. */
  PAUSE("at a long sound"),
  /** Breaths between small phrases, without free air. */
  PHRASE("at a phrase"),
  /** Breaths between lines, without free air. */
  LINE("at a line"),
  /** Breaths between the statements of a mora, without free air. */
  STATEMENT("in a mora"),
  /** Breaths between sections, without free air. */
  SECTION("at a section"),
  /** Breaths between rounds, without free air. */
  ROUND("at a round"),
  /** All breaths. */
  BREATHS("breaths"),
  /** Breaths that are not full. */
  CATCH("catch breaths"),
  /** Breaths for which a sound is cut. */
  CUT("sounds cut"),
  /** Points for long stretches, and for those after a short breath. */
  UNEVEN("uneven");

  private final String words;

  PlanTerm(String words) {
    this.words = words;
  }

  /**
   * Its name in tables.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }

  /** The term that counts breaths at a joint where air is not free. */
  static PlanTerm at(Joint joint) {
    return valueOf(joint.name());
  }
}
