package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.EndAmbiguity;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;

/**
 * Takes a sound before the first sollu or after the last for no sollu too many where it is one of
 * the claps that were found: a hand goes on, and the next clap often falls a matra after the end.
 */
final class ClapsAtEnds {

  /** What is farther before the first sollu is no matter of it. */
  private static final double BEFORE_MATRAS = 1.6;

  /** What is farther after the last sollu is no matter of it: one may come late. */
  private static final double AFTER_MATRAS = 2.5;

  private ClapsAtEnds() {}

  /**
   * The same alignment, decided if claps are all that was in doubt.
   *
   * @param alignment which sounds are sollus
   * @param sollus what was said, in order of time; at least one
   * @param line the pulse
   * @param claps the claps in the recording, if there are any
   * @param isOther whether the sound of the last sollu is that of another
   */
  static Alignment decided(
      Alignment alignment,
      List<SaidSollu> sollus,
      PulseLine line,
      Optional<HeardClaps> claps,
      Predicate<Alignment> isOther) {
    Optional<EndAmbiguity.End> leftOver =
        alignment.unsure().filter(unsure -> !unsure.missing()).map(EndAmbiguity::at);
    if (leftOver.isEmpty() || claps.isEmpty()) {
      return alignment;
    }
    Set<Integer> heard = claps.get().beat().claps();
    SaidSollu first = sollus.get(0);
    SaidSollu last = sollus.get(sollus.size() - 1);
    double before = first.onsetSeconds() - BEFORE_MATRAS * matraSeconds(alignment, first, line);
    double after = last.onsetSeconds() + AFTER_MATRAS * matraSeconds(alignment, last, line);
    boolean areClaps =
        switch (leftOver.get()) {
          case FIRST -> areClaps(alignment, before, first.onsetSeconds(), heard);
          case LAST ->
              !isOther.test(alignment) && areClaps(alignment, last.onsetSeconds(), after, heard);
          case EITHER, EITHER_SOME, UNLIKE ->
              areClaps(alignment, before, first.onsetSeconds(), heard)
                  && areClaps(alignment, last.onsetSeconds(), after, heard);
        };
    return areClaps ? alignment.decided() : alignment;
  }

  /** Whether there are claps between two moments, and no other sure sounds. */
  private static boolean areClaps(
      Alignment alignment, double fromSeconds, double toSeconds, Set<Integer> claps) {
    List<Integer> between =
        alignment.added().stream()
            .filter(j -> alignment.onsets().get(j).seconds() > fromSeconds)
            .filter(j -> alignment.onsets().get(j).seconds() < toSeconds)
            .toList();
    return IntStream.range(0, alignment.onsets().size())
            .filter(claps::contains)
            .mapToDouble(j -> alignment.onsets().get(j).seconds())
            .anyMatch(at -> at > fromSeconds && at < toSeconds)
        && claps.containsAll(between);
  }

  private static double matraSeconds(Alignment alignment, SaidSollu said, PulseLine line) {
    double beat = alignment.expected().get(said.place()).beat().toDouble();
    return line.beatSeconds(beat) / alignment.expected().get(said.place()).matrasPerBeat();
  }
}
