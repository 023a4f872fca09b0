package org.matraloom.breath;

import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;

/**
 * One inhalation.
 *
 * @param air its time
 * @param after the sollu before it
 * @param joint what ends before it
 * @param beforeChange whether it falls into the beat before a nadai change
 * @param why why it is taken, in one clause
 */
public record Breath(Air air, After after, Joint joint, boolean beforeChange, String why) {

  /**
   * The time of a breath.
   *
   * @param startBeat where it begins, in beats of the performance
   * @param beats how long it may take, up to the next sollu
   * @param seconds the same in seconds, exact
   * @param kind how deep it can be
   * @param source where its time comes from
   * @param cutBeats how much of the sound before it is cut, in beats; 0 where nothing is
   */
  public record Air(
      Ratio startBeat, Ratio beats, Ratio seconds, Kind kind, Source source, Ratio cutBeats) {}

  /**
   * The sollu before a breath.
   *
   * @param sollu the sollu, as spelled
   * @param beat where it begins, in beats of the performance
   * @param round the round it belongs to, from 1
   */
  public record After(String sollu, Ratio beat, int round) {}

  /** How deep a breath can be. */
  public enum Kind {
    /** Quick, short, unobtrusive; planned ahead. */
    CATCH,
    /** There is time to fill up. */
    FULL
  }

  /** Where the time for a breath comes from. */
  public enum Source {
    /** Written silence. */
    SILENCE,
    /** A ringing sound, cut after its attack. */
    KARVAI,
    /** A sollu that does not ring, cut short: the last one of a round, or one that is asked for. */
    SOLLU
  }

  /**
   * Where it begins.
   *
   * @return beats of the performance
   */
  public Ratio startBeat() {
    return air.startBeat;
  }

  /**
   * How long it may take.
   *
   * @return beats, up to the next sollu
   */
  public Ratio beats() {
    return air.beats;
  }

  /**
   * How long it may take.
   *
   * @return seconds, exact
   */
  public Ratio seconds() {
    return air.seconds;
  }

  /**
   * Where the next sollu begins.
   *
   * @return beats of the performance
   */
  public Ratio endBeat() {
    return air.startBeat.plus(air.beats);
  }

  /**
   * How deep it can be.
   *
   * @return its kind
   */
  public Kind kind() {
    return air.kind;
  }

  /**
   * Where the sollu before it begins.
   *
   * @return beats of the performance
   */
  public Ratio afterBeat() {
    return after.beat;
  }

  /**
   * The round of the sollu before it.
   *
   * @return its number, from 1
   */
  public int round() {
    return after.round;
  }

  /** The same for another reason. */
  Breath because(String reason) {
    return new Breath(air, after, joint, beforeChange, reason);
  }
}
