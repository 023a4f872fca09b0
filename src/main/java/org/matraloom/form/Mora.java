package org.matraloom.form;

/**
 * A threefold statement among the lines of a phrase.
 *
 * @param lines how many lines it takes up
 * @param ofMoras whether each of its three statements is threefold itself
 */
record Mora(int lines, boolean ofMoras) {

  /** What it is called. */
  String words() {
    return ofMoras ? "mora of moras" : "mora";
  }
}
