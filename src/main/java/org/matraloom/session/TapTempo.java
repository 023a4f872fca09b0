package org.matraloom.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.matraloom.time.MeasuredTempo;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** A tempo from taps: the median of the last gaps, so that one bad tap does no harm. */
public final class TapTempo {

  private static final int FEWEST_GAPS = 3;
  private static final int MOST_GAPS = 7;
  private static final long LONGEST_GAP_NANOS = TimeUnit.SECONDS.toNanos(4);

  private final Deque<Long> gaps = new ArrayDeque<>();
  private Optional<Long> lastNanos = Optional.empty();

  /**
   * Takes a tap.
   *
   * @param nanos when it fell, in nanoseconds from any moment
   * @return a tempo in whole beats a minute, from the fourth tap on
   */
  public Optional<Tempo> tap(long nanos) {
    long gap = nanos - lastNanos.orElse(nanos);
    lastNanos = Optional.of(nanos);
    if (gap <= 0 || gap > LONGEST_GAP_NANOS) {
      gaps.clear();
      return Optional.empty();
    }
    gaps.addLast(gap);
    if (gaps.size() > MOST_GAPS) {
      gaps.removeFirst();
    }
    return gaps.size() < FEWEST_GAPS ? Optional.empty() : Optional.of(tempo());
  }

  private Tempo tempo() {
    long[] sorted = gaps.stream().mapToLong(Long::longValue).sorted().toArray();
    int middle = sorted.length / 2;
    double median =
        sorted.length % 2 == 1
            ? sorted[middle]
            : (sorted[middle - 1] + (double) sorted[middle]) / 2;
    long rounded =
        Math.round(MeasuredTempo.ofBeat(median / TimeUnit.SECONDS.toNanos(1)).beatsPerMinute());
    return new Tempo(Ratio.of(Math.max(Tempo.SLOWEST, Math.min(Tempo.FASTEST, rounded))));
  }
}
