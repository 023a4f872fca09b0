package org.matraloom.time;

/**
 * An exact rational number, always in lowest terms with a positive denominator.
 *
 * <p>Counts beats, matras and avartanas, where equality must be decided and not estimated. All
 * arithmetic is checked: a result that does not fit two {@code long}s throws {@link
 * ArithmeticException} and never wraps.
 *
 * @param num the numerator, any sign
 * @param den the denominator, at least 1
 */
public record Ratio(long num, long den) implements Comparable<Ratio> {

  /** Nought. */
  public static final Ratio ZERO = new Ratio(0, 1);

  /** One. */
  public static final Ratio ONE = new Ratio(1, 1);

  /**
   * Reduces the fraction to lowest terms.
   *
   * @throws ArithmeticException if {@code den} is zero, or a part is {@link Long#MIN_VALUE}
   */
  public Ratio {
    if (den == 0) {
      throw new ArithmeticException("a ratio cannot have the denominator 0");
    }
    long divisor = gcd(Math.absExact(num), Math.absExact(den)) * (den < 0 ? -1 : 1);
    num /= divisor;
    den /= divisor;
  }

  /** Written out, for what a record makes of itself is put together at every start: 15 ms. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Ratio ratio && num == ratio.num && den == ratio.den;
  }

  @Override
  public int hashCode() {
    return 31 * Long.hashCode(num) + Long.hashCode(den);
  }

  /**
   * A whole number as a ratio.
   *
   * @param whole any whole number
   * @return {@code whole/1}
   */
  public static Ratio of(long whole) {
    return new Ratio(whole, 1);
  }

  /**
   * A fraction as a ratio in lowest terms.
   *
   * @param num the numerator
   * @param den the denominator, not 0
   * @return {@code num/den}
   * @throws ArithmeticException if {@code den} is zero
   */
  public static Ratio of(long num, long den) {
    return new Ratio(num, den);
  }

  /**
   * Adds.
   *
   * @param other the number to add
   * @return the sum
   * @throws ArithmeticException on overflow
   */
  public Ratio plus(Ratio other) {
    long divisor = gcd(den, other.den);
    long left = Math.multiplyExact(num, other.den / divisor);
    long right = Math.multiplyExact(other.num, den / divisor);
    return new Ratio(Math.addExact(left, right), Math.multiplyExact(den / divisor, other.den));
  }

  /**
   * Subtracts.
   *
   * @param other the number to take away
   * @return the difference
   * @throws ArithmeticException on overflow
   */
  public Ratio minus(Ratio other) {
    return plus(other.negate());
  }

  /**
   * Multiplies.
   *
   * @param other the factor
   * @return the product
   * @throws ArithmeticException on overflow
   */
  public Ratio times(Ratio other) {
    long a = gcd(Math.absExact(num), other.den);
    long b = gcd(Math.absExact(other.num), den);
    return new Ratio(
        Math.multiplyExact(num / a, other.num / b), Math.multiplyExact(den / b, other.den / a));
  }

  /**
   * Multiplies by a whole number.
   *
   * @param factor the factor
   * @return the product
   * @throws ArithmeticException on overflow
   */
  public Ratio times(long factor) {
    return times(of(factor));
  }

  /**
   * Divides.
   *
   * @param other the divisor, not 0
   * @return the quotient
   * @throws ArithmeticException on overflow or division by zero
   */
  public Ratio dividedBy(Ratio other) {
    return times(new Ratio(other.den, other.num));
  }

  /**
   * Divides by a whole number.
   *
   * @param divisor the divisor, not 0
   * @return the quotient
   * @throws ArithmeticException on overflow or division by zero
   */
  public Ratio dividedBy(long divisor) {
    return dividedBy(of(divisor));
  }

  /**
   * Changes the sign.
   *
   * @return the negative
   */
  public Ratio negate() {
    return new Ratio(Math.negateExact(num), den);
  }

  /**
   * The greatest whole number that is not above this one.
   *
   * @return the floor
   */
  public long floor() {
    return Math.floorDiv(num, den);
  }

  /**
   * The least whole number that is not below this one.
   *
   * @return the ceiling
   */
  public long ceil() {
    return -Math.floorDiv(-num, den);
  }

  /**
   * The lesser of two.
   *
   * @param other the other
   * @return this number or the other
   */
  public Ratio min(Ratio other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /**
   * What is left after whole multiples of a cycle are taken away.
   *
   * @param cycle the cycle length, positive
   * @return a value from 0 (inclusive) to {@code cycle} (exclusive)
   * @throws ArithmeticException if {@code cycle} is zero, or on overflow
   */
  public Ratio modulo(Ratio cycle) {
    return minus(cycle.times(dividedBy(cycle).floor()));
  }

  /**
   * Whether this is a whole number.
   *
   * @return true if the denominator is 1
   */
  public boolean isWhole() {
    return den == 1;
  }

  /**
   * The sign.
   *
   * @return -1, 0 or 1
   */
  public int signum() {
    return Long.signum(num);
  }

  /**
   * The nearest {@code double}; for display and other edges only.
   *
   * @return the value as floating point
   */
  public double toDouble() {
    return (double) num / (double) den;
  }

  @Override
  public int compareTo(Ratio other) {
    int high = Long.compare(Math.multiplyHigh(num, other.den), Math.multiplyHigh(other.num, den));
    return high != 0 ? high : Long.compareUnsigned(num * other.den, other.num * den);
  }

  /**
   * Writes the number exactly.
   *
   * @return {@code "56"} or {@code "224/5"}
   */
  @Override
  public String toString() {
    return den == 1 ? Long.toString(num) : num + "/" + den;
  }

  /**
   * Writes the number the way a musician says it: a whole part, then a fraction.
   *
   * @return {@code "44 4/5"}, {@code "-1/2"} or {@code "56"}
   */
  public String toMixed() {
    long whole = num / den;
    long rest = Math.abs(num % den);
    return rest == 0 || whole == 0 ? toString() : whole + " " + rest + "/" + den;
  }

  private static long gcd(long a, long b) {
    for (long rest; b != 0; b = rest) {
      rest = a % b;
      a = b;
    }
    return a == 0 ? 1 : a;
  }
}
