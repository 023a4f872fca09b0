package org.matraloom.session;

import java.util.concurrent.TimeUnit;

/** Sums the time during which something is playing, from one look to the next. */
final class PlayedTime {

  private long playedNanos;
  private long lastNanos;
  private boolean wasPlaying;

  /**
   * Looks.
   *
   * @param nanos the moment, by {@link System#nanoTime()}
   * @param playing whether something is playing now
   */
  void look(long nanos, boolean playing) {
    if (wasPlaying) {
      playedNanos += nanos - lastNanos;
    }
    lastNanos = nanos;
    wasPlaying = playing;
  }

  double seconds() {
    return (double) playedNanos / TimeUnit.SECONDS.toNanos(1);
  }
}
