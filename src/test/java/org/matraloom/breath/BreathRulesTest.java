package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.matraloom.form.Joint;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** What holds of every plan: on all samples and on random pieces, at many tempi and nadais. */
class BreathRulesTest {

  private static final BreathSettings STUDY = BreathSettings.study();
  private static final Ratio APART_SECONDS = Ratio.of(2);

  private int plans;
  private int inside;
  private int followed;
  private int free;
  private int excused;
  private int near;
  private int inHand;

  @Test
  void everySampleKeepsTheRules() throws IOException {
    for (Composition sample : samples()) {
      for (int tempo = 40; tempo <= 120; tempo += 20) {
        check(sample.at(Tempo.of(tempo)));
        check(inNadai(sample, 3 + tempo / 20 % 5).at(Tempo.of(tempo)));
      }
    }
    assertTrue(plans > 90 && followed > 300 && free > 300 && inHand > 50, counted());
  }

  @Test
  void threeHundredPiecesKeepTheRules() {
    for (int number = 0; number < 300; number++) {
      Composition piece = Pieces.korvai(10_000 + number);
      check(piece);
      check(piece.at(Tempo.of(40 + number % 9 * 10)));
      check(inNadai(piece, 3 + number % 7).at(Tempo.of(120 - number % 9 * 10)));
    }
    assertTrue(plans == 900 && inside > 5 && followed > 1_000, counted());
    assertTrue(free > 500 && excused > 5 && near > 20 && inHand > 100, counted());
  }

  @Test
  void whatIsToRingOutIsNeverCut() throws IOException {
    int whole = 0;
    for (Composition sample : samples()) {
      for (int tempo = 30; tempo <= 120; tempo += 15) {
        Performance performance = Performance.of(sample.at(Tempo.of(tempo)));
        for (BreathSettings.Way way : BreathSettings.Way.values()) {
          BreathSettings settings = STUDY.withCutKarvai(false).by(way);
          for (Breath breath : BreathPlanner.plan(performance, settings).breaths()) {
            assertEquals(Breath.Source.SILENCE, breath.air().source(), sample.title());
            assertEquals(0, breath.air().cutBeats().signum(), sample.title());
            whole++;
          }
        }
      }
    }
    assertTrue(whole > 10, "breaths in silence: " + whole);
  }

  private String counted() {
    return List.of(plans, inside, followed, free, excused, near, inHand).toString();
  }

  private void check(Composition piece) {
    Performance performance = Performance.of(piece);
    BreathPlan plan = BreathPlanner.plan(performance, STUDY);
    String what = piece.title() + " at " + piece.tempo() + " " + piece.phrases();
    Voice voice = VoiceReader.read(performance).orElseThrow();
    Set<Ratio> taken =
        plan.breaths().stream()
            .map(Breath::afterBeat)
            .collect(Collectors.toCollection(HashSet::new));
    plans++;
    theLimitsHold(plan, what);
    insideOnlyWhereJointsDoNotServe(plan, piece, voice, what);
    alikeOrExplained(plan, voice, taken, what);
    freeAirIsUsed(plan, piece, voice, taken, what);
  }

  private static void theLimitsHold(BreathPlan plan, String what) {
    boolean over = plan.stretches().stream().anyMatch(each -> each.isTooLong(STUDY));
    assertEquals(!plan.isPossible(), over, what);
    assertEquals(plan.breaths().size() + 1, plan.stretches().size(), what);
    for (Breath breath : plan.breaths()) {
      assertTrue(breath.seconds().compareTo(Ratio.of(1, 4)) >= 0, what);
      assertTrue(!breath.why().isEmpty(), what);
    }
  }

  /**
   * With all joints used, and nothing inside, is every stretch within the limits? Then so it is.
   */
  private void insideOnlyWhereJointsDoNotServe(
      BreathPlan plan, Composition piece, Voice voice, String what) {
    Ratio from = voice.begin().beat();
    long said = 0;
    boolean served = true;
    for (VoiceStop stop : voice.stops()) {
      boolean usable = stop.joint() != Joint.INSIDE || stop.isAsked();
      boolean time = !stop.isForbidden() && !Candidate.starts(stop, piece.tempo(), STUDY).isEmpty();
      if (usable && time) {
        Ratio start = Candidate.earliestStart(stop, piece.tempo(), STUDY).orElseThrow();
        served &= keeps(piece, start.minus(from), stop.solluCount() - said);
        from = stop.next().beat();
        said = stop.solluCount();
      }
    }
    served &= keeps(piece, voice.endBeat().minus(from), voice.sollus() - said);
    Set<Ratio> asked =
        voice.stops().stream()
            .filter(VoiceStop::isAsked)
            .map(stop -> stop.last().beat())
            .collect(Collectors.toSet());
    boolean breathesInside =
        plan.breaths().stream()
            .anyMatch(each -> each.joint() == Joint.INSIDE && !asked.contains(each.afterBeat()));
    assertTrue(!served || !breathesInside, what);
    inside += breathesInside ? 1 : 0;
  }

  private static boolean keeps(Composition piece, Ratio beats, long sollus) {
    return sollus <= 40 && piece.tempo().secondsOf(beats).compareTo(Ratio.of(8)) <= 0;
  }

  /** Stops at one place are used together, or the plan says of each why not. */
  private void alikeOrExplained(BreathPlan plan, Voice voice, Set<Ratio> taken, String what) {
    Map<Object, List<VoiceStop>> places = new HashMap<>();
    for (VoiceStop stop : voice.stops()) {
      places.computeIfAbsent(stop.standing().place(), none -> new ArrayList<>()).add(stop);
    }
    int unlike = 0;
    for (List<VoiceStop> place : places.values()) {
      long used = place.stream().filter(stop -> taken.contains(stop.last().beat())).count();
      unlike += used > 0 ? place.size() - (int) used : 0;
      followed += used > 1 ? (int) used : 0;
    }
    long told = plan.notes().stream().filter(note -> note.contains("elsewhere:")).count();
    assertEquals(unlike, told, what + plan.notes());
    excused += unlike;
  }

  /**
   * No free joint is left, unless a breath there, or at an equal place, would begin within two
   * seconds of another; and the last mora of a round is not begun without a breath in hand.
   */
  private void freeAirIsUsed(
      BreathPlan plan, Composition piece, Voice voice, Set<Ratio> taken, String what) {
    List<Candidate> candidates = Candidate.of(voice, piece.tempo(), STUDY);
    Map<Object, List<Candidate>> places = new HashMap<>();
    for (Candidate each : candidates) {
      places.computeIfAbsent(each.stop().standing().place(), none -> new ArrayList<>()).add(each);
    }
    for (Candidate candidate : candidates) {
      boolean used = taken.contains(candidate.stop().last().beat());
      boolean wanted = candidate.stop().standing().beforeLastMora() && !candidate.crowdsChange();
      if ((candidate.free() || wanted) && !used) {
        List<Candidate> alike = places.get(candidate.stop().standing().place());
        List<Ratio> starts = new ArrayList<>(alike.stream().map(Candidate::usualStart).toList());
        plan.breaths().forEach(breath -> starts.add(breath.startBeat()));
        assertTrue(
            alike.stream().anyMatch(each -> isNear(each.usualStart(), starts, piece.tempo())),
            what + candidate);
        near++;
      }
      free += candidate.free() && used ? 1 : 0;
      inHand += wanted && used ? 1 : 0;
    }
  }

  private static boolean isNear(Ratio one, List<Ratio> others, Tempo tempo) {
    return others.stream()
        .filter(other -> !other.equals(one))
        .anyMatch(other -> tempo.secondsOf(distance(one, other)).compareTo(APART_SECONDS) < 0);
  }

  private static Ratio distance(Ratio one, Ratio other) {
    return one.compareTo(other) < 0 ? other.minus(one) : one.minus(other);
  }

  private static Composition inNadai(Composition piece, int nadai) {
    List<Step> steps =
        piece.plan().stream()
            .map(
                step ->
                    step instanceof Step.Say say
                        ? new Step.Say(say.phrase(), say.times(), nadai, 1)
                        : step)
            .toList();
    return new Composition(
        piece.title(),
        piece.avartana(),
        piece.tempo(),
        piece.startBeat(),
        piece.eduppuBeat(),
        piece.phrases(),
        steps);
  }

  private static List<Composition> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      return files
          .filter(file -> file.toString().endsWith(".loom"))
          .sorted()
          .map(file -> ScoreReader.read(file, Lexicon.standard()).composition().orElseThrow())
          .toList();
    }
  }
}
