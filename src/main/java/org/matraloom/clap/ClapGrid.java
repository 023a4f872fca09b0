package org.matraloom.clap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.pulse.RobustStatistics;

/**
 * When the places of a beat fall, from the first to the last that is known; where hands began again
 * after a pause, each stretch for itself.
 *
 * @param seconds when each falls, ascending
 * @param zero which of them is place 0 of the search
 * @param ticks places in a beat
 * @param known for each whether claps tell where it falls
 * @param spreadSeconds how far claps are off them, as a standard deviation
 */
record ClapGrid(
    List<Double> seconds, int zero, int ticks, List<Boolean> known, double spreadSeconds) {

  /** Hands that begin again are believed if they are so much likelier than none, as a logarithm. */
  private static final double LEAST_EVIDENCE_AGAIN = 10;

  /** Hands begin again with one of so many attacks. */
  private static final int FIRST_ATTACKS = 12;

  /** And up to so much slower or quicker. */
  private static final double PERIOD_STEP = 0.003;

  private static final int PERIOD_STEPS = 33;

  /** Claps farther off than this, in spreads, are none. */
  private static final double ODD_SPREADS = 3.5;

  /** A place is known that is known so well, as a standard deviation. */
  private static final double MOST_SPREAD_SECONDS = 0.015;

  private static final double LEAST_SPREAD_SECONDS = 0.003;

  /** Follows a beat to the end of the recording. */
  static ClapGrid of(ClapSearch.Found found, ClapEvidence evidence) {
    ClapStretch stretch = ClapStretch.of(found.track(), evidence.perSecond());
    Builder builder = new Builder(evidence);
    builder.add(stretch);
    Optional<ClapStretch> again = builder.again();
    while (again.isPresent()) {
      builder.add(again.get());
      again = builder.again();
    }
    return builder.grid(found.ticks());
  }

  private static final class Builder {
    private final ClapEvidence evidence;
    private final List<Double> seconds = new ArrayList<>();
    private final List<Boolean> known = new ArrayList<>();
    private final List<Double> off = new ArrayList<>();
    private int first;
    private double lastClapSeconds;
    private double period;

    Builder(ClapEvidence evidence) {
      this.evidence = evidence;
    }

    /** Puts a stretch behind what there is. */
    void add(ClapStretch stretch) {
      List<ClapTrack.Clap> claps = stretch.claps();
      ClapSmoother.Smooth all = new ClapSmoother(claps, stretch.from(), stretch.to()).smooth();
      List<ClapTrack.Clap> even = withoutOdd(claps, all.seconds(), stretch.from());
      ClapSmoother.Smooth some = new ClapSmoother(even, stretch.from(), stretch.to()).smooth();
      double[] smooth = some.seconds();
      for (ClapTrack.Clap clap : even) {
        off.add(clap.seconds() - smooth[clap.place() - stretch.from()]);
      }
      int skip = 0;
      if (seconds.isEmpty()) {
        first = stretch.from();
      } else {
        skip = placesToSkip(smooth, even.get(0).seconds());
        join(smooth[skip]);
      }
      for (int i = skip; i < smooth.length; i++) {
        seconds.add(smooth[i]);
        boolean before = off.size() > even.size() && smooth[i] < even.get(0).seconds() - period / 2;
        known.add(!before && some.spreadSeconds()[i] <= MOST_SPREAD_SECONDS);
      }
      ClapTrack.Clap last = even.get(even.size() - 1);
      lastClapSeconds = last.seconds();
      period = smooth[smooth.length - 1] - smooth[smooth.length - 2];
    }

    /** Hands that begin again say nothing of what was more than a beat before. */
    private int placesToSkip(double[] smooth, double firstClapSeconds) {
      int skip = 0;
      while (smooth[skip] < firstClapSeconds - 1.5 * period) {
        skip++;
      }
      return skip;
    }

    /**
     * Drops what lies after the new stretch begins, fills a gap with even beats that are not known.
     */
    private void join(double nextSeconds) {
      while (seconds.get(seconds.size() - 1) > nextSeconds - period / 2) {
        seconds.remove(seconds.size() - 1);
        known.remove(known.size() - 1);
      }
      for (int i = 0; i < seconds.size(); i++) {
        known.set(i, known.get(i) && seconds.get(i) <= lastClapSeconds + period / 2);
      }
      double from = seconds.get(seconds.size() - 1);
      int beats = (int) Math.max(1, Math.round((nextSeconds - from) / period));
      for (int i = 1; i < beats; i++) {
        seconds.add(from + (nextSeconds - from) * i / beats);
        known.add(false);
      }
    }

    private static List<ClapTrack.Clap> withoutOdd(
        List<ClapTrack.Clap> claps, double[] smooth, int from) {
      double[] off =
          claps.stream()
              .mapToDouble(clap -> clap.seconds() - smooth[clap.place() - from])
              .toArray();
      double most =
          ODD_SPREADS * Math.max(LEAST_SPREAD_SECONDS, RobustStatistics.spreadAroundZero(off));
      List<ClapTrack.Clap> even =
          claps.stream()
              .filter(clap -> Math.abs(clap.seconds() - smooth[clap.place() - from]) <= most)
              .toList();
      return even.size() < 2 ? claps : even;
    }

    /** Hands that begin again after the last clap, if there is enough that speaks for them. */
    Optional<ClapStretch> again() {
      double from = lastClapSeconds + period / 2;
      if (seconds.get(seconds.size() - 1) >= evidence.lengthSeconds() - period) {
        return Optional.empty();
      }
      ClapTrack best = null;
      int tried = 0;
      for (double at : evidence.seconds()) {
        if (at < from || tried == FIRST_ATTACKS) {
          continue;
        }
        tried++;
        for (int step = -PERIOD_STEPS; step <= PERIOD_STEPS; step++) {
          ClapTrack track = ClapTrack.of(evidence, at, period * (1 + step * PERIOD_STEP), from);
          if (track.claps().size() >= ClapSearch.LEAST_CLAPS
              && track.evidence() >= LEAST_EVIDENCE_AGAIN
              && (best == null || track.evidence() > best.evidence())) {
            best = track;
          }
        }
      }
      return best == null
          ? Optional.empty()
          : Optional.of(ClapStretch.of(best, evidence.perSecond()))
              .filter(stretch -> stretch.claps().size() >= ClapSearch.LEAST_CLAPS);
    }

    ClapGrid grid(int ticks) {
      double spread =
          RobustStatistics.spreadAroundZero(
              off.stream().mapToDouble(Double::doubleValue).toArray());
      return new ClapGrid(List.copyOf(seconds), -first, ticks, List.copyOf(known), spread);
    }
  }
}
