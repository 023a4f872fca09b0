package org.matraloom.sound;

/** Is told now and then how far a long rendering has come. */
@FunctionalInterface
public interface RenderProgress {

  /** Tells nobody. */
  RenderProgress SILENT = (doneFrames, totalFrames) -> {};

  /**
   * More has been rendered.
   *
   * @param doneFrames frames rendered so far
   * @param totalFrames frames there will be
   */
  void rendered(long doneFrames, long totalFrames);
}
