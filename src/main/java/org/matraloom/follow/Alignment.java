package org.matraloom.follow;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;

/**
 * A take held against its score: which sollu was said when, which were missed, what was added.
 *
 * @param expected the sollus of the score, in order
 * @param onsets what was heard in the take, in order of time, unsure onsets too
 * @param said the sollus that were heard, in order of time; one said again after a restart is there
 *     twice
 * @param afterPauses the onsets, in seconds, before which the performer paused and went back
 * @param recorded how much of the score could have been recorded
 * @param unsure what cannot be told, where another alignment explains the take nearly as well
 * @param unsaid of the sollus that were not heard, those in whose place nothing sounds
 * @param lagSeconds for each sollu of the score, how long before its beat it is heard in this take,
 *     about the mean of all; empty if that was not learnt
 */
public record Alignment(
    List<ExpectedSollu> expected,
    List<Onset> onsets,
    List<Said> said,
    Set<Double> afterPauses,
    RecordedRange recorded,
    Optional<EndAmbiguity> unsure,
    Set<Integer> unsaid,
    List<Double> lagSeconds) {

  /** With a score to go by, onsets are worth a look from this confidence. */
  public static final double LEAST_CONFIDENCE = 0.10;

  /** The voice is silent for so long before one begins again. */
  private static final double PAUSE_SECONDS = 0.4;

  private static final double LONGEST_PAUSE_SECONDS = 5;

  /** What is less sure than this is not called an added sollu. */
  private static final double ADDED_CONFIDENCE = 0.6;

  /**
   * A sollu that was heard.
   *
   * @param sollu its place among the expected sollus, from 0
   * @param onset its place among the onsets, from 0
   */
  public record Said(int sollu, int onset) {}

  /** Copies the lists. */
  public Alignment {
    expected = List.copyOf(expected);
    onsets = List.copyOf(onsets);
    said = List.copyOf(said);
    afterPauses = Set.copyOf(afterPauses);
    unsaid = Set.copyOf(unsaid);
    lagSeconds = List.copyOf(lagSeconds);
  }

  /**
   * An alignment of which no pauses are known, in a recording that holds the whole score.
   *
   * @param expected the sollus of the score, in order
   * @param onsets what was heard
   * @param said the sollus that were heard
   */
  public Alignment(List<ExpectedSollu> expected, List<Onset> onsets, List<Said> said) {
    this(
        expected,
        onsets,
        said,
        Set.of(),
        RecordedRange.whole(expected.size()),
        Optional.empty(),
        Set.of(),
        List.of());
  }

  /**
   * The same in a recording that may hold a part of the score only.
   *
   * @param stretch how much of the score could have been recorded
   * @return the same pairs
   */
  public Alignment recorded(RecordedRange stretch) {
    return new Alignment(expected, onsets, said, afterPauses, stretch, unsure, unsaid, lagSeconds);
  }

  /**
   * The same with the sollus in whose place nothing sounds.
   *
   * @param places places among {@link #expected()}
   * @return the same pairs
   */
  public Alignment unsaid(Set<Integer> places) {
    return new Alignment(expected, onsets, said, afterPauses, recorded, unsure, places, lagSeconds);
  }

  /**
   * The same with nothing in doubt at its ends.
   *
   * @return the same pairs
   */
  public Alignment decided() {
    return new Alignment(
        expected, onsets, said, afterPauses, recorded, Optional.empty(), unsaid, lagSeconds);
  }

  /**
   * The same with fewer pairs.
   *
   * @param fewer some of {@link #said()}, in order of time
   * @return the sounds of the others are no sollus
   */
  Alignment only(List<Said> fewer) {
    return new Alignment(
        expected, onsets, fewer, afterPauses, recorded, unsure, unsaid, lagSeconds);
  }

  /**
   * When each sollu that was heard began, in seconds from the beginning of the recording.
   *
   * @return seconds, one for each pair, in order of time
   */
  public double[] saidSeconds() {
    return said.stream().mapToDouble(this::secondsOf).toArray();
  }

  /**
   * The same with the pauses before which the take goes back in the score.
   *
   * @param levels how loud the recording is
   * @return the same pairs
   */
  public Alignment withPauses(SoundLevels levels) {
    double quiet = levels.quietDb(saidSeconds());
    Set<Double> pauses = new HashSet<>();
    for (int i = 1; i < said.size(); i++) {
      if (said.get(i).sollu() <= said.get(i - 1).sollu()) {
        double at = secondsOf(said.get(i));
        double from = Math.max(secondsOf(said.get(i - 1)), at - LONGEST_PAUSE_SECONDS);
        boolean paused =
            levels
                .longestQuiet(from, at, quiet)
                .filter(found -> found.seconds() >= PAUSE_SECONDS)
                .isPresent();
        if (paused) {
          pauses.add(at);
        }
      }
    }
    return new Alignment(expected, onsets, said, pauses, recorded, unsure, unsaid, lagSeconds);
  }

  /**
   * When a sollu was said.
   *
   * @param heard one of {@link #said()}
   * @return seconds from the beginning of the recording, of its onset, not of its felt beat
   */
  public double secondsOf(Said heard) {
    return onsets.get(heard.onset()).seconds();
  }

  /**
   * The sollus that were not heard, of those that could have been recorded.
   *
   * @return places among the expected sollus, ascending
   */
  public List<Integer> missed() {
    Set<Integer> heard = new HashSet<>();
    said.forEach(each -> heard.add(each.sollu()));
    return IntStream.range(recorded.from(), recorded.to())
        .filter(k -> !heard.contains(k))
        .boxed()
        .toList();
  }

  /**
   * Sure onsets that are no sollu of the score: added or doubled sollus, claps, other sounds.
   *
   * @return places among the onsets, ascending
   */
  public List<Integer> added() {
    Set<Integer> paired = new HashSet<>();
    said.forEach(each -> paired.add(each.onset()));
    return IntStream.range(0, onsets.size())
        .filter(j -> !paired.contains(j))
        .filter(j -> onsets.get(j).confidence() >= ADDED_CONFIDENCE)
        .boxed()
        .toList();
  }

  /**
   * How many sure sounds that are no sollus of the score lie between two moments.
   *
   * @param fromSeconds the first moment, in seconds from the beginning of the recording
   * @param toSeconds the last moment, in the same
   * @return how many
   */
  public int addedBetween(double fromSeconds, double toSeconds) {
    return (int)
        added().stream()
            .mapToDouble(j -> onsets.get(j).seconds())
            .filter(at -> at > fromSeconds && at < toSeconds)
            .count();
  }

  /**
   * Whether the performer paused and began again between two sollus.
   *
   * @param before one sollu that was said
   * @param after the next one
   * @return true if the second is not later in the score, and if the voice was silent before it;
   *     without silence a passage is said twice
   */
  public boolean isRestart(SaidSollu before, SaidSollu after) {
    return after.place() <= before.place() && afterPauses.contains(after.onsetSeconds());
  }
}
