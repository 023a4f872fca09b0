package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.matraloom.app.Main;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.verdict.PracticeAdvice;

/** What is said to be practised can be typed, for every sample. */
class TypedDrillTest {

  @Test
  void everyDrillWorks() throws IOException {
    int typed = 0;
    try (Stream<Path> samples = Files.list(Path.of("samples-synth"))) {
      for (Path score : samples.filter(file -> file.toString().endsWith(".loom")).toList()) {
        Performance performance =
            Performance.of(ScoreReader.read(score, Lexicon.standard()).composition().orElseThrow());
        List<Span.Round> rounds = performance.rounds();
        Span.Round last = rounds.get(rounds.size() - 1);
        for (PracticeAdvice next :
            List.of(
                PracticeAdvice.change(performance, last.number(), 4, 5, 71.3),
                PracticeAdvice.change(performance, 1, 4, 12, 71.3),
                PracticeAdvice.phrase(last.phrase(), 71.3),
                PracticeAdvice.pulse(71.3),
                PracticeAdvice.slowly(71.3),
                PracticeAdvice.quicker(71.3))) {
          assertWorks(next, score);
          typed++;
        }
      }
    }
    assertTrue(typed >= 60, "drills were typed: " + typed);
  }

  /** Without the name of a file for the sound the drill prints its score. */
  private static void assertWorks(PracticeAdvice next, Path score) {
    TypedDrill typed = new TypedDrill(score.toString(), Optional.empty(), "adi");
    List<String> words = new ArrayList<>(typed.words(next));
    int file = words.indexOf("-o");
    assertTrue(file > 0 && words.get(file + 1).endsWith(".wav"), "" + words);
    words.subList(file, file + 2).clear();
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
    assertEquals("", err.toString(), "" + words);
    assertEquals(0, code, "" + words);
    assertTrue(out.toString().contains("perform"), "" + words);
  }
}
