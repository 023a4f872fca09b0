package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseFit;
import org.matraloom.pulse.PulseLine;
import org.matraloom.score.Lexicon;

/** How sure a landing is. */
class EndDoubtTest {

  private static final double BEAT = 0.8;

  private static List<SaidSollu> said(int count, SplittableRandom random, double jitter) {
    return IntStream.range(0, count)
        .mapToObj(
            k -> {
              double at = 1 + BEAT * k / 4 + jitter * random.nextGaussian();
              return new SaidSollu(k, 1, at, at, 0);
            })
        .toList();
  }

  private static double beat(SaidSollu each) {
    return each.place() / 4.0;
  }

  /** Slope and intercept by ordinary least squares (textbook formula, from memory). */
  private static PulseLine leastSquares(List<SaidSollu> said) {
    double x = said.stream().mapToDouble(EndDoubtTest::beat).average().orElseThrow();
    double y = said.stream().mapToDouble(SaidSollu::feltSeconds).average().orElseThrow();
    double xy = said.stream().mapToDouble(s -> (beat(s) - x) * (s.feltSeconds() - y)).sum();
    double xx = said.stream().mapToDouble(s -> (beat(s) - x) * (beat(s) - x)).sum();
    return new PulseLine(0, xy / xx, 0, y - x * xy / xx);
  }

  /**
   * The variance of what a straight line of least squares foretells is s² a'(X'X)⁻¹a with a = (1,
   * x) and the matrix inverted by hand (textbook formula, from memory); s is the median of what
   * they are off, times 1.4826, the usual factor for a normal distribution.
   */
  @Test
  void theStandardErrorIsThatOfLeastSquares() {
    int tried = 0;
    for (int seed = 0; seed < 30; seed++) {
      List<SaidSollu> said = said(9 + 4 * seed, new SplittableRandom(seed), 0.02);
      PulseLine line = leastSquares(said);
      double n = said.size();
      double sum = said.stream().mapToDouble(EndDoubtTest::beat).sum();
      double squares = said.stream().mapToDouble(s -> beat(s) * beat(s)).sum();
      double spread = spreadOf(said, line);
      for (double at : new double[] {0, 3, n / 4, n}) {
        double share = (squares - 2 * at * sum + at * at * n) / (n * squares - sum * sum);
        double asked = Math.sqrt(0.002 * 0.002 + spread * spread * share);
        double found = EndDoubt.ofLine(line, 1, said, EndDoubtTest::beat, at);
        assertEquals(asked, found, 1e-5, "seed " + seed + " at " + at);
        tried++;
      }
    }
    assertEquals(120, tried);
  }

  /**
   * The same of a parabola, a = (1, x, x²); (X'X)⁻¹a by Cramer's rule (textbook formula, from
   * memory). The line itself is no matter here, only what is off.
   */
  @Test
  void theStandardErrorOfAGrowingPulseIsThatOfAParabola() {
    PulseLine grown = new PulseLine(0, BEAT, 1e-4, 1);
    for (int seed = 0; seed < 20; seed++) {
      List<SaidSollu> said =
          said(12 + 6 * seed, new SplittableRandom(seed), 0.02).stream()
              .filter(s -> s.place() % 5 != 2)
              .toList();
      double[] sums = new double[5];
      for (SaidSollu each : said) {
        for (int power = 0; power < 5; power++) {
          sums[power] += Math.pow(beat(each), power);
        }
      }
      double[][] matrix = new double[3][3];
      for (int row = 0; row < 3; row++) {
        matrix[row] = Arrays.copyOfRange(sums, row, row + 3);
      }
      double spread = spreadOf(said, grown);
      double at = said.size() / 2.0;
      double[] place = {1, at, at * at};
      double share = 0;
      for (int column = 0; column < 3; column++) {
        double[][] replaced = new double[3][];
        for (int row = 0; row < 3; row++) {
          replaced[row] = matrix[row].clone();
          replaced[row][column] = place[row];
        }
        share += place[column] * determinant(replaced) / determinant(matrix);
      }
      double found = EndDoubt.ofLine(grown, 1, said, EndDoubtTest::beat, at);
      assertEquals(Math.hypot(0.002, spread * Math.sqrt(share)), found, 1e-5, "seed " + seed);
      PulseLine even = new PulseLine(0, BEAT, 0, 1);
      assertTrue(found > 1.2 * EndDoubt.ofLine(even, 1, said, EndDoubtTest::beat, at));
    }
  }

  private static double spreadOf(List<SaidSollu> said, PulseLine line) {
    double[] off =
        said.stream()
            .mapToDouble(s -> Math.abs(s.feltSeconds() - line.secondsAt(beat(s), 1)))
            .sorted()
            .toArray();
    return 1.4826 * (off[(off.length - 1) / 2] + off[off.length / 2]) / 2;
  }

  private static double determinant(double[][] m) {
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }

  @Test
  void oneSolluTellsNoMoreThanItself() {
    List<SaidSollu> one = said(1, new SplittableRandom(1), 0);
    PulseLine line = new PulseLine(0, BEAT, 0, 1.01);
    assertEquals(
        Math.hypot(0.002, 1.4826 * 0.01),
        EndDoubt.ofLine(line, 1, one, EndDoubtTest::beat, 7),
        1e-5);
    PulseLine exact = new PulseLine(0, BEAT, 0, 1);
    assertEquals(0.002, EndDoubt.ofLine(exact, 1, one, EndDoubtTest::beat, 7), 1e-9);
  }

  private static List<ExpectedSollu> score(int beats) {
    return SaidAs.expected(
        "tala adi\ntempo 75\nRain = (takadimi) x" + beats + "\nperform\n  Rain nadai 4\n");
  }

  /** How many of 1000 takes land within what is said of where they truly land. */
  private static int held(int beats, double jitter, boolean withEnd) {
    List<ExpectedSollu> expected = score(beats);
    int held = 0;
    for (int seed = 0; seed < 1_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<SaidSollu> said = new ArrayList<>();
      double truth = 0;
      for (int k = 0; k < expected.size(); k++) {
        double beat = expected.get(k).beat().toDouble();
        truth = jitter * random.nextGaussian();
        double at = 1 + beat * BEAT + truth;
        said.add(new SaidSollu(k, 1, at, at, 0));
      }
      List<SaidSollu> fitted = withEnd ? said : said.subList(0, said.size() - 1);
      PulseLine line =
          new PulseFit(
                  fitted.stream()
                      .mapToDouble(s -> expected.get(s.place()).beat().toDouble())
                      .toArray(),
                  fitted.stream().mapToDouble(SaidSollu::feltSeconds).toArray(),
                  IntStream.range(0, fitted.size()).map(k -> 1).toArray())
              .line();
      TakeLanding landing =
          LandingMeasure.of(
                  new Alignment(expected, List.of(), List.of()),
                  said,
                  line,
                  Optional.empty(),
                  Optional.empty(),
                  List.of(),
                  0)
              .orElseThrow();
      assertEquals(LandingBeat.PULSE, landing.against());
      held += Math.abs(landing.errorSeconds() - truth) <= landing.giveOrTakeSeconds() ? 1 : 0;
    }
    return held;
  }

  /** 1.645 standard errors to either side hold nine of ten; of a short take a little fewer. */
  @Test
  void anEvenPulseIsWithinWhatIsSaidNineTimesInTen() {
    for (int beats : new int[] {8, 16, 40}) {
      for (double jitter : new double[] {0.010, 0.020}) {
        for (boolean withEnd : new boolean[] {true, false}) {
          int held = held(beats, jitter, withEnd);
          assertTrue(held >= (beats < 16 ? 800 : 860), beats + " beats: " + held);
        }
      }
    }
  }

  private static TakeLanding landing(double error, double doubt) {
    return new TakeLanding(9, error, error / 0.2, doubt, 0.06, LandingBeat.PULSE);
  }

  /** It lands if nearer than 60 ms; of a normal distribution 2.3 % lie above 2 (any table). */
  @Test
  void whatMayBeOffNeitherLandsNorIsOff() {
    for (double side : new double[] {-1, 1}) {
      TakeLanding unsure = landing(side * 0.055, 0.010);
      assertFalse(unsure.lands());
      assertFalse(unsure.isOff());
      assertEquals(0.02, unsure.giveOrTakeSeconds(), 1e-12);
      assertTrue(landing(side * 0.055, 0.0024).lands());
      assertTrue(landing(side * 0.039, 0.010).lands());
      assertFalse(landing(side * 0.041, 0.010).lands());
      assertFalse(landing(side * 0.061, 0.010).lands());
      assertTrue(landing(side * 0.061, 0.010).isOff());
      assertFalse(landing(side * 0.060, 0).isOff());
      assertTrue(landing(side * 0.060, 0).lands());
    }
  }

  /** Lags that were learnt say how far those of this performer are from the usual ones. */
  @Test
  void whoseLagsAreUnusualMayHaveOthersToo() {
    List<ExpectedSollu> asked = score(8);
    double[] doubts =
        Arrays.stream(new double[] {0, 0.03, 0.05})
            .map(lag -> EndDoubt.ofLag(heard(asked, lag), Lexicon.standard()))
            .toArray();
    assertTrue(doubts[0] >= 0.008 && doubts[0] < 0.02, Arrays.toString(doubts));
    assertTrue(doubts[2] > doubts[1] + 0.005 && doubts[2] < 0.1, Arrays.toString(doubts));
    Alignment unlearnt = new Alignment(asked, List.of(), List.of());
    assertEquals(0.008, EndDoubt.ofLag(unlearnt, Lexicon.standard()), "no lags are known");
  }

  /** Every other sollu is felt so much later than it is heard. */
  private static Alignment heard(List<ExpectedSollu> expected, double lag) {
    List<Alignment.Said> all =
        IntStream.range(0, expected.size()).mapToObj(k -> new Alignment.Said(k, k)).toList();
    return new Alignment(
        expected,
        List.of(),
        all,
        Set.of(),
        RecordedRange.whole(expected.size()),
        Optional.empty(),
        Set.of(),
        IntStream.range(0, expected.size()).mapToObj(k -> k % 2 * lag).toList());
  }
}
