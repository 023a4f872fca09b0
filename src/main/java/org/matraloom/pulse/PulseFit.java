package org.matraloom.pulse;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Fits a {@link PulseLine} to felt beats of which a good part may be elsewhere.
 *
 * <p>First the line through a few sollus is sought that most others lie near (random sample
 * consensus: M. A. Fischler and R. C. Bolles, Commun. ACM 24 (1981) 381-395; with the bounded cost
 * of P. H. S. Torr and A. Zisserman, Comput. Vis. Image Underst. 78 (2000) 138-156). Then it is
 * fitted by weighted least squares, the weights being the biweight of A. E. Beaton and J. W. Tukey,
 * Technometrics 16 (1974) 147-185, and the scale the median absolute deviation.
 */
public final class PulseFit {

  /** In the search a sollu counts as near within this time. */
  static final double NEAR_SECONDS = 0.045;

  private static final double BIWEIGHT = 4.685;
  private static final double LEAST_SCALE_SECONDS = 0.003;
  private static final int ROUNDS = 40;

  /** Fewer sollus, or fewer beats, do not tell a growing tempo from an even one. */
  private static final int LEAST_FOR_GROWTH = 16;

  private static final double LEAST_BEATS_FOR_GROWTH = 6;

  /** A growth that is less than so many times its standard error is taken for none. */
  private static final double SURE_SIGMAS = 3;

  private final double[] beat;
  private final double[] seconds;
  private final int[] run;
  private final int runs;
  private final double firstBeat;
  private final double range;

  private double length;
  private double growth;
  private double growthUnsure;
  private boolean even;
  private double[] begin;

  /**
   * Prepares a fit.
   *
   * @param beat where each sollu stands, in beats; at least two different
   * @param seconds where its beat was felt
   * @param run its run, from 1
   */
  public PulseFit(double[] beat, double[] seconds, int[] run) {
    this.beat = beat.clone();
    this.seconds = seconds.clone();
    this.run = run.clone();
    runs = Arrays.stream(run).max().orElse(1);
    firstBeat = Arrays.stream(beat).min().orElse(0);
    range = Arrays.stream(beat).max().orElse(0) - firstBeat;
    begin = new double[runs];
  }

  /**
   * The line.
   *
   * @return the line
   */
  public PulseLine line() {
    return line(SURE_SIGMAS);
  }

  /**
   * The line.
   *
   * @param sureSigmas a growth of fewer standard errors is taken for none
   * @return the line
   */
  public PulseLine line(double sureSigmas) {
    search();
    for (int round = 0; round < ROUNDS; round++) {
      double[] before = {length, growth};
      refine();
      if (Math.abs(length - before[0]) < 1e-9 && Math.abs(growth - before[1]) < 1e-12) {
        break;
      }
    }
    if (growth != 0 && Math.abs(growth) < sureSigmas * growthUnsure) {
      even = true;
      for (int round = 0; round < ROUNDS; round++) {
        refine();
      }
    }
    return new PulseLine(firstBeat, length, growth, begin);
  }

  private boolean mayGrow() {
    return !even && beat.length >= LEAST_FOR_GROWTH && range >= LEAST_BEATS_FOR_GROWTH;
  }

  private double x(int i) {
    return beat[i] - firstBeat;
  }

  /** A first line: through the longest run, the other runs set beside it. */
  private void search() {
    int[] main = mainRun();
    PulseSearch search =
        new PulseSearch(
            Arrays.stream(main).mapToDouble(this::x).toArray(),
            Arrays.stream(main).mapToDouble(i -> seconds[i]).toArray());
    boolean found = search.look(mayGrow());
    length = search.length();
    growth = search.growth();
    for (int r = 1; r <= runs; r++) {
      begin[r - 1] = RobustStatistics.median(indices(r).mapToDouble(this::beginOf).toArray());
    }
    if (found) {
      anchor(main);
    }
  }

  /** Where the first beat would have fallen for one sollu. */
  private double beginOf(int i) {
    return seconds[i] - x(i) * (length + x(i) * growth);
  }

  /** Of all beginnings of the longest run, the one that most of its sollus agree on. */
  private void anchor(int[] main) {
    double[] starts = Arrays.stream(main).mapToDouble(this::beginOf).sorted().toArray();
    int best = 0;
    int from = 0;
    for (int to = 0; to < starts.length; to++) {
      while (starts[to] - starts[from] > NEAR_SECONDS) {
        from++;
      }
      if (to - from > best) {
        best = to - from;
        begin[run[main[0]] - 1] = starts[(from + to) / 2];
      }
    }
  }

  private int[] mainRun() {
    int longest = 1;
    for (int r = 2; r <= runs; r++) {
      int number = r;
      int than = longest;
      if (indices(number).count() > indices(than).count()) {
        longest = r;
      }
    }
    int main = longest;
    return indices(main).toArray();
  }

  private IntStream indices(int number) {
    return IntStream.range(0, beat.length).filter(i -> run[i] == number);
  }

  private double off(int i) {
    return beginOf(i) - begin[run[i] - 1];
  }

  private void refine() {
    double[] offs = new double[beat.length];
    for (int i = 0; i < offs.length; i++) {
      offs[i] = off(i);
    }
    double[] near = Arrays.stream(offs).filter(o -> Math.abs(o) < 3 * NEAR_SECONDS).toArray();
    double scale = Math.max(LEAST_SCALE_SECONDS, RobustStatistics.spreadAroundZero(near));
    double[] weight = new double[beat.length];
    for (int i = 0; i < offs.length; i++) {
      double u = offs[i] / (BIWEIGHT * scale);
      weight[i] = Math.abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
    }
    solve(weight, scale);
  }

  /** Weighted least squares; the beginning of each run is eliminated by its weighted means. */
  private void solve(double[] weight, double scale) {
    double[][] mean = new double[runs][4];
    for (int i = 0; i < beat.length; i++) {
      double[] of = mean[run[i] - 1];
      of[0] += weight[i];
      of[1] += weight[i] * x(i);
      of[2] += weight[i] * x(i) * x(i);
      of[3] += weight[i] * seconds[i];
    }
    for (double[] of : mean) {
      for (int k = 1; k < 4; k++) {
        of[k] = of[0] == 0 ? 0 : of[k] / of[0];
      }
    }
    double s11 = 0;
    double s12 = 0;
    double s22 = 0;
    double s1y = 0;
    double s2y = 0;
    for (int i = 0; i < beat.length; i++) {
      double[] of = mean[run[i] - 1];
      double d1 = x(i) - of[1];
      double d2 = x(i) * x(i) - of[2];
      double y = seconds[i] - of[3];
      s11 += weight[i] * d1 * d1;
      s12 += weight[i] * d1 * d2;
      s22 += weight[i] * d2 * d2;
      s1y += weight[i] * d1 * y;
      s2y += weight[i] * d2 * y;
    }
    if (s11 <= 0) {
      return;
    }
    double det = s11 * s22 - s12 * s12;
    if (mayGrow() && det > 1e-9 * s11 * s22) {
      growth = (s11 * s2y - s12 * s1y) / det;
      length = (s22 * s1y - s12 * s2y) / det;
      growthUnsure = scale * Math.sqrt(s11 / det);
    } else {
      growth = 0;
      length = s1y / s11;
    }
    for (int r = 0; r < runs; r++) {
      if (mean[r][0] > 0) {
        begin[r] = mean[r][3] - length * mean[r][1] - growth * mean[r][2];
      }
    }
  }
}
