package org.matraloom.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;

/** Sheets for tests: of the sample scores and of scores written in a test. */
public final class Sheets {

  public static final Lexicon LEXICON = Lexicon.standard();

  private static final Path SAMPLES = Path.of("samples-synth");

  private Sheets() {}

  /** The sample scores that can be read, in order of their names; at least eight. */
  public static List<Path> samples() {
    try (Stream<Path> files = Files.list(SAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".loom")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Composition sample(String name) {
    return read(SAMPLES.resolve(name + ".loom"));
  }

  public static Composition read(Path file) {
    return told(ScoreReader.read(file, LEXICON));
  }

  public static Composition score(String text) {
    return told(ScoreReader.read(text, "test.loom", LEXICON));
  }

  private static Composition told(Reading reading) {
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  public static Sheet plain(Composition composition) {
    return of(Performance.of(composition), Script.LATIN, SheetOptions.Lines.AVARTANA);
  }

  static Sheet of(Performance performance, Script script, SheetOptions.Lines lines) {
    return Sheet.of(performance, options(script, lines, false), breaths(performance));
  }

  static Sheet large(Composition composition) {
    Performance performance = Performance.of(composition);
    return Sheet.of(
        performance,
        options(Script.LATIN, SheetOptions.Lines.AVARTANA, true),
        breaths(performance));
  }

  private static SheetOptions options(Script script, SheetOptions.Lines lines, boolean large) {
    return new SheetOptions(lines, large, false, new SolluWriting(script, LEXICON));
  }

  static List<Breath> breaths(Performance performance) {
    return BreathPlanner.plan(performance, BreathSettings.study()).breaths();
  }

  public static List<Mark> marks(Sheet sheet) {
    return sheet.rows().stream()
        .flatMap(row -> row.cells().stream())
        .flatMap(cell -> cell.marks().stream())
        .toList();
  }
}
