package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.matraloom.onset.Onset;

/** The pairings from which the search begins: by time alone, shifted, in part, and counted. */
final class PairingStarts {

  /** The tempo of the take may be this much slower or faster than the score's. */
  static final double SLOWEST = 0.72;

  static final double FASTEST = 1.40;

  /** So many guesses at the tempo are followed. */
  private static final int GUESSES = 3;

  /** What is nearer to the tempo of the score needs no guess beside it. */
  private static final double NEAR_SCORE = 0.05;

  private static final int FIRST_PLACES = 80;

  /** So many sollus at the beginning and at the end are also put to sounds one by one. */
  private static final int COUNTED = 48;

  private final double[][] ways;
  private final double[] matraSeconds;
  private final boolean[] entries;
  private final List<Onset> onsets;
  private final int sollus;
  private final PairingModel ignorant;
  private final ShiftedPairings shifted;

  /**
   * Prepares to begin.
   *
   * @param ways when each sollu falls in each way to say the score, in seconds at its tempo
   * @param matraSeconds the length of each sollu's matra at that tempo; 0 if it is not known
   * @param entries whether a performer may begin again at that sollu
   * @param onsets what was heard, in order of time
   * @param ignorant what is known before anything was learnt
   */
  PairingStarts(
      double[][] ways,
      double[] matraSeconds,
      boolean[] entries,
      List<Onset> onsets,
      PairingModel ignorant) {
    this.ways = ways;
    this.matraSeconds = matraSeconds;
    this.entries = entries;
    this.onsets = List.copyOf(onsets);
    this.sollus = ways[0].length;
    this.ignorant = ignorant;
    this.shifted = new ShiftedPairings(sollus);
  }

  /** What is known before anything was learnt, at some tempo. */
  PairingModel ignorant(double stretch) {
    return ignorant.at(stretch);
  }

  /**
   * How many times as slow as the score the take may be, the likeliest first; the tempo of the
   * score is among them, as a part of it in one nadai has the spans of another at another tempo.
   */
  List<Double> stretches() {
    List<Double> guesses = TempoGuesses.of(ways[0], onsets, 1 / FASTEST, 1 / SLOWEST, GUESSES);
    return guesses.stream().anyMatch(guess -> Math.abs(guess - 1) < NEAR_SCORE)
        ? guesses
        : Stream.concat(guesses.stream(), Stream.of(1.0)).toList();
  }

  /** Whether sounds were heard that are not sure. */
  boolean hasUnsureSounds() {
    return sure().length < onsets.size();
  }

  /** A first pairing by time alone, of sure sounds only: what murmurs between them misleads. */
  List<Alignment.Said> bySureSounds(PairingModel guess) {
    return byTime(sure(), guess);
  }

  /** The same by a performer who begins at the beginning and never goes back. */
  List<Alignment.Said> onceBySureSounds(PairingModel guess) {
    return byTime(sure(), guess, false);
  }

  private int[] sure() {
    return IntStream.range(0, onsets.size())
        .filter(j -> onsets.get(j).confidence() >= PairingPrices.SURE_CONFIDENCE)
        .toArray();
  }

  /** A first pairing by time alone, of all sounds. */
  List<Alignment.Said> byAllSounds(PairingModel guess) {
    return byTime(IntStream.range(0, onsets.size()).toArray(), guess);
  }

  private List<Alignment.Said> byTime(int[] some, PairingModel guess) {
    return byTime(some, guess, true);
  }

  private List<Alignment.Said> byTime(int[] some, PairingModel guess, boolean goesBack) {
    if (some.length == 0) {
      return List.of();
    }
    List<Onset> heard = IntStream.of(some).mapToObj(onsets::get).toList();
    ScoreFollower follower = new ScoreFollower(ways, matraSeconds, entries, heard);
    ScoreFollower.Path path =
        goesBack
            ? follower.follow(guess, some.length, FIRST_PLACES)
            : follower.followOnce(guess, some.length, FIRST_PLACES);
    return path.said().stream()
        .map(each -> new Alignment.Said(each.sollu(), some[each.onset()]))
        .toList();
  }

  /** What else a pairing without a break may be: shifted as a whole. */
  List<List<Alignment.Said>> shiftedWhole(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth) {
    return shifted.ofWhole(said, worth);
  }

  /** What else to begin from than a pairing that breaks. */
  List<List<Alignment.Said>> others(
      List<Alignment.Said> said, ToDoubleFunction<List<Alignment.Said>> worth) {
    List<List<Alignment.Said>> others = new ArrayList<>(shifted.ofBroken(said, worth));
    int half = said.size() / 2;
    others.add(said.subList(0, half));
    others.add(said.subList(half, said.size()));
    int[] all = IntStream.range(0, onsets.size()).toArray();
    for (int[] some : hasUnsureSounds() ? new int[][] {all, sure()} : new int[][] {all}) {
      others.add(counted(0, 0, some));
      others.add(counted(sollus - COUNTED, some.length - COUNTED, some));
    }
    return others;
  }

  /** Some sounds put to sollus one by one. */
  private List<Alignment.Said> counted(int sollu, int from, int[] some) {
    return IntStream.range(0, COUNTED)
        .filter(i -> sollu + i >= 0 && from + i >= 0)
        .filter(i -> sollu + i < sollus && from + i < some.length)
        .mapToObj(i -> new Alignment.Said(sollu + i, some[from + i]))
        .toList();
  }

  /**
   * The sounds of a pairing put to sollus one by one, up from the first sollu and down from the
   * last: in words that repeat, a passage said twice and another left out is as good in sound.
   */
  List<List<Alignment.Said>> straightened(List<Alignment.Said> said) {
    if (said.size() > sollus) {
      return List.of();
    }
    return IntStream.of(0, sollus - said.size())
        .distinct()
        .mapToObj(
            first ->
                IntStream.range(0, said.size())
                    .mapToObj(i -> new Alignment.Said(first + i, said.get(i).onset()))
                    .toList())
        .filter(straight -> !straight.equals(said))
        .toList();
  }
}
