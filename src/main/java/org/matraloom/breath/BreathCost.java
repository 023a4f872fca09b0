package org.matraloom.breath;

import java.util.Optional;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * What a plan costs, in points; the planner finds the plan that costs least.
 *
 * <p>Every breath costs {@value #BREATH}, so that there are as few as needed. A catch breath adds
 * {@value #CATCH}; time cut from a sound adds {@value #CUT} and 1 for each {@value
 * #CUT_MS_PER_POINT} ms begun; a breath inside a phrase adds {@value #INSIDE_PHRASE}; one in the
 * beat before a nadai change adds {@value #BEFORE_CHANGE}, more than any way round it; one that
 * follows another too closely adds {@value #CLOSE}.
 *
 * <p>The load of a stretch is its length in thousandths of the limit, rounded down, in seconds or
 * in sollus, whichever is more. A stretch adds {@value #EFFORT} at full load, falling with the
 * square of the load, which spreads breaths evenly. After a breath of less than a full one it adds
 * up to {@value #SHORT_AIR} more, in proportion to the load and to what the breath falls short, so
 * that longer rests stand before longer stretches. The weights are choices of our own.
 */
final class BreathCost {

  static final long BREATH = 100;
  static final long CATCH = 15;
  static final long CUT = 40;
  static final long CUT_MS_PER_POINT = 20;
  static final long INSIDE_PHRASE = 60;
  static final long BEFORE_CHANGE = 1_000_000;
  static final long CLOSE = 300;
  static final long EFFORT = 40;
  static final long SHORT_AIR = 60;

  private static final long THOUSAND = 1_000;
  private static final long MILLION = 1_000_000;

  private final BreathSettings settings;
  private final Tempo tempo;
  private final Ratio apartBeats;

  BreathCost(BreathSettings settings, Tempo tempo) {
    this.settings = settings;
    this.tempo = tempo;
    this.apartBeats = tempo.beatsInMs(settings.apartMs());
  }

  long ofBreath(Breath breath) {
    long points = BREATH;
    if (breath.kind() == Breath.Kind.CATCH) {
      points += CATCH;
    }
    if (breath.cutBeats().signum() > 0) {
      points += CUT + tempo.secondsOf(breath.cutBeats()).times(THOUSAND / CUT_MS_PER_POINT).ceil();
    }
    if (!breath.endsPhrase()) {
      points += INSIDE_PHRASE;
    }
    return breath.beforeChange() ? points + BEFORE_CHANGE : points;
  }

  /** The points of a stretch that ends in a breath or at the end of the piece. */
  long ofStretch(Optional<Breath> before, Ratio beats, long sollus, boolean endsInBreath) {
    long load = load(beats, sollus);
    long points = EFFORT * load * load / MILLION;
    if (before.isPresent()) {
      points += SHORT_AIR * load * lack(before.get()) / MILLION;
      if (endsInBreath && beats.compareTo(apartBeats) < 0) {
        points += CLOSE;
      }
    }
    return points;
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

  private long load(Ratio beats, long sollus) {
    long ofTime =
        tempo.secondsOf(beats).times(THOUSAND).dividedBy(settings.longestSeconds()).floor();
    return Math.max(ofTime, THOUSAND * sollus / settings.longestSollus());
  }

  private long lack(Breath breath) {
    long air = breath.seconds().times(MILLION).dividedBy(settings.fullMs()).floor();
    return Math.max(0, THOUSAND - air);
  }
}
