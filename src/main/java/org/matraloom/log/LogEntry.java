package org.matraloom.log;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One record of the log: a take that was measured, a drill that was played, or a note by hand.
 *
 * @param when when it ended
 * @param kind what it was
 * @param piece the title of the composition or the name of the drill, not blank
 * @param tempo beats a minute as they were said, 1 to 1000; empty if nobody knows
 * @param outcome how it went
 * @param voicedSeconds how long the voice was in use, in seconds, 0 to a day
 * @param recording what the sound of the take is known by; empty if there is none
 * @param remark a few words of the user's own, empty if there are none
 */
public record LogEntry(
    OffsetDateTime when,
    Kind kind,
    String piece,
    OptionalDouble tempo,
    Outcome outcome,
    double voicedSeconds,
    Optional<String> recording,
    String remark)
    implements LogRecord {

  /** The slowest tempo kept, in beats a minute. */
  public static final double SLOWEST = 1;

  /** The fastest tempo kept, in beats a minute. */
  public static final double FASTEST = 1000;

  /** The longest use of the voice kept, in seconds: a day. */
  public static final double LONGEST_SECONDS = 86_400;

  /** The longest text kept, in letters. */
  public static final int LONGEST_TEXT = 500;

  private static final double LARGEST_ERROR_MS = 3_600_000;

  /** What a record is about. */
  public enum Kind {
    /** A recording that was measured. */
    TAKE,
    /** A drill that was played live. */
    DRILL,
    /** Something noted by hand. */
    NOTE
  }

  /**
   * How it went.
   *
   * @param clean whether it passed; empty if nobody judged
   * @param landingErrorMs how late the last matra ended, in ms, negative if early, at most an hour;
   *     empty if unknown
   * @param rounds how each round went, in the order in which they were said; empty if nobody knows
   * @param places how far off it was at places of the score, at most {@link PlaceNote#MOST}; empty
   *     if nobody knows
   */
  public record Outcome(
      Optional<Boolean> clean,
      OptionalDouble landingErrorMs,
      List<RoundEntry> rounds,
      List<PlaceNote> places) {

    /** Nobody judged. */
    public static final Outcome UNKNOWN =
        new Outcome(Optional.empty(), OptionalDouble.empty(), List.of());

    /**
     * Checks the ranges and copies the lists.
     *
     * @throws IllegalArgumentException if a value is outside its range, or there are too many
     *     places
     */
    public Outcome {
      rounds = List.copyOf(rounds);
      places = List.copyOf(places);
      require(places.size() <= PlaceNote.MOST, "the number of places", places.size());
      landingErrorMs.ifPresent(
          value -> require(Math.abs(value) <= LARGEST_ERROR_MS, "landingErrorMs", value));
    }

    /**
     * An outcome of which no places are known.
     *
     * @param clean whether it passed; empty if nobody judged
     * @param landingErrorMs how late the last matra ended, in ms; empty if unknown
     * @param rounds how each round went; empty if nobody knows
     */
    public Outcome(
        Optional<Boolean> clean, OptionalDouble landingErrorMs, List<RoundEntry> rounds) {
      this(clean, landingErrorMs, rounds, List.of());
    }
  }

  /**
   * How one round of a take went.
   *
   * @param round which round, from 1
   * @param nadai matras a beat, 1 to 99; 0 if nobody knows
   * @param tempo beats a minute as they were said, 1 to 1000
   * @param clean whether the round passed
   */
  public record RoundEntry(int round, int nadai, double tempo, boolean clean) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a value is outside its range
     */
    public RoundEntry {
      require(round >= 1 && round <= 1_000_000, "round", round);
      require(nadai >= 0 && nadai <= 99, "nadai", nadai);
      require(tempo >= SLOWEST && tempo <= FASTEST, "tempo", tempo);
    }
  }

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a value is outside its range
   */
  public LogEntry {
    require(!piece.isBlank() && piece.length() <= LONGEST_TEXT, "piece", piece);
    require(remark.length() <= LONGEST_TEXT, "remark", remark);
    require(voicedSeconds >= 0 && voicedSeconds <= LONGEST_SECONDS, "voicedSeconds", voicedSeconds);
    tempo.ifPresent(value -> require(value >= SLOWEST && value <= FASTEST, "tempo", value));
  }

  /**
   * Whether it passed.
   *
   * @return empty if nobody judged
   */
  public Optional<Boolean> clean() {
    return outcome.clean();
  }

  /**
   * How late the last matra ended.
   *
   * @return in ms, negative if early; empty if unknown
   */
  public OptionalDouble landingErrorMs() {
    return outcome.landingErrorMs();
  }

  /**
   * How each round went.
   *
   * @return in the order in which they were said; empty if nobody knows
   */
  public List<RoundEntry> rounds() {
    return outcome.rounds();
  }

  private static void require(boolean holds, String what, Object given) {
    if (!holds) {
      throw new IllegalArgumentException(what + " is out of range: " + given);
    }
  }
}
