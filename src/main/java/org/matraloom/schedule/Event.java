package org.matraloom.schedule;

import org.matraloom.score.Kriya;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/** Something that happens at an exact position of a performance. */
public sealed interface Event {

  /**
   * Where it happens.
   *
   * @return beats; 0 is the samam of the avartana in which the performance starts
   */
  Ratio beat();

  /**
   * The count-in begins.
   *
   * @param beat where
   * @param avartanas how many whole avartanas are counted, at least 1
   */
  record CountIn(Ratio beat, int avartanas) implements Event {}

  /**
   * A round begins.
   *
   * @param beat where
   * @param number which round, from 1
   * @param phrase the phrase that is said
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   */
  record RoundStart(Ratio beat, int number, String phrase, int nadai, int kalam) implements Event {}

  /**
   * A named phrase begins inside a round.
   *
   * @param beat where
   * @param phrase its name
   * @param round the round it belongs to, from 1
   */
  record SectionStart(Ratio beat, String phrase, int round) implements Event {}

  /**
   * The number of matras a beat changes.
   *
   * @param beat where
   * @param from matras a beat before, kalam included
   * @param to matras a beat from here on, kalam included
   */
  record NadaiChange(Ratio beat, int from, int to) implements Event {}

  /**
   * The hand gives a kriya.
   *
   * @param beat where, a whole beat
   * @param kriya what it gives
   * @param samam whether this is the first beat of an avartana
   * @param again whether the kriya is given a second time, in two kalai
   * @param round the round that is going on, from 1; 0 before the first
   */
  record HandBeat(Ratio beat, Kriya kriya, boolean samam, boolean again, int round)
      implements Event {}

  /**
   * A subdivision tick: a matra of the round begins.
   *
   * @param beat where
   * @param matra which matra of the round or the silence, from 0; counted back from it, and so
   *     negative, in the count-in
   * @param matrasPerBeat matras a beat, kalam included
   * @param round the round that is going on, from 1; 0 before the first
   */
  record Tick(Ratio beat, long matra, int matrasPerBeat, int round) implements Event {}

  /**
   * A sollu is said.
   *
   * @param beat where its felt beat falls
   * @param beats how long it lasts, karvai included
   * @param articulatedBeats how long it lasts without the karvai
   * @param sollu what is said
   * @param stress how prominent its place is
   * @param round the round it belongs to, from 1
   */
  record SolluSaid(
      Ratio beat, Ratio beats, Ratio articulatedBeats, Sollu sollu, Stress stress, int round)
      implements Event {
    /**
     * Whether the sound rings on after its own matra.
     *
     * @return true if a karvai follows
     */
    public boolean rings() {
      return beats.compareTo(articulatedBeats) > 0;
    }
  }

  /**
   * Silence inside or between rounds.
   *
   * @param beat where it begins
   * @param beats how long it is
   * @param round the round that is going on, from 1; 0 before the first
   */
  record Silence(Ratio beat, Ratio beats, int round) implements Event {}

  /**
   * There is time to inhale.
   *
   * @param beat where it begins
   * @param beats how long it may take, up to the next sollu
   * @param full whether there is time for a full breath, and not for a catch breath only
   * @param round the round that is going on, from 1
   */
  record Inhale(Ratio beat, Ratio beats, boolean full, int round) implements Event {}

  /**
   * The last matra has ended.
   *
   * @param beat where
   */
  record Landing(Ratio beat) implements Event {}

  /** How prominent the place of a sollu is; never a matter of its time. */
  enum Stress {
    /** The first sollu of a round. */
    ROUND,
    /** On samam. */
    SAMAM,
    /** The first sollu of a named phrase or of a kanakku group. */
    PHRASE,
    /** Anywhere else. */
    NONE
  }
}
