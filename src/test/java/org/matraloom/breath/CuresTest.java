package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

class CuresTest {

  private static final BreathSettings STUDY = BreathSettings.study();

  /** 96 matras said without a rest: three avartanas of adi in four. */
  private static final Composition FLOOD =
      new Pieces()
          .phrase("Wave", new Element.Repeat(Pieces.sequence("ta-ka-di-mi ta-ka-ju-nu"), 12))
          .phrase("Song", "Wave")
          .say("Song", 1, 4)
          .at(80);

  @Test
  void namesTheStretchThatIsTooLong() {
    BreathPlan plan = plan(FLOOD, STUDY);
    assertFalse(plan.isPossible());
    assertEquals(1, plan.tooLong().size());
    BreathStretch stretch = plan.tooLong().get(0);
    assertEquals(96, stretch.sollus());
    assertEquals(Ratio.of(18), stretch.seconds(), "96 matras of 187.5 ms");
    assertEquals("Wave", stretch.phrase());
    String text = BreathText.of(plan, List.of(), false, UnaryOperator.identity());
    assertTrue(
        text.contains(
            "Too long for one breath: round 1, from Wave (samam) on, 18.0 s and 96 sollus"),
        text);
  }

  @Test
  void addedSilenceWorksAndMovesTheStartSoThatItStillLands() {
    Cure cure = cure(FLOOD, STUDY, Cure.Kind.ADDED_SILENCE).orElseThrow();
    assertTrue(plan(cure.composition(), cure.settings()).isPossible(), cure.words());
    Performance before = Performance.of(FLOOD);
    Performance after = Performance.of(cure.composition());
    assertTrue(Landing.of(before).lands());
    assertTrue(Landing.of(after).lands(), cure.words());
    Ratio growth = after.beats().minus(before.beats());
    assertTrue(growth.signum() > 0);
    assertTrue(cure.words().contains("grows by " + growth.toMixed()), cure.words());
    assertTrue(cure.words().contains("start at beat"), cure.words());
  }

  /** What is said after the waiting grows, so that no start can bring its end back. */
  @Test
  void noStartIsPromisedWhenThePieceWaitsForSamam() {
    Composition waiting =
        new Composition(
            FLOOD.title(),
            FLOOD.avartana(),
            FLOOD.tempo(),
            FLOOD.startBeat(),
            FLOOD.eduppuBeat(),
            FLOOD.phrases(),
            List.of(
                new Step.Say("Song", 1, 4, 1),
                new Step.Until(Ratio.ZERO),
                new Step.Say("Song", 1, 4, 1)));
    Cure cure = cure(waiting, STUDY, Cure.Kind.ADDED_SILENCE).orElseThrow();
    assertTrue(Landing.of(Performance.of(waiting)).lands());
    assertFalse(Landing.of(Performance.of(cure.composition())).lands());
    assertFalse(cure.words().contains("start at"), cure.words());
    assertEquals(waiting.startBeat(), cure.composition().startBeat());
  }

  @Test
  void leftOutSollusWorkAndLeaveTheLandingAlone() {
    Cure cure = cure(FLOOD, STUDY, Cure.Kind.LEFT_OUT).orElseThrow();
    assertTrue(plan(cure.composition(), cure.settings()).isPossible(), cure.words());
    assertEquals(Performance.of(FLOOD).endBeat(), Performance.of(cure.composition()).endBeat());
  }

  @Test
  void aQuickerTempoCuresAStretchThatIsLongInSeconds() {
    Composition slow =
        new Pieces().phrase("Song", "ta-ka-di-mi ".repeat(9)).say("Song", 1, 4).at(60);
    Cure cure = cure(slow, STUDY, Cure.Kind.TEMPO).orElseThrow();
    assertEquals("take it faster, at 68 beats a minute", cure.words(), "36 matras in 8 s: 67.5");
    assertTrue(plan(cure.composition(), cure.settings()).isPossible());
  }

  @Test
  void aSlowerTempoCuresRestsThatAreTooShort() {
    Composition quick =
        new Pieces()
            .phrase("Song", "ta-ka-di-mi ".repeat(8) + ". " + "ta-ka-di-mi ".repeat(8))
            .say("Song", 1, 5)
            .at(100);
    Cure cure = cure(quick, STUDY, Cure.Kind.TEMPO).orElseThrow();
    assertEquals("take it slower, at 48 beats a minute", cure.words(), "a matra of 250 ms");
    assertTrue(plan(cure.composition(), cure.settings()).isPossible());
  }

  @Test
  void cuttingKarvaisIsACureOnlyWhereItIsForbidden() {
    Composition ringing =
        new Pieces()
            .phrase("Song", "ta-ka-di-mi ".repeat(8) + "tom , , , " + "ta-ka-di-mi ".repeat(8))
            .say("Song", 1, 4)
            .at(80);
    BreathSettings whole = STUDY.withCutKarvai(false);
    Cure cure = cure(ringing, whole, Cure.Kind.KARVAI).orElseThrow();
    assertTrue(plan(cure.composition(), cure.settings()).isPossible());
    assertTrue(plan(ringing, STUDY).isPossible());
    assertTrue(Cures.of(plan(ringing, STUDY)).isEmpty(), "a possible piece needs no cure");
    assertTrue(cure(FLOOD, STUDY, Cure.Kind.KARVAI).isEmpty());
  }

  @Test
  void everyCureOfEveryImpossiblePieceWorks() {
    Map<Cure.Kind, Integer> seen = new EnumMap<>(Cure.Kind.class);
    int impossible = 0;
    int cured = 0;
    for (long seed = 0; seed < 30; seed++) {
      for (boolean cut : List.of(true, false)) {
        BreathSettings settings = STUDY.withCutKarvai(cut);
        Composition piece = Pieces.random(seed);
        BreathPlan plan = plan(piece, settings);
        List<Cure> cures = Cures.of(plan);
        assertEquals(plan.isPossible(), MissingBreaths.in(plan.performance(), settings) == 0);
        impossible += plan.isPossible() ? 0 : 1;
        cured += cures.isEmpty() ? 0 : 1;
        for (Cure cure : cures) {
          assertTrue(
              plan(cure.composition(), cure.settings()).isPossible(), seed + ": " + cure.words());
          seen.merge(cure.kind(), 1, Integer::sum);
        }
      }
    }
    assertEquals(Cure.Kind.values().length, seen.size(), "kinds seen: " + seen);
    assertTrue(impossible > 15, "impossible pieces were seen: " + impossible);
    assertEquals(impossible, cured, "every impossible piece has a cure");
  }

  /**
   * What cures a flood of 96 sollus cures one of 4,000 in the same words: the search is bounded by
   * the sollus it reads, and does not spend them on single places where a hundred breaths are
   * missing.
   */
  @Test
  void aLongFloodIsCuredInsideItsRepeatLikeAShortOne() {
    Composition flood =
        new Pieces()
            .phrase("Wave", new Element.Repeat(Pieces.sequence("ta-ka-di-mi ta-ka-ju-nu"), 500))
            .say("Wave", 1, 4)
            .at(120);
    for (Cure.Kind kind : List.of(Cure.Kind.ADDED_SILENCE, Cure.Kind.LEFT_OUT)) {
      Cure cure = cure(flood, STUDY, kind).orElseThrow();
      assertTrue(plan(cure.composition(), cure.settings()).isPossible(), cure.words());
      assertTrue(cure.words().contains("each time in Wave"), cure.words());
    }
  }

  private static BreathPlan plan(Composition piece, BreathSettings settings) {
    return BreathPlanner.plan(Performance.of(piece), settings);
  }

  private static Optional<Cure> cure(Composition piece, BreathSettings settings, Cure.Kind kind) {
    return Cures.of(plan(piece, settings)).stream().filter(cure -> cure.kind() == kind).findFirst();
  }
}
