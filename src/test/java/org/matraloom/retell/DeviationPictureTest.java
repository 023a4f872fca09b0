package org.matraloom.retell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.Doubt;
import org.matraloom.measure.LandingBeat;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.PulseLine;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** A take with known deviations, drawn. */
class DeviationPictureTest {

  private static final double BEAT_SECONDS = 60.0 / 66;
  private static final int MISSED = 10;
  private static final int LATE = 20;
  private static final int FAR = 30;

  private final Timeline timeline =
      ScoreTimeline.of(
          Performance.of(
              ScoreReader.read(Path.of("samples-synth", "gutter-song.loom"), Lexicon.standard())
                  .composition()
                  .orElseThrow()),
          0);
  private final List<ExpectedSollu> expected = ExpectedSollu.of(timeline);

  @Test
  void everySolluBecomesAMarkAtItsBeat() {
    DeviationMarks marks = DeviationMarks.of(findings(Optional.empty()));
    assertEquals(expected.size(), marks.words().size());
    assertEquals(expected.size() - 1, marks.said().size());
    assertEquals(
        List.of(expected.get(MISSED).beat().toDouble()),
        marks.missed().stream().map(DeviationMarks.Word::beat).toList());
    assertEquals(1, marks.addedBeats().size());
    assertEquals(5.5, marks.addedBeats().get(0), 1e-6);
    List<DeviationMarks.Said> noticed =
        marks.said().stream().filter(DeviationMarks.Said::isNoticed).toList();
    assertEquals(
        List.of(0.03, -0.3), noticed.stream().map(DeviationMarks.Said::deviationSeconds).toList());
    assertEquals(
        1, marks.said().stream().filter(DeviationMarks.Said::last).count(), "the last sollu");
    assertTrue(marks.said().get(marks.said().size() - 1).last());
  }

  @Test
  void aRestartIsMarkedWhereItBegins() throws IOException {
    TakeFindings once = findings(Optional.empty());
    List<SaidSollu> sollus = new ArrayList<>(once.sollus());
    SaidSollu first = sollus.get(0);
    sollus.add(new SaidSollu(first.place(), 2, 60, 60, first.deviationSeconds()));
    TakeFindings again =
        new TakeFindings(
            once.alignment(),
            sollus,
            once.pulse(),
            List.of(),
            TakeFindings.Nadais.NONE,
            once.landing(),
            once.breathing(),
            Optional.empty());
    assertEquals(List.of(), DeviationMarks.of(once).againBeats());
    assertEquals(List.of(expected.get(0).beat().toDouble()), DeviationMarks.of(again).againBeats());
    assertTrue(svg(again).contains("<title>begun again</title>"));
    assertFalse(svg(once).contains("<title>begun again</title>"));
  }

  @Test
  void theScaleHoldsNearlyAllAndTheRestIsAtTheEdge() {
    DeviationScale scale = DeviationScale.of(findings(Optional.empty()).sollus());
    assertEquals(20, scale.milliseconds());
    assertTrue(scale.isBeyond(-0.3));
    assertEquals(-1, scale.part(-0.3));
    assertEquals(0.5, scale.part(0.01), 1e-12);
    assertEquals(20, DeviationScale.of(List.of()).milliseconds());
  }

  @Test
  void roundsNadaiAvartanasAndWordsAreNamed() throws IOException {
    String svg = svg(findings(Optional.empty()));
    for (String words :
        List.of(
            "round 1, nadai 4",
            "round 3, nadai 5",
            "avartana 7",
            "20 ms late",
            "20 ms early",
            "ta",
            "66.0 beats a minute, 1.0 % faster at the end than at the beginning; "
                + "the last sollu is 4 ms early",
            "missed",
            "added")) {
      assertTrue(svg.contains("<title>" + words + "</title>"), words);
    }
    assertFalse(svg.contains("NaN"));
  }

  @Test
  void aTakeInDoubtSaysWhy() throws IOException {
    String svg = svg(findings(Optional.of(new Doubt("it may be another piece"))));
    assertTrue(svg.contains("Cannot be judged: it may be another piece"), "the reason");
  }

  @Test
  void aTakeWithoutAPulseIsNotDrawnButExplained() throws IOException {
    TakeFindings none = findings(Optional.of(new Doubt("the recording is silent")));
    TakeFindings silent =
        new TakeFindings(
            new Alignment(expected, List.of(), List.of()),
            List.of(),
            Optional.empty(),
            List.of(),
            TakeFindings.Nadais.NONE,
            Optional.empty(),
            none.breathing(),
            none.doubt());
    String svg = svg(silent);
    assertTrue(svg.contains("Cannot be judged: the recording is silent"));
    assertFalse(svg.contains("avartana"), "no rows");
  }

  private String svg(TakeFindings findings) throws IOException {
    StringBuilder svg = new StringBuilder();
    DeviationPicture.of(timeline, findings).writeSvg(svg);
    return svg.toString();
  }

  private TakeFindings findings(Optional<Doubt> doubt) {
    List<Onset> onsets = new ArrayList<>();
    List<Alignment.Said> aligned = new ArrayList<>();
    List<SaidSollu> sollus = new ArrayList<>();
    for (int place = 0; place < expected.size(); place++) {
      if (place == MISSED) {
        continue;
      }
      double deviation = place == LATE ? 0.03 : place == FAR ? -0.3 : -0.004;
      double seconds = expected.get(place).beat().toDouble() * BEAT_SECONDS + deviation;
      aligned.add(new Alignment.Said(place, onsets.size()));
      onsets.add(new Onset(seconds, 1));
      sollus.add(new SaidSollu(place, 1, seconds, seconds, deviation));
    }
    onsets.add(new Onset(5.5 * BEAT_SECONDS - 0.004, 1));
    PulseLine line = new PulseLine(0, BEAT_SECONDS, 0, 0);
    return new TakeFindings(
        new Alignment(expected, onsets, aligned),
        sollus,
        Optional.of(new Pulse(66, 1, 0.004, OptionalDouble.empty(), line)),
        List.of(),
        TakeFindings.Nadais.NONE,
        Optional.of(
            new TakeLanding(expected.size() - 1, -0.004, -0.02, 0.002, 0.06, LandingBeat.PULSE)),
        new BreathFindings(0, 0, 0, 0, List.of()),
        doubt);
  }
}
