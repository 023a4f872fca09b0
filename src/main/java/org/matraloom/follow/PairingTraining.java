package org.matraloom.follow;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Learns from a pairing how the performer speaks (when each sollu is heard, how it sounds), pairs
 * the take anew with that, and again, as in Viterbi training (B.-H. Juang and L. R. Rabiner, IEEE
 * Trans. Acoust. Speech Signal Process. 38 (1990) 1639-1641).
 */
final class PairingTraining {

  private static final int PLACES = 40;

  /** So often it is learnt and paired anew, if that helps. */
  private static final int ROUNDS = 3;

  /** A passage that may be two at different speeds is the one nearer to the score. */
  private static final double OTHER_TEMPO = 30;

  /** That a stop is not heard is so much less likely than that a soft sound is not. */
  private static final double STOP_MISSED = 0.5;

  /** People say a passage again, but seldom more than so many sollus; each of the others costs. */
  private static final int SAID_AGAIN = 24;

  private static final double AGAIN = 1.0;

  private static final double BREAK = 3;
  private static final double SOUNDS_FOR_BREAK = 60;

  private final ScoreFollower follower;
  private final PairingWalk walk;
  private final PairingLessons lessons;
  private final int sounds;
  private final int sollus;
  private final boolean[] soft;

  PairingTraining(
      ScoreFollower follower,
      PairingWalk walk,
      PairingLessons lessons,
      int sounds,
      boolean[] soft) {
    this.follower = follower;
    this.walk = walk;
    this.lessons = lessons;
    this.sounds = sounds;
    this.soft = soft;
    this.sollus = soft.length;
  }

  /**
   * A pairing and what was learnt from it.
   *
   * @param said which sollu is which onset
   * @param model how the performer speaks if that is right
   */
  record Trained(List<Alignment.Said> said, PairingModel model) {}

  /**
   * The likeliest of the pairings that are found one after another from a first one, that one
   * included: where each sollu has many sounds, what is learnt of them misleads.
   */
  Trained trained(List<Alignment.Said> start, PairingModel guess) {
    return trained(start, guess, true);
  }

  /** The same by a performer who begins at the beginning and never goes back. */
  Trained trainedOnce(List<Alignment.Said> start, PairingModel guess) {
    return trained(start, guess, false);
  }

  private Trained trained(List<Alignment.Said> start, PairingModel guess, boolean goesBack) {
    List<Trained> rounds = new ArrayList<>();
    Trained latest = asItIs(start, guess);
    if (start.size() > 1) {
      rounds.add(latest);
    }
    for (int round = 0; round < ROUNDS; round++) {
      List<Alignment.Said> said = latest.said;
      latest =
          asItIs(
              goesBack
                  ? follower.follow(latest.model, sounds, PLACES).said()
                  : follower.followOnce(latest.model, sounds, PLACES).said(),
              guess);
      rounds.add(latest);
      if (latest.said.equals(said)) {
        break;
      }
    }
    return likeliest(rounds);
  }

  /** A pairing and what is learnt from it; none after it is looked for. */
  Trained asItIs(List<Alignment.Said> said, PairingModel guess) {
    return new Trained(said, lessons.learn(said, guess));
  }

  /** Of several pairings the likeliest, all judged by the evenness of the most even one. */
  Trained likeliest(List<Trained> all) {
    double spread =
        all.stream().mapToDouble(each -> each.model.spreadSeconds()).min().orElseThrow();
    return all.stream()
        .max(Comparator.comparingDouble(each -> worth(each.said, each.model.with(spread))))
        .orElseThrow();
  }

  /** How likely a pairing is with what is learnt from it. */
  double learntWorth(List<Alignment.Said> said, PairingModel guess) {
    return worth(said, lessons.learn(said, guess));
  }

  /** The same without a thought of where it breaks; a likelihood, its logarithm. */
  double evidence(List<Alignment.Said> said, PairingModel guess) {
    return explained(said, lessons.learn(said, guess));
  }

  /** How much the sounds of a pairing speak for it. */
  double alike(List<Alignment.Said> said) {
    return lessons.evidence(said);
  }

  /** How much the letters of the score speak for a pairing; a logarithm, at least 0. */
  double asLettersSay(List<Alignment.Said> said) {
    return lessons.asLettersSay(said);
  }

  /** Whether the sounds of a pairing are more alike, sollu by sollu, than by chance. */
  boolean isToldBySound(List<Alignment.Said> said) {
    return lessons.areAlike(said);
  }

  /** How well a pairing explains the take by a performer who is known. */
  double explained(List<Alignment.Said> said, PairingModel model) {
    return walk.worthOfTime(said, model) + lessons.evidence(said) - STOP_MISSED * stopsMissed(said);
  }

  /** Whether a pairing goes on without a break from its first sollu to its last. */
  boolean isStraight(Trained trained) {
    List<Alignment.Said> said = trained.said;
    return walk.jumps(said, trained.model).isEmpty()
        && IntStream.range(1, said.size())
            .allMatch(i -> said.get(i).sollu() > said.get(i - 1).sollu());
  }

  /** Whether nothing is amiss on the way or at the ends: then no other pairing can be right. */
  boolean isWhole(Trained trained) {
    return isUnbroken(trained) && walk.breaks(trained.said, trained.model) == 0;
  }

  /**
   * Whether every sollu has its sound and every sure sound between them its sollu, in time; there
   * may be others before and after them.
   */
  boolean isUnbroken(Trained trained) {
    List<Alignment.Said> said = trained.said;
    return said.size() == sollus
        && IntStream.range(0, said.size()).allMatch(i -> said.get(i).sollu() == i)
        && walk.jumps(said, trained.model).isEmpty()
        && !walk.leavesSureSounds(said);
  }

  /**
   * How likely a pairing is, with less trust in the sum over many sounds than it claims: where two
   * pairings make sollus that are each of one sound, it is chance which of them sounds better, and
   * that grows with the take. So breaks count the more, the more sounds there are.
   */
  private double worth(List<Alignment.Said> said, PairingModel model) {
    return explained(said, model)
        - OTHER_TEMPO * Math.abs(StrictMath.log(model.stretch()))
        - BREAK * walk.breaks(said, model) * said.size() / SOUNDS_FOR_BREAK
        - AGAIN * Math.max(0, saidAgain(said) - SAID_AGAIN);
  }

  private static long saidAgain(List<Alignment.Said> said) {
    return said.size() - said.stream().mapToInt(Alignment.Said::sollu).distinct().count();
  }

  /** How many stops are not heard where the rest of a pairing is, or right beside it. */
  private long stopsMissed(List<Alignment.Said> said) {
    BitSet heard = new BitSet(sollus);
    said.forEach(each -> heard.set(each.sollu()));
    int from = Math.max(0, heard.nextSetBit(0) - PairingPrices.MOST_MISSED_AT_END);
    int to = Math.min(sollus, heard.length() + PairingPrices.MOST_MISSED_AT_END);
    return IntStream.range(from, to).filter(k -> !heard.get(k) && !soft[k]).count();
  }
}
