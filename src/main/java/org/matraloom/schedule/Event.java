package org.matraloom.schedule;

import org.matraloom.score.Kriya;
import org.matraloom.score.Matras;
import org.matraloom.score.Notice;
import org.matraloom.score.Sollu;
import org.matraloom.score.Spoken;
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
   * Asks a visitor about this event by its kind.
   *
   * @param visitor who is asked
   * @param <R> what it says
   * @return what it says
   */
  <R> R told(EventVisitor<R> visitor);

  /**
   * The count-in begins.
   *
   * @param beat where
   * @param avartanas how many whole avartanas are counted, at least 1
   */
  record CountIn(Ratio beat, int avartanas) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.countIn(this);
    }
  }

  /**
   * A round begins.
   *
   * @param beat where
   * @param number which round, from 1
   * @param phrase the phrase that is said
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   */
  record RoundStart(Ratio beat, int number, String phrase, int nadai, int kalam) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.roundStart(this);
    }
  }

  /**
   * A named phrase begins inside a round.
   *
   * @param beat where
   * @param phrase its name
   * @param round the round it belongs to, from 1
   */
  record SectionStart(Ratio beat, String phrase, int round) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.sectionStart(this);
    }
  }

  /**
   * The number of matras a beat changes.
   *
   * @param beat where
   * @param from matras a beat before, kalam included
   * @param to matras a beat from here on, kalam included
   */
  record NadaiChange(Ratio beat, int from, int to) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.nadaiChange(this);
    }
  }

  /** What the hand does, the ticks under it included. */
  sealed interface OfTheHand extends Event {
    /**
     * Whether it is the clap on samam.
     *
     * @return true for the kriya on the first beat of an avartana
     */
    default boolean samam() {
      return false;
    }

    /**
     * The same where no round goes on.
     *
     * @return a copy
     */
    OfTheHand beforeTheRounds();
  }

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
      implements OfTheHand {
    @Override
    public HandBeat beforeTheRounds() {
      return new HandBeat(beat, kriya, samam, again, 0);
    }

    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.handBeat(this);
    }
  }

  /**
   * A subdivision tick: a matra of the round begins.
   *
   * @param beat where
   * @param matra which matra of the round or the silence, from 0; negative in the count-in
   * @param matrasPerBeat matras a beat, kalam included
   * @param round the round that is going on, from 1; 0 before the first
   */
  record Tick(Ratio beat, long matra, int matrasPerBeat, int round) implements OfTheHand {
    @Override
    public Tick beforeTheRounds() {
      return new Tick(beat, matra, matrasPerBeat, 0);
    }

    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.tick(this);
    }
  }

  /**
   * A sollu is said.
   *
   * @param spoken the sollu with its own part and its karvai
   * @param stress how prominent its place is
   */
  record SolluSaid(Spoken spoken, Stress stress) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.solluSaid(this);
    }

    @Override
    public Ratio beat() {
      return spoken.beat();
    }

    /**
     * How long it lasts.
     *
     * @return beats, karvai included
     */
    public Ratio beats() {
      return spoken.beats();
    }

    /**
     * What is said.
     *
     * @return the sollu
     */
    public Sollu sollu() {
      return spoken.sollu();
    }

    /**
     * The round it belongs to.
     *
     * @return from 1; 0 for words before the first
     */
    public int round() {
      return spoken.round();
    }
  }

  /**
   * Silence inside or between rounds.
   *
   * @param matras where, and how long it is
   * @param round the round that is going on, from 1; 0 before the first
   */
  record Silence(Matras matras, int round) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.silence(this);
    }

    @Override
    public Ratio beat() {
      return matras.beat();
    }
  }

  /**
   * There is time to inhale.
   *
   * @param beat where it begins
   * @param beats how long it may take, up to the next sollu
   * @param full whether there is time for a full breath, and not for a catch breath only
   * @param round the round that is going on, from 1
   */
  record Inhale(Ratio beat, Ratio beats, boolean full, int round) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.inhale(this);
    }
  }

  /**
   * The last matra has ended.
   *
   * @param beat where
   */
  record LandingPoint(Ratio beat) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.landing(this);
    }
  }

  /**
   * A line of the plan that takes no time is passed: a part begins, students are told something.
   *
   * @param beat where
   * @param notice the line
   */
  record NoticePut(Ratio beat, Notice notice) implements Event {
    @Override
    public <R> R told(EventVisitor<R> visitor) {
      return visitor.noticePut(this);
    }
  }
}
