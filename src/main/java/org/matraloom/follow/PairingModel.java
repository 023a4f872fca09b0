package org.matraloom.follow;

import java.util.List;
import org.matraloom.onset.KnownSounds;

/**
 * What is known of a performer when onsets are paired with sollus.
 *
 * @param stretch how many times as slow as the score the take is
 * @param lagSeconds for each place of the score, how long before its beat its onset is heard
 * @param slackSeconds for each place, by how much that is uncertain
 * @param lagDoubt the share of a difference of two lags that is uncertain too
 * @param spreadSeconds how far an onset usually is from where the one before puts it
 * @param tracks whether the tempo is followed as it changes
 * @param sollus how each sollu sounds
 */
record PairingModel(
    double stretch,
    double[] lagSeconds,
    double[] slackSeconds,
    double lagDoubt,
    double spreadSeconds,
    boolean tracks,
    SolluModels sollus) {

  /** Before anything is known of the performer, some put the release itself on the beat. */
  private static final double FIRST_DOUBT = 1.0;

  private static final double FIRST_SLACK_SECONDS = 0.008;
  private static final double SOFT_SLACK_SECONDS = 0.012;

  /** Before anything is known, onsets are taken to vary by so much. */
  private static final double FIRST_SPREAD_SECONDS = 0.025;

  /**
   * Nothing is known but the consonants.
   *
   * @param kinds the class of each place of the score
   */
  static PairingModel first(List<FeltBeat> kinds) {
    return new PairingModel(
        1,
        kinds.stream().mapToDouble(FeltBeat::middleLagSeconds).toArray(),
        kinds.stream()
            .mapToDouble(kind -> Math.max(FIRST_SLACK_SECONDS, kind.slackSeconds()))
            .toArray(),
        FIRST_DOUBT,
        FIRST_SPREAD_SECONDS,
        true,
        SolluModels.unknown(kinds.size()));
  }

  /** The same with the lags of a mouth that is known; what may begin unheard stays uncertain. */
  PairingModel of(List<ExpectedSollu> asked, KnownSounds mouth) {
    boolean[] soft = soft();
    double[] lags = lagSeconds.clone();
    for (int k = 0; k < lags.length; k++) {
      lags[k] = soft[k] ? lags[k] : mouth.lagSeconds(asked.get(k).sollu().sound(), lags[k]);
    }
    return new PairingModel(stretch, lags, slackSeconds, lagDoubt, spreadSeconds, tracks, sollus);
  }

  /** Of which places the sound may begin unheard: murmurs and breaths, which lag by any time. */
  boolean[] soft() {
    boolean[] soft = new boolean[slackSeconds.length];
    for (int k = 0; k < soft.length; k++) {
      soft[k] = slackSeconds[k] >= SOFT_SLACK_SECONDS;
    }
    return soft;
  }

  /** Sounds without lags; nothing is known of the sollus. */
  static PairingModel plain(int sollus) {
    return new PairingModel(
        1,
        new double[sollus],
        new double[sollus],
        FIRST_DOUBT,
        FIRST_SPREAD_SECONDS,
        true,
        SolluModels.unknown(sollus));
  }

  /** The same at another tempo. */
  PairingModel at(double otherStretch) {
    return new PairingModel(
        otherStretch, lagSeconds, slackSeconds, lagDoubt, spreadSeconds, tracks, sollus);
  }

  /** The same for a performer who is so even. */
  PairingModel with(double otherSpreadSeconds) {
    return new PairingModel(
        stretch, lagSeconds, slackSeconds, lagDoubt, otherSpreadSeconds, tracks, sollus);
  }
}
