package org.matraloom.verdict;

/** What can go wrong in a take, the worst first. */
enum FaultKind {
  END("an end that was not reached"),
  UNSURE("something missing or left over"),
  HABIT("a habit that bends the beat"),
  RESTART("a break"),
  LATE_CHANGE("a landing missed by the speed of the new nadai"),
  SLIP("a matra too many or too few"),
  RUNAWAY("a landing missed by a pulse that runs or drags"),
  LANDING("a missed landing"),
  CHANGE("a change of nadai at a wrong speed"),
  LATE_ENTRY("first sollus that were not said"),
  MISSED("missing sollus"),
  UNLIKE_END("a last sound like none of the sollus"),
  DRIFT("a pulse that runs or drags"),
  UNSURE_LANDING("a landing that may be a little off"),
  UNEVEN("a place of the beat that is always off"),
  CUT_END("an end that was not recorded");

  private final String words;

  FaultKind(String words) {
    this.words = words;
  }

  /** What it is called in the middle of a sentence. */
  String words() {
    return words;
  }
}
