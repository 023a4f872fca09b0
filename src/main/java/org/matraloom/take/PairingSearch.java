package org.matraloom.take;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.matraloom.score.Lexicon;

/**
 * Pairs a take with its score by time and by sound together.
 *
 * <p>A first pairing goes by time alone. On words that repeat, such a pairing may be a sollu or
 * more beside the right one, so it is also tried shifted. From each of these it is learnt how the
 * performer speaks (when each sollu is heard, how it sounds), and with that the take is paired
 * anew, as in Viterbi training (B.-H. Juang and L. R. Rabiner, IEEE Trans. Acoust. Speech Signal
 * Process. 38 (1990) 1639-1641). The likeliest is taken; another that is hardly less likely is kept
 * beside it, so that doubt can be told.
 */
final class PairingSearch {

  /** The tempo of the take may be this much slower or faster than the score's. */
  static final double SLOWEST = 0.72;

  static final double FASTEST = 1.40;

  private static final double TEMPO_STEP = 1.07;

  /** A passage that may be two at different speeds is the one nearer to the score. */
  private static final double STRETCH_COST = 6;

  /** The tempo is guessed on so many onsets. */
  private static final int GUESS_ONSETS = 160;

  private static final int FIRST_PLACES = 80;
  private static final int PLACES = 40;

  /** So many sollus a pairing is shifted at most. */
  private static final int MOST_SHIFT = 8;

  /** Shifted pairings that are worse than the first by more are not looked at. */
  private static final double HOPELESS = 80;

  private static final int MOST_SHIFTED = 4;

  /** So many sollus at the beginning and at the end are also put to sounds one by one. */
  private static final int COUNTED = 48;

  private static final double BREAK = 5;
  private static final double SOUNDS_FOR_BREAK = 60;

  /** So often it is learnt and paired anew, if that helps. */
  private static final int ROUNDS = 3;

  private final double[] expected;
  private final ScoreFollower follower;
  private final PairingWalk walk;
  private final PairingLessons lessons;
  private final PairingModel ignorant;
  private final List<Onset> onsets;

  PairingSearch(
      List<ExpectedSollu> asked, List<Onset> onsets, SoundColours colours, Lexicon lexicon) {
    this(
        Ways.of(asked),
        Intervals.matras(asked),
        ExpectedSollu.entries(asked),
        ExpectedSollu.kinds(asked),
        onsets,
        colours,
        PairingModel.first(
            asked.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toList()));
  }

  PairingSearch(
      double[][] ways,
      double[] matraSeconds,
      boolean[] entries,
      int[] kinds,
      List<Onset> onsets,
      SoundColours colours,
      PairingModel ignorant) {
    this.expected = ways[0];
    this.ignorant = ignorant;
    this.onsets = List.copyOf(onsets);
    follower = new ScoreFollower(ways, matraSeconds, entries, onsets);
    walk = new PairingWalk(ways, matraSeconds, onsets);
    lessons = new PairingLessons(expected, kinds, onsets, colours);
  }

  /**
   * The likeliest pairing.
   *
   * @param said which sollu is which onset; empty if there is nothing to pair
   * @param unsure what cannot be told, if another pairing is hardly less likely
   * @param lagSeconds for each place of the score, how long before its beat it is heard, about the
   *     mean of all; empty if that was not learnt
   */
  record Found(List<Alignment.Said> said, Optional<Unsure> unsure, List<Double> lagSeconds) {}

  /** Looks for the likeliest pairing. */
  Found find() {
    if (expected.length == 0 || onsets.isEmpty()) {
      return new Found(List.of(), Optional.empty(), List.of());
    }
    PairingModel guess = ignorant.at(guessedStretch());
    List<Alignment.Said> first = follower.follow(guess, onsets.size(), FIRST_PLACES).said();
    Trained plain = trained(first, guess);
    if (isWhole(plain)) {
      return new Found(filled(plain), Optional.empty(), lags(plain));
    }
    int half = first.size() / 2;
    List<List<Alignment.Said>> starts = new ArrayList<>();
    starts.addAll(shifted(first, guess));
    starts.add(first.subList(0, half));
    starts.add(first.subList(half, first.size()));
    starts.add(counted(0, 0));
    starts.add(counted(expected.length - COUNTED, onsets.size() - COUNTED));
    Trained best =
        likeliest(
            Stream.concat(Stream.of(plain), starts.stream().map(start -> trained(start, guess)))
                .toList());
    best = likeliest(List.of(best, trained(best.said, guess)));
    return new Found(
        filled(best),
        PairingRivals.of(walk, onsets, expected.length, best.said, best.model),
        lags(best));
  }

  /**
   * How likely a pairing is, with less trust in the sum over many sounds than it claims: where two
   * pairings make sollus that are each of one sound, it is chance which of them sounds better, and
   * that grows with the take. So breaks count the more, the more sounds there are.
   */
  private double worth(List<Alignment.Said> said, PairingModel model) {
    return walk.worth(said, model)
        - BREAK * walk.breaks(said, model) * said.size() / SOUNDS_FOR_BREAK;
  }

  /** Whether every sollu has its sound, one after the other: then no other pairing can be right. */
  private boolean isWhole(Trained trained) {
    List<Alignment.Said> said = trained.said;
    return said.size() == expected.length
        && IntStream.range(0, said.size()).allMatch(i -> said.get(i).sollu() == i)
        && walk.breaks(said, trained.model) == 0;
  }

  /** Sounds put to sollus one by one. */
  private List<Alignment.Said> counted(int sollu, int onset) {
    return IntStream.range(0, COUNTED)
        .filter(i -> sollu + i >= 0 && onset + i >= 0)
        .filter(i -> sollu + i < expected.length && onset + i < onsets.size())
        .mapToObj(i -> new Alignment.Said(sollu + i, onset + i))
        .toList();
  }

  private record Trained(List<Alignment.Said> said, PairingModel model) {}

  private static List<Double> lags(Trained trained) {
    return Arrays.stream(trained.model.lagSeconds()).boxed().toList();
  }

  private List<Alignment.Said> filled(Trained trained) {
    return new PairingGaps(expected, onsets, trained.model).filled(trained.said);
  }

  /** Of several pairings the likeliest, all judged by the evenness of the most even one. */
  private Trained likeliest(List<Trained> all) {
    double spread =
        all.stream().mapToDouble(each -> each.model.spreadSeconds()).min().orElseThrow();
    return all.stream()
        .max(Comparator.comparingDouble(each -> worth(each.said, each.model.with(spread))))
        .orElseThrow();
  }

  private Trained trained(List<Alignment.Said> start, PairingModel guess) {
    List<Trained> rounds = new ArrayList<>();
    List<Alignment.Said> said = start;
    for (int round = 0; round < ROUNDS; round++) {
      PairingModel model = lessons.learn(said, guess);
      List<Alignment.Said> next = follower.follow(model, onsets.size(), PLACES).said();
      rounds.add(new Trained(next, lessons.learn(next, guess)));
      if (next.equals(said)) {
        break;
      }
      said = next;
    }
    return likeliest(rounds);
  }

  private double guessedStretch() {
    double best = 1;
    double most = Double.NEGATIVE_INFINITY;
    int guessed = Math.min(onsets.size(), GUESS_ONSETS);
    for (double stretch = 1 / FASTEST; stretch <= 1 / SLOWEST; stretch *= TEMPO_STEP) {
      double score = follower.follow(ignorant.at(stretch), guessed, FIRST_PLACES).score();
      double likely = score - STRETCH_COST * Math.abs(Math.log(stretch));
      if (likely > most) {
        most = likely;
        best = stretch;
      }
    }
    return best;
  }

  /** The likeliest of the pairings that put each sound to a sollu before or after. */
  private List<List<Alignment.Said>> shifted(List<Alignment.Said> said, PairingModel guess) {
    record Shifted(List<Alignment.Said> said, double worth) {}
    double unshifted = learntWorth(said, guess);
    List<Shifted> found = new ArrayList<>();
    for (int shift = -MOST_SHIFT; shift <= MOST_SHIFT; shift++) {
      int by = shift;
      List<Alignment.Said> other =
          said.stream()
              .map(each -> new Alignment.Said(each.sollu() + by, each.onset()))
              .filter(each -> each.sollu() >= 0 && each.sollu() < expected.length)
              .toList();
      if (shift != 0 && other.size() > 1) {
        double worth = learntWorth(other, guess);
        if (worth > unshifted - HOPELESS) {
          found.add(new Shifted(other, worth));
        }
      }
    }
    return found.stream()
        .sorted(Comparator.comparingDouble(Shifted::worth).reversed())
        .limit(MOST_SHIFTED)
        .map(Shifted::said)
        .toList();
  }

  private double learntWorth(List<Alignment.Said> said, PairingModel guess) {
    return worth(said, lessons.learn(said, guess));
  }
}
