package org.matraloom.clap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Tries many beats near the one the voice suggests, and ticks at fractions of it, and keeps the one
 * that claps speak for most.
 */
final class ClapSearch {

  /** A beat is believed that is so much likelier than none, as a logarithm. */
  static final double LEAST_EVIDENCE = 7;

  /** With fewer claps than these nothing is believed. */
  static final int LEAST_CLAPS = 4;

  private static final double PHASE_STEP_SECONDS = 0.012;
  private static final int PHASE_STEPS = 4;
  private static final double PERIOD_STEP = 0.0015;
  private static final int PERIOD_STEPS = 33;

  /** How far off the beat and the tempo of the voice are, as spreads. */
  private static final double PHASE_SPREAD_SECONDS = 0.025;

  private static final double PERIOD_SPREAD = 0.02;

  /** Ticks are looked for so many in a beat. */
  private static final int[] TICKS = {1, 2, 3, 4, 5, 6, 8};

  /** Ticks come at each of their places. */
  private static final double LEAST_TICK_SHARE = 0.5;

  /** Ticks are looked for with so many of the best guesses for the beat. */
  private static final int BEST_GUESSES = 40;

  /** A clap is in doubt if a beat that speaks for so little less counts so many beats otherwise. */
  private static final double RIVAL_EVIDENCE = 3;

  private static final double RIVAL_BEATS = 0.15;

  private final ClapEvidence evidence;
  private final double beatSeconds;
  private final double beatAtSeconds;

  /**
   * A beat that was found.
   *
   * @param track its claps
   * @param ticks places of the grid in a beat
   * @param evidence how much speaks for it, as a logarithm
   */
  record Found(ClapTrack track, int ticks, double evidence) {

    /** How many beats after the guess a moment is, by the clap next to it. */
    private double beatsAt(double seconds) {
      List<ClapTrack.Clap> claps = track.claps();
      ClapTrack.Clap first = claps.get(0);
      ClapTrack.Clap last = claps.get(claps.size() - 1);
      double period = (last.seconds() - first.seconds()) / (last.place() - first.place());
      ClapTrack.Clap near =
          claps.stream()
              .min(Comparator.comparingDouble(clap -> Math.abs(clap.seconds() - seconds)))
              .orElseThrow();
      return (near.place() + (seconds - near.seconds()) / period) / ticks;
    }
  }

  private record Guess(double late, double factor, double evidence) {}

  ClapSearch(ClapEvidence evidence, double beatSeconds, double beatAtSeconds) {
    this.evidence = evidence;
    this.beatSeconds = beatSeconds;
    this.beatAtSeconds = beatAtSeconds;
  }

  /** The beat that most speaks for, if that is enough; without claps that are in doubt. */
  Optional<Found> best() {
    List<Guess> guesses = new ArrayList<>();
    for (int phase = -PHASE_STEPS; phase <= PHASE_STEPS; phase++) {
      for (int step = -PERIOD_STEPS; step <= PERIOD_STEPS; step++) {
        double late = phase * PHASE_STEP_SECONDS;
        double factor = 1 + step * PERIOD_STEP;
        guesses.add(new Guess(late, factor, judged(track(late, factor, 1), late, factor)));
      }
    }
    guesses.sort(Comparator.comparingDouble(Guess::evidence).reversed());
    List<Found> found = new ArrayList<>();
    for (Guess guess : guesses.subList(0, BEST_GUESSES)) {
      for (int ticks : TICKS) {
        ClapTrack track = track(guess.late, guess.factor, ticks);
        if (track.claps().size() >= LEAST_CLAPS) {
          double judged = judged(track, guess.late, guess.factor);
          found.add(new Found(track, ticks, judged + (ticks == 1 ? track.talaEvidence() : 0)));
        }
      }
    }
    return found.stream()
        .max(Comparator.comparingDouble(Found::evidence))
        .filter(ClapSearch::isEnough)
        .map(best -> undisputed(best, found))
        .filter(best -> best.track().claps().size() >= LEAST_CLAPS);
  }

  /** The same without the claps that another beat, nearly as good, counts otherwise. */
  private static Found undisputed(Found best, List<Found> found) {
    List<Found> rivals =
        found.stream().filter(each -> each.evidence() > best.evidence() - RIVAL_EVIDENCE).toList();
    List<ClapTrack.Clap> claps =
        best.track().claps().stream()
            .filter(
                clap -> {
                  double beats = (double) clap.place() / best.ticks();
                  return rivals.stream()
                      .allMatch(o -> Math.abs(o.beatsAt(clap.seconds()) - beats) <= RIVAL_BEATS);
                })
            .toList();
    ClapTrack track = new ClapTrack(claps, best.track().missed(), best.track().fit());
    return new Found(track, best.ticks(), best.evidence());
  }

  private static boolean isEnough(Found found) {
    return found.evidence() >= LEAST_EVIDENCE
        && (found.ticks() == 1 || found.track().share() >= LEAST_TICK_SHARE);
  }

  private ClapTrack track(double late, double factor, int ticks) {
    return ClapTrack.of(evidence, beatAtSeconds + late, beatSeconds * factor / ticks, 0);
  }

  private static double judged(ClapTrack track, double late, double factor) {
    double phase = late / PHASE_SPREAD_SECONDS;
    double period = (factor - 1) / PERIOD_SPREAD;
    return track.evidence() - (phase * phase + period * period) / 2;
  }
}
