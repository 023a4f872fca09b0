package org.matraloom.follow;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The same sounds put to sollus some places before or after, all of them or from one on. */
final class ShiftedPairings {

  /** So many sollus a pairing is shifted at most. */
  private static final int MOST_SHIFT = 8;

  /** Shifted pairings that are worse than the first by more are not looked at. */
  private static final double HOPELESS = 80;

  /** The same of a pairing that lacks nothing: shifted, it breaks at an end. */
  private static final double SHIFTED_WHOLE = 6;

  private static final int MOST_FAR = 2;

  /** From so many places on a pairing is also shifted; the likeliest of these are looked at. */
  private static final int PARTS = 12;

  private static final int MOST_PARTLY = 2;

  /** What is shifted by so few is looked at in any case: its ends alone may make it look worse. */
  private static final int NEAR = 2;

  private final int sollus;

  /**
   * Prepares to shift.
   *
   * @param sollus how many the score asks for
   */
  ShiftedPairings(int sollus) {
    this.sollus = sollus;
  }

  /** What else a pairing without a break may be: shifted as a whole. */
  List<List<Alignment.Said>> ofWhole(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth) {
    double least = worth.applyAsDouble(said) - SHIFTED_WHOLE;
    return Stream.concat(
            shifted(said, worth, SHIFTED_WHOLE).stream(),
            partlyShifted(said, worth).stream().filter(part -> worth.applyAsDouble(part) > least))
        .toList();
  }

  /** What else a pairing that breaks may be: shifted. */
  List<List<Alignment.Said>> ofBroken(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth) {
    return Stream.concat(
            shifted(said, worth, HOPELESS).stream(), partlyShifted(said, worth).stream())
        .toList();
  }

  /**
   * The likeliest of the pairings that are shifted from some sound on: a slip that was overheard.
   */
  private List<List<Alignment.Said>> partlyShifted(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth) {
    record Part(List<Alignment.Said> said, double worth) {}
    return IntStream.range(1, PARTS)
        .mapToObj(part -> part * said.size() / PARTS)
        .flatMap(
            from ->
                IntStream.rangeClosed(-NEAR, NEAR)
                    .filter(by -> by != 0)
                    .mapToObj(by -> shiftedFrom(said, from, by)))
        .filter(shifted -> shifted.size() > 1)
        .map(shifted -> new Part(shifted, worth.applyAsDouble(shifted)))
        .sorted(Comparator.comparingDouble(Part::worth).reversed())
        .limit(MOST_PARTLY)
        .map(Part::said)
        .toList();
  }

  private List<Alignment.Said> shiftedFrom(List<Alignment.Said> said, int from, int by) {
    int before = from == 0 ? -1 : said.get(from - 1).sollu();
    return IntStream.range(0, said.size())
        .mapToObj(i -> i < from ? said.get(i) : shifted(said.get(i), by))
        .filter(each -> each.sollu() >= 0 && each.sollu() < sollus)
        .filter(
            each ->
                each.onset() <= said.get(Math.max(0, from - 1)).onset() || each.sollu() > before)
        .toList();
  }

  private static Alignment.Said shifted(Alignment.Said said, int by) {
    return new Alignment.Said(said.sollu() + by, said.onset());
  }

  /** The likeliest of the pairings that put each sound to a sollu before or after. */
  private List<List<Alignment.Said>> shifted(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth, double margin) {
    record Shifted(int by, List<Alignment.Said> said, double worth) {}
    double least = worth.applyAsDouble(said) - margin;
    List<Shifted> found =
        IntStream.rangeClosed(-MOST_SHIFT, MOST_SHIFT)
            .filter(by -> by != 0)
            .mapToObj(by -> new Shifted(by, shifted(said, by), 0))
            .filter(each -> each.said.size() > 1)
            .map(each -> new Shifted(each.by, each.said, worth.applyAsDouble(each.said)))
            .filter(each -> each.worth > least)
            .sorted(Comparator.comparingDouble(Shifted::worth).reversed())
            .toList();
    return Stream.concat(
            found.stream().filter(each -> Math.abs(each.by) <= NEAR),
            found.stream().filter(each -> Math.abs(each.by) > NEAR).limit(MOST_FAR))
        .map(Shifted::said)
        .toList();
  }

  private List<Alignment.Said> shifted(List<Alignment.Said> said, int by) {
    return said.stream()
        .map(each -> shifted(each, by))
        .filter(each -> each.sollu() >= 0 && each.sollu() < sollus)
        .toList();
  }
}
