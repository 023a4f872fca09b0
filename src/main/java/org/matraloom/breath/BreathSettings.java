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
 * @param shortestMs the shortest inhalation planned, in ms, {@value #FLOOR_MS} to 2000
 * @param fullMs from this length on, in ms, a breath is a full one and not a catch breath; at least
 *     {@code shortestMs}, at most 5000
 * @param longestSeconds the longest stretch without a breath, in seconds, 2 to 60
 * @param longestSollus the most sollus in a stretch, 8 to 1000; whichever limit comes first holds
 * @param keptMs how much of a sollu sounds at least when it is cut, in ms, 40 to 1000
 * @param keptMatras how much of its own matra sounds at least when it is cut, 0 to 1
 * @param apartMs breaths closer than this, from the end of one to the beginning of the next, are
 *     avoided, in ms, 0 to 10000
 * @param cutKarvai whether a ringing sound may be cut to make time
 */
public record BreathSettings(
    int shortestMs,
    int fullMs,
    Ratio longestSeconds,
    int longestSollus,
    int keptMs,
    Ratio keptMatras,
    int apartMs,
    boolean cutKarvai) {

  /** No inhalation shorter than this is ever planned, in ms. */
  public static final int FLOOR_MS = 250;

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException naming the value that is out of range
   */
  public BreathSettings {
    check("shortest breath in ms", Ratio.of(shortestMs), FLOOR_MS, 2_000);
    check("full breath in ms", Ratio.of(fullMs), shortestMs, 5_000);
    check("longest stretch in seconds", longestSeconds, 2, 60);
    check("longest stretch in sollus", Ratio.of(longestSollus), 8, 1_000);
    check("kept part of a sollu in ms", Ratio.of(keptMs), 40, 1_000);
    check("kept part of a matra", keptMatras, 0, 1);
    check("distance of two breaths in ms", Ratio.of(apartMs), 0, 10_000);
  }

  /**
   * For study: at most 8 s or 40 sollus on one breath.
   *
   * @return the default settings
   */
  public static BreathSettings study() {
    return new BreathSettings(250, 600, Ratio.of(8), 40, 80, Ratio.of(1, 2), 2_000, true);
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
    return new BreathSettings(
        shortestMs, fullMs, seconds, sollus, keptMs, keptMatras, apartMs, cutKarvai);
  }

  /**
   * The same with ringing sounds left whole, or not.
   *
   * @param cut whether a ringing sound may be cut to make time
   * @return a copy
   */
  public BreathSettings withCutKarvai(boolean cut) {
    return new BreathSettings(
        shortestMs, fullMs, longestSeconds, longestSollus, keptMs, keptMatras, apartMs, cut);
  }

  private static void check(String what, Ratio given, long least, long most) {
    if (given.compareTo(Ratio.of(least)) < 0 || given.compareTo(Ratio.of(most)) > 0) {
      throw new IllegalArgumentException(
          what + " is " + least + " to " + most + ", given " + given);
    }
  }
}
