package org.matraloom.follow;

import java.util.List;
import java.util.Optional;

/**
 * Where a sollu is missing at one end of a take, looks at the same at the other end: every sound is
 * another sollu then. In words that repeat, that may explain the take nearly as well.
 */
final class ShiftedRival {

  /** So much likelier for each sound, the one is told beyond doubt. */
  private static final double SURE_OF_EACH = 0.25;

  /** If the letters of the score speak so much more for the one, that is beyond doubt too. */
  private static final double SURE_BY_LETTERS = 2.5;

  /** More than so many are no matter of an end. */
  private static final int MOST_AT_END = 5;

  private ShiftedRival() {}

  /**
   * What cannot be told.
   *
   * @param training tells how likely a pairing is
   * @param sollus how many the score asks for
   * @param best the likeliest pairing
   * @param guess what is known before anything is learnt
   * @return empty if nothing is missing at the ends, or the other end explains the take far worse
   */
  static Optional<EndAmbiguity> of(
      PairingTraining training, int sollus, PairingTraining.Trained best, PairingModel guess) {
    return other(training, sollus, best, guess)
        .map(
            other ->
                new EndAmbiguity(
                    true,
                    Math.abs(atEnds(best.said(), sollus)) == 1
                        ? EndAmbiguity.End.EITHER
                        : EndAmbiguity.End.EITHER_SOME));
  }

  /**
   * A pairing, or where several sollus are missing at its beginning and the words are as likely to
   * break off before the end, that: people seldom come in at the third sollu. Or the other one if
   * it is that of which the letters speak.
   *
   * @param training tells how likely a pairing is
   * @param sollus how many the score asks for
   * @param best the likeliest pairing
   * @param guess what is known before anything is learnt
   */
  static PairingTraining.Trained begun(
      PairingTraining training, int sollus, PairingTraining.Trained best, PairingModel guess) {
    boolean beginsLate = atEnds(best.said(), sollus) > 1;
    return other(training, sollus, best, guess)
        .filter(said -> beginsLate || isSurelyLikelier(training, said, best.said(), guess))
        .map(said -> training.asItIs(said, guess))
        .orElse(best);
  }

  /** How many sollus are missing at the beginning, or, as a negative number, at the end. */
  private static int atEnds(List<Alignment.Said> said, int sollus) {
    int first = said.isEmpty() ? 0 : said.get(0).sollu();
    return first > 0 ? first : said.isEmpty() ? 0 : said.get(said.size() - 1).sollu() + 1 - sollus;
  }

  /** The pairing with as many missing at the other end, if that is hardly less likely. */
  private static Optional<List<Alignment.Said>> other(
      PairingTraining training, int sollus, PairingTraining.Trained best, PairingModel guess) {
    List<Alignment.Said> said = best.said();
    if (said.size() < 2 || !training.isStraight(best)) {
      return Optional.empty();
    }
    int atEnds = atEnds(said, sollus);
    int unsaid = sollus - 1 - said.get(said.size() - 1).sollu();
    if (atEnds == 0 || Math.abs(atEnds) > MOST_AT_END || atEnds > 0 && unsaid > 0) {
      return Optional.empty();
    }
    List<Alignment.Said> other =
        said.stream().map(s -> new Alignment.Said(s.sollu() - atEnds, s.onset())).toList();
    double likelier = training.evidence(said, guess) - training.evidence(other, guess);
    boolean isTold =
        likelier > SURE_OF_EACH * said.size() || isSurelyLikelier(training, said, other, guess);
    return isTold ? Optional.empty() : Optional.of(other);
  }

  /** Whether letters, and all together, speak for one pairing in place of another. */
  private static boolean isSurelyLikelier(
      PairingTraining training,
      List<Alignment.Said> one,
      List<Alignment.Said> other,
      PairingModel guess) {
    return training.asLettersSay(one) - training.asLettersSay(other) > SURE_BY_LETTERS
        && training.evidence(one, guess) - training.evidence(other, guess) > SURE_BY_LETTERS;
  }
}
