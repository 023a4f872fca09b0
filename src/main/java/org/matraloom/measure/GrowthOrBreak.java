package org.matraloom.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.BentFit;
import org.matraloom.pulse.RobustStatistics;

/**
 * The tempo of a take: even, growing all the while, or breaking where the nadai changes.
 *
 * <p>A growing tempo is a parabola through the felt beats, a breaking one two straight lines that
 * meet at the change: three numbers each, so whichever fits better is the likelier. An even one is
 * told in two numbers; another costs what G. Schwarz asks for it (Ann. Stat. 6 (1978) 461-464). A
 * single sollu counts with a bounded cost.
 */
final class GrowthOrBreak {

  private static final double LEAST_SCALE_SECONDS = 0.004;

  /** No sollu costs more, in squares of the spread. */
  private static final double MOST_COST = 9;

  /** A tempo that bends is told in so many numbers. */
  private static final int NUMBERS = 3;

  /** So much better than an even tempo a growth of three standard errors is. */
  private static final double SURE_GROWTH = 9;

  private final double[] beat;
  private final double[] seconds;
  private final int[] run;

  /** A tempo: how the beats bend, what that explains, and how likely it is beside the others. */
  record Shape(Kind kind, BentFit fit, double cost) {}

  /** What a tempo may do. */
  enum Kind {
    EVEN,
    GROWN,
    BROKEN
  }

  private GrowthOrBreak(double[] beat, double[] seconds, int[] run) {
    this.beat = beat;
    this.seconds = seconds;
    this.run = run;
  }

  /**
   * All that the tempo may do, each with twice the negative logarithm of its likelihood and the
   * price of its numbers; an unknown constant is left out.
   *
   * @param expected the sollus of the score
   * @param said what was said, at least one, in order of time
   * @param seams the beats at which the tempo may break
   * @return the even tempo first, then the growing one, then the breaks
   */
  static List<Shape> shapes(List<ExpectedSollu> expected, List<SaidSollu> said, double[] seams) {
    return priced(of(expected, said).fits(seams));
  }

  private static GrowthOrBreak of(List<ExpectedSollu> expected, List<SaidSollu> said) {
    int first = said.stream().mapToInt(SaidSollu::run).min().orElse(1);
    return new GrowthOrBreak(
        said.stream().mapToDouble(s -> expected.get(s.place()).beat().toDouble()).toArray(),
        said.stream().mapToDouble(SaidSollu::feltSeconds).toArray(),
        said.stream().mapToInt(s -> s.run() - first + 1).toArray());
  }

  /**
   * Whether the tempo grows.
   *
   * @param shapes all that it may do
   * @return whether a growth explains the times surely better than an even tempo, and better than a
   *     break at any of the changes
   */
  static boolean isGrowth(List<Shape> shapes) {
    Shape even = shapes.get(0);
    Shape grown = shapes.get(1);
    double dearer = Math.log(even.fit.offSeconds().length);
    return grown.cost + SURE_GROWTH - dearer < even.cost
        && shapes.stream()
            .filter(each -> each.kind == Kind.BROKEN)
            .allMatch(each -> grown.cost < each.cost);
  }

  /**
   * Whether the tempo breaks.
   *
   * @param shapes all that it may do
   * @return whether a break at one of the changes explains the times better than a growth
   */
  static boolean isBreak(List<Shape> shapes) {
    return shapes.stream()
        .anyMatch(each -> each.kind == Kind.BROKEN && each.cost < shapes.get(1).cost);
  }

  /**
   * All that the tempo may do, and beside it all of the same where each slip on the way is taken to
   * be of whole matras: the pulse then goes on as if it had not been left. Which is so, the times
   * themselves tell; the beginnings of the runs are numbers, too, and cost what numbers cost.
   *
   * @param expected the sollus of the score
   * @param said what was said, at least one, in order of time
   * @param seams the beats at which the tempo may break
   * @return those of {@link #shapes}, then the others, if there are slips
   */
  static List<Shape> withWholeSlips(
      List<ExpectedSollu> expected, List<SaidSollu> said, double[] seams) {
    GrowthOrBreak free = of(expected, said);
    int[] matras = said.stream().mapToInt(s -> expected.get(s.place()).matrasPerBeat()).toArray();
    int[] oneRun = IntStream.generate(() -> 1).limit(free.run.length).toArray();
    List<Shape> fits = new ArrayList<>(free.fits(seams));
    WholeSlips.of(free.beat, free.run, matras, fits.get(0).fit())
        .ifPresent(
            slips ->
                fits.addAll(
                    new GrowthOrBreak(slips.beat(), free.seconds, oneRun)
                        .fits(slips.moved(free.beat, seams))));
    return priced(fits);
  }

  /** All fits; their cost is that of their numbers alone. */
  private List<Shape> fits(double[] seams) {
    double middle = Arrays.stream(beat).average().orElse(0);
    double price = Math.log(beat.length);
    double begins = price * (Arrays.stream(run).max().orElse(1) - 1);
    List<Shape> fits = new ArrayList<>();
    fits.add(new Shape(Kind.EVEN, fit(BentFit.STRAIGHT), begins));
    fits.add(new Shape(Kind.GROWN, fit(x -> (x - middle) * (x - middle)), begins + price));
    for (double seam : seams) {
      fits.add(new Shape(Kind.BROKEN, fit(x -> Math.max(0, x - seam)), begins + price));
    }
    return fits;
  }

  private static List<Shape> priced(List<Shape> fits) {
    double scale =
        fits.stream().map(Shape::fit).mapToDouble(GrowthOrBreak::spread).min().orElseThrow();
    double least = Math.max(LEAST_SCALE_SECONDS, scale);
    return fits.stream()
        .map(each -> new Shape(each.kind, each.fit, each.cost + cost(each.fit, least)))
        .toList();
  }

  private BentFit fit(DoubleUnaryOperator bend) {
    return BentFit.of(beat, seconds, run, bend);
  }

  /** The spread of single sollus, as a standard deviation; what is far off counts no more. */
  private static double spread(BentFit fit) {
    double[] off = fit.offSeconds();
    double most = MOST_COST * Math.pow(RobustStatistics.spreadAroundZero(off), 2);
    double sum = Arrays.stream(off).map(each -> Math.min(most, each * each)).sum();
    return Math.sqrt(sum / Math.max(1, off.length - NUMBERS));
  }

  private static double cost(BentFit fit, double scale) {
    return Arrays.stream(fit.offSeconds())
        .map(off -> Math.min(MOST_COST, off * off / (scale * scale)))
        .sum();
  }
}
