package org.matraloom.breath;

import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * How much of a breath a stretch takes.
 *
 * <p>The load of a stretch is its length in thousandths of the limit, rounded down, in seconds or
 * in sollus, whichever is more. Its effort is {@value #EFFORT} points at full load and falls with
 * the square of the load, so that even stretches have the least. After a breath of less than a full
 * one it is up to {@value #SHORT_AIR} points more, in proportion to the load and to what the breath
 * falls short, so that longer breaths stand before longer stretches. The points are choices of our
 * own.
 */
final class StretchLimits {

  static final long EFFORT = 40;
  static final long SHORT_AIR = 60;

  private static final long THOUSAND = 1_000;
  private static final long MILLION = 1_000_000;
  private static final long MOST_LOAD = 10_000;

  private final BreathSettings settings;
  private final Tempo tempo;

  StretchLimits(BreathSettings settings, Tempo tempo) {
    this.settings = settings;
    this.tempo = tempo;
  }

  boolean isTooLong(Ratio beats, long sollus) {
    return sollus > settings.longestSollus()
        || tempo.secondsOf(beats).compareTo(settings.longestSeconds()) > 0;
  }

  /** How many breaths a stretch lacks at least; 0 if it is not too long. */
  long missingBreaths(Ratio beats, long sollus) {
    long byTime = tempo.secondsOf(beats).dividedBy(settings.longestSeconds()).ceil();
    long bySollus = Ratio.of(sollus, settings.longestSollus()).ceil();
    return Math.max(1, Math.max(byTime, bySollus)) - 1;
  }

  /** By how many thousandths of the limit a stretch is too long; 0 if it is not. */
  long excess(Ratio beats, long sollus) {
    return isTooLong(beats, sollus) ? Math.max(1, fullLoad(beats, sollus) - THOUSAND) : 0;
  }

  /** The points of a stretch after a breath that lacks so many thousandths of a full one. */
  long effort(Ratio beats, long sollus, long lack) {
    long load = load(beats, sollus);
    return EFFORT * load * load / MILLION + SHORT_AIR * load * lack / MILLION;
  }

  /** What a breath lacks of a full one, in thousandths. */
  long lack(Ratio breathBeats) {
    Ratio air = tempo.secondsOf(breathBeats).times(MILLION).dividedBy(settings.fullMs());
    return Math.max(0, THOUSAND - air.floor());
  }

  private long load(Ratio beats, long sollus) {
    return Math.min(MOST_LOAD, fullLoad(beats, sollus));
  }

  private long fullLoad(Ratio beats, long sollus) {
    long ofTime =
        tempo.secondsOf(beats).times(THOUSAND).dividedBy(settings.longestSeconds()).floor();
    return Math.max(ofTime, THOUSAND * sollus / settings.longestSollus());
  }
}
