package org.matraloom.app.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.matraloom.sound.RenderProgress;

/** Shows how far long work has come, on a terminal only. */
public final class ProgressLine implements RenderProgress, AutoCloseable {

  private static final int WIDTH = 30;

  private final PrintWriter err;
  private final boolean shown = System.console() != null;
  private int lastPercent = -1;

  /**
   * Shows nothing until something is told.
   *
   * @param err where it is shown
   */
  public ProgressLine(PrintWriter err) {
    this.err = err;
  }

  @Override
  public void rendered(long doneFrames, long totalFrames) {
    int percent = (int) (100 * doneFrames / Math.max(1, totalFrames));
    if (shown && percent != lastPercent) {
      lastPercent = percent;
      int filled = percent * WIDTH / 100;
      err.printf(
          Locale.ROOT, "\r[%s%s] %3d %%", "=".repeat(filled), " ".repeat(WIDTH - filled), percent);
      err.flush();
    }
  }

  @Override
  public void close() {
    if (lastPercent >= 0) {
      err.print("\r" + " ".repeat(WIDTH + 8) + "\r");
      err.flush();
    }
  }
}
