package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** The samples at 40 to 110 beats a minute, the band from slow study to the stage. */
class SamplesBreathTest {

  private static final Ratio FLOOR = Ratio.of(250, 1000);

  @Test
  void noPlanOfASampleBreaksALimitAtAnyTempo() throws IOException {
    int possible = 0;
    int impossible = 0;
    for (Composition sample : samples().values()) {
      for (int tempo = 40; tempo <= 110; tempo++) {
        for (BreathSettings settings : List.of(BreathSettings.study(), BreathSettings.concert())) {
          BreathPlan plan =
              BreathPlanner.plan(Performance.of(sample.at(Tempo.of(tempo))), settings);
          plan.breaths().forEach(breath -> assertTrue(breath.seconds().compareTo(FLOOR) >= 0));
          possible += plan.isPossible() ? 1 : 0;
          impossible += plan.isPossible() ? 0 : 1;
          if (plan.isPossible()) {
            plan.stretches()
                .forEach(
                    stretch ->
                        assertTrue(
                            stretch.seconds().compareTo(settings.longestSeconds()) <= 0
                                && stretch.sollus() <= settings.longestSollus()));
          } else {
            assertTrue(MissingBreaths.in(plan.performance(), settings) > 0, "none was overlooked");
          }
        }
      }
    }
    assertTrue(possible > 800 && impossible > 0, possible + " possible, " + impossible + " not");
  }

  @Test
  void everyImpossibleSampleIsCured() throws IOException {
    int cures = 0;
    for (Composition sample : samples().values()) {
      for (int tempo = 40; tempo <= 110; tempo += 10) {
        Performance performance = Performance.of(sample.at(Tempo.of(tempo)));
        BreathPlan plan = BreathPlanner.plan(performance, BreathSettings.study());
        List<Cure> found = Cures.of(plan);
        assertTrue(plan.isPossible() == found.isEmpty(), sample.title() + " at " + tempo);
        for (Cure cure : found) {
          Performance cured = Performance.of(cure.composition());
          assertTrue(BreathPlanner.plan(cured, cure.settings()).isPossible(), cure.words());
          cures++;
        }
      }
    }
    assertTrue(cures > 10, "cures were applied: " + cures);
  }

  private static TreeMap<String, Composition> samples() throws IOException {
    TreeMap<String, Composition> samples = new TreeMap<>();
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      files
          .filter(file -> file.toString().endsWith(".loom"))
          .forEach(
              file -> {
                Optional<Composition> read =
                    ScoreReader.read(file, Lexicon.standard()).composition();
                samples.put(file.getFileName().toString(), read.orElseThrow());
              });
    }
    assertFalse(samples.isEmpty());
    return samples;
  }
}
