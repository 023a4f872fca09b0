package org.matraloom.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The laws of fractions, held against {@link BigInteger} and at the edges of a {@code long}. */
class RatioTest {

  private static final int ROUNDS = 20_000;

  /** A fraction without a limit, to compare with; reduced, positive denominator. */
  private record Big(BigInteger num, BigInteger den) {
    static Big of(Ratio ratio) {
      return of(BigInteger.valueOf(ratio.num()), BigInteger.valueOf(ratio.den()));
    }

    static Big of(BigInteger num, BigInteger den) {
      BigInteger divisor = num.gcd(den).multiply(BigInteger.valueOf(den.signum()));
      return new Big(num.divide(divisor), den.divide(divisor));
    }

    Big plus(Big other) {
      return of(num.multiply(other.den).add(other.num.multiply(den)), den.multiply(other.den));
    }

    Big minus(Big other) {
      return plus(new Big(other.num.negate(), other.den));
    }

    Big times(Big other) {
      return of(num.multiply(other.num), den.multiply(other.den));
    }

    Big dividedBy(Big other) {
      return of(num.multiply(other.den), den.multiply(other.num));
    }

    int compareTo(Big other) {
      return num.multiply(other.den).compareTo(other.num.multiply(den));
    }

    boolean fits() {
      return num.abs().bitLength() < Long.SIZE && den.bitLength() < Long.SIZE;
    }
  }

  @Test
  void agreesWithUnlimitedFractions() {
    SplittableRandom random = new SplittableRandom(1);
    for (int round = 0; round < ROUNDS; round++) {
      Ratio a = small(random);
      Ratio b = small(random);
      assertEquals(Big.of(a).plus(Big.of(b)), Big.of(a.plus(b)));
      assertEquals(Big.of(a).minus(Big.of(b)), Big.of(a.minus(b)));
      assertEquals(Big.of(a).times(Big.of(b)), Big.of(a.times(b)));
      assertEquals(Big.of(a).compareTo(Big.of(b)), a.compareTo(b));
      if (b.signum() != 0) {
        assertEquals(Big.of(a).dividedBy(Big.of(b)), Big.of(a.dividedBy(b)));
      }
    }
  }

  @Test
  void givesTheTrueResultOrThrows() {
    SplittableRandom random = new SplittableRandom(2);
    int thrown = 0;
    int given = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Ratio a = anySize(random);
      Ratio b = anySize(random);
      Big sum = Big.of(a).plus(Big.of(b));
      Big difference = Big.of(a).minus(Big.of(b));
      Big product = Big.of(a).times(Big.of(b));
      thrown += trueOrThrows(sum, () -> a.plus(b)) + trueOrThrows(difference, () -> a.minus(b));
      int productThrown = trueOrThrows(product, () -> a.times(b));
      assertEquals(!product.fits(), productThrown == 1, a + " times " + b);
      thrown += productThrown;
      given += 1 - productThrown;
      assertEquals(Big.of(a).compareTo(Big.of(b)), a.compareTo(b), a + " against " + b);
      assertEquals(0, a.compareTo(a));
    }
    assertTrue(thrown > ROUNDS / 10, "overflows were met: " + thrown);
    assertTrue(given > ROUNDS / 10, "results were met: " + given);
  }

  private static int trueOrThrows(Big expected, Supplier<Ratio> operation) {
    try {
      assertEquals(expected, Big.of(operation.get()));
      return 0;
    } catch (ArithmeticException overflow) {
      return 1;
    }
  }

  @Test
  void obeysTheLawsOfArithmetic() {
    SplittableRandom random = new SplittableRandom(3);
    for (int round = 0; round < ROUNDS; round++) {
      Ratio a = tiny(random);
      Ratio b = tiny(random);
      Ratio c = tiny(random);
      assertEquals(a.plus(b), b.plus(a));
      assertEquals(a.plus(b).plus(c), a.plus(b.plus(c)));
      assertEquals(a.times(b), b.times(a));
      assertEquals(a.times(b).times(c), a.times(b.times(c)));
      assertEquals(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
      assertEquals(Ratio.ZERO, a.plus(a.negate()));
      assertEquals(a, a.minus(b).plus(b));
      assertEquals(a, a.plus(Ratio.ZERO).times(Ratio.ONE));
      assertEquals(a.signum(), a.compareTo(Ratio.ZERO));
      assertEquals(Integer.signum(a.compareTo(b)), a.minus(b).signum());
      if (b.signum() != 0) {
        assertEquals(a, a.dividedBy(b).times(b));
      }
    }
  }

  @Test
  void isAlwaysInLowestTermsWithAPositiveDenominator() {
    SplittableRandom random = new SplittableRandom(4);
    for (int round = 0; round < ROUNDS; round++) {
      long num = random.nextLong(-1_000_000, 1_000_000);
      long den = random.nextLong(1, 1_000_000) * (random.nextBoolean() ? 1 : -1);
      Ratio ratio = new Ratio(num, den);
      assertTrue(ratio.den() > 0);
      assertEquals(
          BigInteger.ONE, BigInteger.valueOf(ratio.num()).gcd(BigInteger.valueOf(ratio.den())));
      assertEquals(num * ratio.den(), ratio.num() * den);
    }
    assertEquals(new Ratio(0, 1), new Ratio(0, -7));
    assertEquals(new Ratio(-1, 2), new Ratio(3, -6));
    assertEquals(new Ratio(1, 2).hashCode(), new Ratio(-4, -8).hashCode());
  }

  @Test
  void overflowThrowsAndNeverWraps() {
    Ratio most = Ratio.of(Long.MAX_VALUE);
    Ratio least = new Ratio(1, Long.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> most.plus(Ratio.ONE));
    assertThrows(ArithmeticException.class, () -> most.negate().minus(Ratio.ONE));
    assertThrows(ArithmeticException.class, () -> most.times(2));
    assertThrows(ArithmeticException.class, () -> least.dividedBy(2));
    assertThrows(ArithmeticException.class, () -> least.plus(new Ratio(1, Long.MAX_VALUE - 1)));
    assertThrows(ArithmeticException.class, () -> Ratio.of(Long.MIN_VALUE));
    assertThrows(ArithmeticException.class, () -> new Ratio(1, Long.MIN_VALUE));
    assertThrows(ArithmeticException.class, () -> new Ratio(1, 0));
    assertThrows(ArithmeticException.class, () -> Ratio.ONE.dividedBy(0));
    assertThrows(ArithmeticException.class, () -> Ratio.ONE.modulo(Ratio.ZERO));
    assertEquals(Ratio.ONE, most.times(least));
    assertEquals(Ratio.ZERO, most.times(0));
    assertEquals(Ratio.ZERO, most.plus(most.negate()));
  }

  @Test
  void comparesWhereTheProductsDoNotFit() {
    Ratio most = Ratio.of(Long.MAX_VALUE);
    Ratio nearlyOne = new Ratio(Long.MAX_VALUE - 1, Long.MAX_VALUE);
    Ratio nearerOne = new Ratio(Long.MAX_VALUE - 2, Long.MAX_VALUE - 1);
    assertTrue(nearlyOne.compareTo(nearerOne) > 0);
    assertTrue(nearerOne.compareTo(nearlyOne) < 0);
    assertTrue(nearlyOne.negate().compareTo(nearerOne.negate()) < 0);
    assertTrue(most.compareTo(nearlyOne) > 0);
    assertTrue(most.negate().compareTo(nearlyOne.negate()) < 0);
    assertTrue(most.negate().compareTo(most) < 0);
    assertEquals(0, nearlyOne.compareTo(new Ratio(Long.MAX_VALUE - 1, Long.MAX_VALUE)));
  }

  @Test
  void floorAndCeilingEncloseTheNumber() {
    SplittableRandom random = new SplittableRandom(5);
    for (int round = 0; round < ROUNDS; round++) {
      Ratio a = small(random);
      Ratio below = Ratio.of(a.floor());
      Ratio above = Ratio.of(a.ceil());
      assertTrue(below.compareTo(a) <= 0 && a.compareTo(below.plus(Ratio.ONE)) < 0);
      assertTrue(above.compareTo(a) >= 0 && a.compareTo(above.minus(Ratio.ONE)) > 0);
      assertEquals(a.isWhole(), below.equals(above));
    }
    assertEquals(-1, new Ratio(-1, 2).floor());
    assertEquals(0, new Ratio(-1, 2).ceil());
  }

  @Test
  void moduloLeavesAPlaceInsideTheCycle() {
    SplittableRandom random = new SplittableRandom(6);
    int negatives = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Ratio a = tiny(random);
      Ratio cycle = new Ratio(random.nextLong(1, 64), random.nextLong(1, 64));
      Ratio place = a.modulo(cycle);
      assertTrue(place.signum() >= 0 && place.compareTo(cycle) < 0);
      assertTrue(a.minus(place).dividedBy(cycle).isWhole());
      assertEquals(place, a.plus(cycle.times(random.nextLong(-50, 50))).modulo(cycle));
      negatives += a.signum() < 0 ? 1 : 0;
    }
    assertTrue(negatives > ROUNDS / 3, "negatives were met: " + negatives);
  }

  @ParameterizedTest
  @CsvSource({
    "-1/4, 8, 31/4",
    "-8, 8, 0",
    "-1, 8, 7",
    "-17/2, 8, 15/2",
    "8, 8, 0",
    "225/4, 8, 1/4",
    "-224/5, 8, 16/5",
    "224/5, 8, 24/5",
    "0, 7, 0"
  })
  void moduloOfKnownPlaces(String value, String cycle, String place) {
    assertEquals(parse(place), parse(value).modulo(parse(cycle)));
  }

  @ParameterizedTest
  @CsvSource({
    "224/5, 44 4/5",
    "-1/2, -1/2",
    "56, 56",
    "-3/2, -1 1/2",
    "0, 0",
    "7/8, 7/8",
    "-4, -4",
    "-224/5, -44 4/5"
  })
  void isSaidAsAWholePartAndAFraction(String value, String mixed) {
    assertEquals(mixed, parse(value).toMixed());
    assertEquals(value, parse(value).toString());
  }

  @Test
  void theSmallerOfTwoIsTheSameEitherWay() {
    Ratio less = new Ratio(-7, 5);
    Ratio more = new Ratio(2, 3);
    assertEquals(less, less.min(more));
    assertEquals(less, more.min(less));
    assertEquals(more, more.min(more));
  }

  @Test
  void becomesADoubleOnlyAtTheEdge() {
    assertEquals(0.25, new Ratio(1, 4).toDouble());
    assertEquals(-44.8, new Ratio(-224, 5).toDouble());
    assertTrue(Ratio.of(3).isWhole());
    assertFalse(new Ratio(3, 2).isWhole());
  }

  private static Ratio parse(String text) {
    String[] parts = text.split("/");
    return Ratio.of(Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1]));
  }

  private static Ratio tiny(SplittableRandom random) {
    return new Ratio(random.nextLong(-5_000, 5_000), random.nextLong(1, 5_000));
  }

  private static Ratio small(SplittableRandom random) {
    return new Ratio(random.nextLong(-(1L << 30), 1L << 30), random.nextLong(1, 1L << 30));
  }

  private static Ratio anySize(SplittableRandom random) {
    long num = random.nextLong() >> random.nextInt(Long.SIZE);
    long den = random.nextLong() >>> 1 + random.nextInt(Long.SIZE - 1);
    return new Ratio(Math.max(num, -Long.MAX_VALUE), Math.max(den, 1));
  }
}
