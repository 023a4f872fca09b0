package org.matraloom.shelf;

/** What came of saving a text over another. */
public sealed interface SaveOutcome {

  /**
   * It is on the disk.
   *
   * @param stamp the stamp of the text
   */
  record Saved(String stamp) implements SaveOutcome {}

  /**
   * Nothing was written, for the file is not what it was when the text was begun.
   *
   * @param now what it holds now
   */
  record Changed(SavedText now) implements SaveOutcome {}
}
