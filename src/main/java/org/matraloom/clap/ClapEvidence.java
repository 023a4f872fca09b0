package org.matraloom.clap;

import java.util.Arrays;
import java.util.List;

/**
 * What of a recording speaks for claps: attacks that no sollu accounts for.
 *
 * <p>Around a sollu nothing is looked at: its hiss, its release and its vowel are attacks of their
 * own, and a clap that falls there cannot be told from them.
 */
final class ClapEvidence {

  /** How long before a sollu its sounds begin, and how long after it they go on. */
  private static final double HIDDEN_BEFORE_SECONDS = 0.045;

  private static final double HIDDEN_AFTER_SECONDS = 0.070;

  /** What {@link Attack} takes for a vowel is heard until so long after an attack. */
  private static final double VOWEL_SECONDS = 0.075;

  /** So far around sollus it is asked whether the voice makes attacks there. */
  private static final double VOICE_BEFORE_SECONDS = 0.130;

  private static final double VOICE_AFTER_SECONDS = 0.190;

  private static final double BIN_SECONDS = 0.010;

  /** A bin is judged with so many to each side. */
  private static final int BINS_AROUND = 1;

  /** Claps come so often in a beat at most, as chance would have it beside sollus. */
  private static final double MOST_PER_BEAT = 1.3;

  private static final double MOST_SPREADS = 3;

  private static final int OPEN_PER_SECOND = 250;

  private final double[] sollus;
  private final boolean[] voice =
      new boolean[(int) Math.round((VOICE_BEFORE_SECONDS + VOICE_AFTER_SECONDS) / BIN_SECONDS)];
  private final double[] seconds;
  private final boolean[] open;
  private final double lengthSeconds;
  private final double perSecond;

  /**
   * Gathers it.
   *
   * @param attacks all attacks, in order of time
   * @param sollus when sollus begin, ascending
   * @param beatSeconds about how long a beat is
   * @param lengthSeconds of the recording
   */
  ClapEvidence(List<Attack> attacks, double[] sollus, double beatSeconds, double lengthSeconds) {
    this.sollus = sollus;
    this.lengthSeconds = lengthSeconds;
    double[] all =
        attacks.stream()
            .filter(Attack::isBright)
            .filter(attack -> !attack.goesOn() || isSolluNear(attack.seconds()))
            .mapToDouble(Attack::seconds)
            .filter(this::isClear)
            .toArray();
    learnVoice(all, beatSeconds);
    seconds = Arrays.stream(all).filter(this::isClear).toArray();
    open = new boolean[(int) Math.ceil(lengthSeconds * OPEN_PER_SECOND) + 1];
    int count = 0;
    for (int i = 0; i < open.length; i++) {
      open[i] = isClear((double) i / OPEN_PER_SECOND);
      count += open[i] ? 1 : 0;
    }
    perSecond = (seconds.length + 1) / Math.max(1, (double) count / OPEN_PER_SECOND);
  }

  /**
   * Attacks that come again and again so long before or after a sollu are of the voice: claps fall
   * there by chance only, as the voice wanders from them.
   */
  private void learnVoice(double[] all, double beatSeconds) {
    int[] heard = new int[voice.length];
    int[] open = new int[voice.length];
    for (double sollu : sollus) {
      for (int bin = 0; bin < voice.length; bin++) {
        open[bin] += isClear(sollu + (bin + 0.5) * BIN_SECONDS - VOICE_BEFORE_SECONDS) ? 1 : 0;
      }
      int from = next(all, sollu - VOICE_BEFORE_SECONDS);
      for (int i = from; i < all.length && all[i] < sollu + VOICE_AFTER_SECONDS; i++) {
        int bin = bin(all[i] - sollu);
        if (bin >= 0 && bin < voice.length) {
          heard[bin]++;
        }
      }
    }
    for (int bin = 0; bin < voice.length; bin++) {
      int count = 0;
      int places = 0;
      int to = Math.min(voice.length - 1, bin + BINS_AROUND);
      for (int b = Math.max(0, bin - BINS_AROUND); b <= to; b++) {
        count += heard[b];
        places += open[b];
      }
      double usual = places * BIN_SECONDS * MOST_PER_BEAT / beatSeconds;
      voice[bin] = count > usual + MOST_SPREADS * Math.sqrt(usual + 1);
    }
  }

  private static int bin(double lag) {
    return (int) Math.floor((lag + VOICE_BEFORE_SECONDS) / BIN_SECONDS);
  }

  /** Whether a clap could be told at a moment, to 2 ms. */
  boolean isOpen(double at) {
    int i = (int) Math.round(at * OPEN_PER_SECOND);
    return i >= 0 && i < open.length && open[i];
  }

  private boolean isClear(double at) {
    int next = next(sollus, at);
    for (int i = next - 1; i >= 0 && at - sollus[i] < VOICE_AFTER_SECONDS; i--) {
      if (at - sollus[i] <= HIDDEN_AFTER_SECONDS || isVoice(at - sollus[i])) {
        return false;
      }
    }
    for (int i = next; i < sollus.length && sollus[i] - at < VOICE_BEFORE_SECONDS; i++) {
      if (sollus[i] - at <= HIDDEN_BEFORE_SECONDS || isVoice(at - sollus[i])) {
        return false;
      }
    }
    return true;
  }

  private boolean isVoice(double lag) {
    int bin = bin(lag);
    return bin >= 0 && bin < voice.length && voice[bin];
  }

  /** Whether the vowel that is heard after a moment is that of a known sollu. */
  private boolean isSolluNear(double at) {
    int next = next(sollus, at);
    return next < sollus.length && sollus[next] - at < VOWEL_SECONDS;
  }

  /** The attack that is nearest to a moment, in seconds; infinite if there is none. */
  double nearest(double at) {
    int next = next(seconds, at);
    double after = next < seconds.length ? seconds[next] : Double.POSITIVE_INFINITY;
    double before = next > 0 ? seconds[next - 1] : Double.NEGATIVE_INFINITY;
    return after - at < at - before ? after : before;
  }

  /** How many attacks there are in an open second. */
  double perSecond() {
    return perSecond;
  }

  /** The attacks that speak for claps, in seconds, ascending. */
  double[] seconds() {
    return seconds;
  }

  double lengthSeconds() {
    return lengthSeconds;
  }

  private static int next(double[] sorted, double at) {
    int found = Arrays.binarySearch(sorted, at);
    return found < 0 ? -found - 1 : found;
  }
}
