package org.matraloom.pack;

/** Is told how far a set has come; calls come from several threads, one at a time. */
@FunctionalInterface
public interface PackProgress {

  /**
   * More of the set has been made.
   *
   * @param doneFrames frames rendered so far, those of finished tracks included
   * @param totalFrames frames of the whole set
   */
  void made(long doneFrames, long totalFrames);
}
