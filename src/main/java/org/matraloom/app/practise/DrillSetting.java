package org.matraloom.app.practise;

import org.matraloom.app.cli.UserError;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Option;

/** The tala and tempo of a drill that is not made from a score. */
final class DrillSetting {

  @Option(
      names = "--tala",
      paramLabel = "TALA",
      defaultValue = "adi",
      description = "In this tala: a name, formula or grouping (default ${DEFAULT-VALUE}).")
  private String tala;

  @Option(
      names = "--kalai",
      paramLabel = "N",
      defaultValue = "1",
      description = "Counted beats an akshara: 1, 2 or 4 (default ${DEFAULT-VALUE}).")
  private int kalai;

  @Option(
      names = "--tempo",
      paramLabel = "BPM",
      defaultValue = "60",
      description = "Beats a minute (default ${DEFAULT-VALUE}).")
  private String tempo;

  /** A composition of a single sollu in this setting, for its avartana and tempo. */
  Composition read() {
    String text =
        "tala " + oneLine(tala) + "\nkalai " + kalai + "\ntempo " + oneLine(tempo) + "\nAny = ta\n";
    Reading reading = ScoreReader.read(text, "the setting", Lexicon.standard());
    return reading
        .composition()
        .orElseThrow(
            () -> {
              String help = reading.problems().get(0).help().map("; "::concat).orElse("");
              return new UserError(reading.problems().get(0).message() + help);
            });
  }

  private static String oneLine(String value) {
    return value.replaceAll("[\\r\\n#]", " ").strip();
  }
}
