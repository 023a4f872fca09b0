package org.matraloom.breath;

import org.matraloom.time.Ratio;

/**
 * What one person needs and can do.
 *
 * <p>The defaults are starting values to be tuned to the person, not findings. Quick inhalations of
 * 0.2 to 0.4 s and full ones of 0.4 to 0.7 s in speech are figures from memory. The longest stretch
 * stays under 40 % of the time for which adults over 65 hold a vowel, 20 s and more (Maslan et al.
 * 2011, Journal of Voice 25:709); 40 sollus at 25 cm3 each are about a litre, the upper end of what
 * speech uses (Stevens 1998, Acoustic Phonetics). Sentences of up to 82 syllables have been said on
 * one breath (Whalen and Kinsella-Shaw 1997, Phonetica 54:138).
 *
 * @param inhaling how long breaths are and how far apart
 * @param longestSeconds the longest stretch without a breath, in seconds, 2 to 60
 * @param longestSollus the most sollus in a stretch, 8 to 1000; whichever limit comes first holds
 * @param cutting what may be cut to make time
 * @param way by which rules breaths are planned
 */
public record BreathSettings(
    Inhaling inhaling, Ratio longestSeconds, int longestSollus, Cutting cutting, Way way) {

  /** No inhalation shorter than this is ever planned, in ms. */
  public static final int FLOOR_MS = 250;

  /** By which rules breaths are planned. */
  public enum Way {
    /** As a reciter breathes: at joints, alike each time, wherever air is free. */
    RECITER,
    /** As few breaths as the limits allow. */
    FEWEST
  }

  /**
   * How long breaths are and how far apart.
   *
   * @param shortestMs the shortest inhalation planned, in ms, {@value #FLOOR_MS} to 2000
   * @param fullMs from this length on, in ms, a breath is a full one and not a catch breath; at
   *     least {@code shortestMs}, at most 5000
   * @param apartMs breaths that begin closer than this to the beginning of the one before are
   *     avoided, in ms, 0 to 10000; 2000 is the safe side of general advice against breathing too
   *     much, a choice of our own
   */
  public record Inhaling(int shortestMs, int fullMs, int apartMs) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public Inhaling {
      check("shortest breath in ms", Ratio.of(shortestMs), FLOOR_MS, 2_000);
      check("full breath in ms", Ratio.of(fullMs), shortestMs, 5_000);
      check("distance of two breaths in ms", Ratio.of(apartMs), 0, 10_000);
    }
  }

  /**
   * What may be cut to make time.
   *
   * @param keptMs how much of a sollu sounds at least when it is cut, in ms, 40 to 1000
   * @param keptMatras how much of its own matra sounds at least when it is cut, 0 to 1
   * @param allowed whether a ringing sound, or the last sollu of a round, may be cut at all
   */
  public record Cutting(int keptMs, Ratio keptMatras, boolean allowed) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value that is out of range
     */
    public Cutting {
      check("kept part of a sollu in ms", Ratio.of(keptMs), 40, 1_000);
      check("kept part of a matra", keptMatras, 0, 1);
    }
  }

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException naming the value that is out of range
   */
  public BreathSettings {
    check("longest stretch in seconds", longestSeconds, 2, 60);
    check("longest stretch in sollus", Ratio.of(longestSollus), 8, 1_000);
  }

  /**
   * For study: at most 8 s or 40 sollus on one breath.
   *
   * @return the default settings
   */
  public static BreathSettings study() {
    return new BreathSettings(
        new Inhaling(250, 600, 2_000),
        Ratio.of(8),
        40,
        new Cutting(80, Ratio.of(1, 2), true),
        Way.RECITER);
  }

  /**
   * For the stage: at most 12 s or 40 sollus on one breath.
   *
   * @return the settings
   */
  public static BreathSettings concert() {
    return study().withLongest(Ratio.of(12), 40);
  }

  /**
   * The same with other limits.
   *
   * @param seconds the longest stretch, 2 to 60
   * @param sollus the most sollus in a stretch, 8 to 1000
   * @return a copy
   * @throws IllegalArgumentException if a limit is out of range
   */
  public BreathSettings withLongest(Ratio seconds, int sollus) {
    return new BreathSettings(inhaling, seconds, sollus, cutting, way);
  }

  /**
   * The same with another shortest breath; a full one is never shorter.
   *
   * @param ms the shortest inhalation planned, in ms, {@value #FLOOR_MS} to 2000
   * @return a copy
   * @throws IllegalArgumentException if it is out of range
   */
  public BreathSettings withShortest(int ms) {
    check("shortest breath in ms", Ratio.of(ms), FLOOR_MS, 2_000);
    Inhaling other = new Inhaling(ms, Math.max(ms, inhaling.fullMs), inhaling.apartMs);
    return new BreathSettings(other, longestSeconds, longestSollus, cutting, way);
  }

  /**
   * The same with sounds left whole, or not.
   *
   * @param cut whether a ringing sound, or the last sollu of a round, may be cut to make time
   * @return a copy
   */
  public BreathSettings withCutKarvai(boolean cut) {
    Cutting other = new Cutting(cutting.keptMs, cutting.keptMatras, cut);
    return new BreathSettings(inhaling, longestSeconds, longestSollus, other, way);
  }

  /**
   * The same by other rules.
   *
   * @param other the rules
   * @return a copy
   */
  public BreathSettings by(Way other) {
    return new BreathSettings(inhaling, longestSeconds, longestSollus, cutting, other);
  }

  /**
   * Whether sounds may be cut.
   *
   * @return whether a ringing sound, or the last sollu of a round, may be cut to make time
   */
  public boolean cutKarvai() {
    return cutting.allowed;
  }

  /**
   * The shortest inhalation.
   *
   * @return in ms
   */
  public int shortestMs() {
    return inhaling.shortestMs;
  }

  /**
   * From which length on a breath is a full one.
   *
   * @return in ms
   */
  public int fullMs() {
    return inhaling.fullMs;
  }

  private static void check(String what, Ratio given, long least, long most) {
    if (given.compareTo(Ratio.of(least)) < 0 || given.compareTo(Ratio.of(most)) > 0) {
      throw new IllegalArgumentException(
          what + " is " + least + " to " + most + ", given " + given);
    }
  }
}
