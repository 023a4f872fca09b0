package org.matraloom.madetake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;

/**
 * When each sollu of a made take is said.
 *
 * @param pulse its beat
 * @param sollus what is said, in order of time
 * @param landingSeconds how late the last sollu is on its own pulse, all its errors added
 * @param breaths when breath is taken, each the middle of it
 */
public record TakePlan(
    TakePulse pulse, List<SolluTruth> sollus, double landingSeconds, List<Double> breaths) {

  private static final double MOST_JITTER = 2.5;

  /** Which share of the beats shows the fault. */
  private static final double FAULTY_BEATS = 0.9;

  private static final double MOST_EARLY = 0.3;
  private static final double LEAST_TO_DOUBLE = 0.17;
  private static final double LEAST_TO_ADD = 0.36;
  private static final double LEAST_TO_BREATHE = 0.45;

  /** Lays out a take of a score. */
  static TakePlan of(Timeline timeline, Flaws flaws) {
    return new Maker(timeline, flaws).plan();
  }

  /**
   * How far the drift of what was said may be from that of its pulse by mere scatter: the standard
   * error of the bend of a parabola through evenly spread points, in percent.
   */
  public double driftScatterPercent(double jitterSeconds) {
    double length = pulse.secondsAt(pulse.firstBeat() + pulse.beats()) - pulse.startSeconds();
    return 100 * 6 * Math.sqrt(5.0 / sollus.size()) * jitterSeconds / (length / 2);
  }

  /** The same by another clock, with the recording begun at another time. */
  TakePlan on(double clockFactor, double laterSeconds) {
    return new TakePlan(
        pulse.on(clockFactor, laterSeconds),
        sollus.stream().map(truth -> truth.on(clockFactor, laterSeconds)).toList(),
        landingSeconds * clockFactor,
        breaths.stream().map(breath -> breath * clockFactor + laterSeconds).toList());
  }

  private static final class Maker {
    private final Flaws flaws;
    private final Random random;
    private final List<Event.SolluSaid> asked = new ArrayList<>();
    private final Set<Integer> khandaRounds = new HashSet<>();
    private final Set<Long> soundBeats = new HashSet<>();
    private final TakePulse pulse;
    private final List<SolluTruth> sollus = new ArrayList<>();
    private final List<Double> breaths = new ArrayList<>();
    private double landingSeconds;

    Maker(Timeline timeline, Flaws flaws) {
      this.flaws = flaws;
      random = new Random(flaws.seed);
      for (Event event : timeline) {
        if (event instanceof Event.SolluSaid said) {
          asked.add(said);
        } else if (event instanceof Event.RoundStart round && round.nadai() == 5) {
          khandaRounds.add(round.number());
        }
      }
      double first = asked.get(0).beat().toDouble();
      double beats = timeline.performance().endBeat().toDouble() - first;
      double period = timeline.performance().composition().tempo().secondsOf(Ratio.ONE).toDouble();
      pulse = TakePulse.of(first, beats, period, flaws);
      for (long beat = (long) first - 1; beat <= first + 2 * beats; beat++) {
        if (random.nextDouble() >= FAULTY_BEATS) {
          soundBeats.add(beat);
        }
      }
    }

    TakePlan plan() {
      place();
      restart();
      leaveOut();
      insert(flaws.doubled, LEAST_TO_DOUBLE, false);
      insert(flaws.added, LEAST_TO_ADD, true);
      breathe();
      return new TakePlan(pulse, List.copyOf(sollus), landingSeconds, List.copyOf(breaths));
    }

    private void place() {
      for (int k = 0; k < asked.size(); k++) {
        Event.SolluSaid said = asked.get(k);
        double beat = played(said.beat().toDouble(), said.round());
        double jitter = random.nextGaussian();
        jitter = Math.max(-MOST_JITTER, Math.min(MOST_JITTER, jitter)) * flaws.jitterSeconds;
        int grown = Math.max(0, k + 1 + flaws.landingSollus - asked.size());
        double late = jitter + landingError() * grown / flaws.landingSollus;
        double felt = pulse.secondsAt(beat) - flaws.leadSeconds + late;
        double end =
            pulse.secondsAt(played(said.beat().plus(said.beats()).toDouble(), said.round()));
        sollus.add(new SolluTruth(k, said, felt, end - felt, felt));
        landingSeconds = late;
      }
      for (int k = 0; k + 1 < sollus.size(); k++) {
        Event.SolluSaid said = asked.get(k);
        if (said.beat().plus(said.beats()).equals(asked.get(k + 1).beat())) {
          double length = sollus.get(k + 1).feltSeconds() - sollus.get(k).feltSeconds();
          sollus.set(k, sollus.get(k).lasting(length));
        }
      }
    }

    /** The last sollu cannot come before the one before it has been said. */
    private double landingError() {
      double last = asked.get(asked.size() - 1).beat().toDouble();
      double before = asked.get(asked.size() - 2).beat().toDouble();
      double room = pulse.secondsAt(last) - pulse.secondsAt(before);
      return Math.max(flaws.landingSeconds, -MOST_EARLY * flaws.landingSollus * room);
    }

    /** The beat at which something is said that should be said at another. */
    private double played(double beat, int round) {
      if (flaws.khanda.isEmpty()) {
        return beat;
      }
      KhandaFault fault = flaws.khanda.get();
      if (fault == KhandaFault.OLD_SPEED_THROUGHOUT) {
        double played = beat;
        for (int khanda : khandaRounds) {
          double start = startOf(khanda);
          double end = khanda == round ? beat : startOf(khanda + 1);
          if (beat > start) {
            played += (KhandaFault.OLD_TO_NEW - 1) * (Math.min(beat, end) - start);
          }
        }
        return played;
      }
      long whole = (long) Math.floor(beat + 1e-9);
      if (!khandaRounds.contains(round) || soundBeats.contains(whole)) {
        return beat;
      }
      return whole + fault.place(beat - whole, pulse.periodSeconds());
    }

    private double startOf(int round) {
      return asked.stream()
          .filter(said -> said.round() == round)
          .mapToDouble(said -> said.beat().toDouble())
          .findFirst()
          .orElse(Double.POSITIVE_INFINITY);
    }

    private void restart() {
      int rounds = asked.get(asked.size() - 1).round();
      if (!flaws.restarts || rounds < 2) {
        return;
      }
      int again = 1 + random.nextInt(rounds);
      List<SolluTruth> round =
          sollus.stream().filter(truth -> truth.said().round() == again).toList();
      int until = (int) (round.size() * (0.3 + 0.4 * random.nextDouble()));
      SolluTruth last = round.get(until);
      double pause = 0.7 + random.nextDouble();
      double later = last.feltSeconds() + last.lengthSeconds() + pause - round.get(0).feltSeconds();
      int head = sollus.indexOf(last) + 1;
      List<SolluTruth> whole = List.copyOf(sollus);
      sollus.subList(head, sollus.size()).clear();
      whole.subList(whole.indexOf(round.get(0)), whole.size()).stream()
          .map(truth -> truth.on(1, later))
          .forEach(sollus::add);
    }

    /** Never the first and never the last. */
    private void leaveOut() {
      for (int k = sollus.size() - 2; k > 0; k--) {
        if (random.nextDouble() < flaws.missedShare) {
          sollus.remove(k);
        }
      }
    }

    private void insert(int count, double leastSeconds, boolean other) {
      for (int i = 0; i < count; i++) {
        int at = random.nextInt(sollus.size() - 1);
        SolluTruth before = sollus.get(at);
        double room = sollus.get(at + 1).feltSeconds() - before.feltSeconds();
        if (room >= leastSeconds) {
          Event.SolluSaid said = other ? asked.get(random.nextInt(asked.size())) : before.said();
          double felt = before.feltSeconds() + room / 2;
          sollus.set(at, before.lasting(Math.min(before.lengthSeconds(), room / 2)));
          sollus.add(at + 1, new SolluTruth(SolluTruth.NO_PLACE, said, felt, room / 2, felt));
        }
      }
    }

    private void breathe() {
      for (int k = 0; flaws.breathes && k + 1 < sollus.size(); k++) {
        SolluTruth truth = sollus.get(k);
        double room = sollus.get(k + 1).feltSeconds() - truth.feltSeconds();
        if (room >= LEAST_TO_BREATHE) {
          sollus.set(k, truth.lasting(Math.min(truth.lengthSeconds(), 0.35 * room)));
          breaths.add(truth.feltSeconds() + 0.62 * room);
        }
      }
    }
  }
}
