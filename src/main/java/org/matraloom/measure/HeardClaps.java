package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.clap.HeardBeat;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.pulse.PulseLine;

/**
 * The claps of a recording, counted in beats of the performance.
 *
 * @param beat the claps
 * @param firstBeat the beat of the performance that is their beat 0
 */
record HeardClaps(HeardBeat beat, double firstBeat) {

  /** What is heard so near to a clap may be one: people and rooms spread it. */
  private static final double CLAPPED_SECONDS = 0.03;

  /** What is not paired to this degree does not tell where the voice is. */
  private static final double LEAST_PAIRED = 0.7;

  /**
   * Looks for them.
   *
   * @param alignment which sounds are sollus
   * @param sollus what was said, in order of time; at least one
   * @param line the pulse of the voice
   * @param curve the recording
   */
  static Optional<HeardClaps> of(
      Alignment alignment, List<SaidSollu> sollus, PulseLine line, OnsetCurve curve) {
    if (alignment.missed().size() > (1 - LEAST_PAIRED) * alignment.recorded().size()) {
      return Optional.empty();
    }
    List<ExpectedSollu> expected = alignment.expected();
    Optional<PulseBefore> before = PulseBefore.of(expected, sollus);
    double first = Math.ceil(expected.get(sollus.get(0).place()).beat().toDouble());
    double beatSeconds = before.map(p -> p.beatSeconds(expected)).orElse(line.beatSeconds(first));
    double at =
        before.map(p -> p.secondsAt(first)).orElse(line.secondsAt(first, sollus.get(0).run()));
    return HeardBeat.of(
            curve,
            alignment.onsets(),
            alignment.said().stream().map(Alignment.Said::onset).collect(Collectors.toSet()),
            beatSeconds,
            at)
        .map(beat -> new HeardClaps(beat, first));
  }

  /** When a beat of the performance was clapped, or would have been. */
  double secondsAt(double performanceBeat) {
    return beat.secondsAt(performanceBeat - firstBeat);
  }

  /** Whether a clap fell at a moment, or would have. */
  boolean isClapped(double seconds) {
    return beat.isKnownAt(seconds) && Math.abs(beat.offSeconds(seconds)) <= CLAPPED_SECONDS;
  }

  /** Whether claps say where the beat is at a moment. */
  boolean isKnownAt(double seconds) {
    return beat.isKnownAt(seconds);
  }
}
