package org.matraloom.app.prove;

import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Option;

/** The tala and the places of a question that comes without a score. */
final class SettingOptions {

  @Option(
      names = "--tala",
      paramLabel = "TALA",
      description =
          "In this tala: a name, formula or grouping, such as adi or 3+2+2 (default adi).")
  private String tala;

  @Option(
      names = "--kalai",
      paramLabel = "N",
      defaultValue = "1",
      description = "Counted beats an akshara: 1, 2 or 4 (default ${DEFAULT-VALUE}).")
  private int kalai;

  @Option(
      names = "--start",
      paramLabel = "PLACE",
      defaultValue = "samam",
      description = {
        "Where it starts: samam, beat 5, \"beat 4 1/2\", +1/2, \"1 matra late\";",
        "? tries every place",
        "(default ${DEFAULT-VALUE})."
      })
  private String start;

  @Option(
      names = "--eduppu",
      paramLabel = "PLACE",
      defaultValue = "samam",
      description = "Where it must land, written the same way (default ${DEFAULT-VALUE}).")
  private String eduppu;

  String tala() {
    return tala == null ? "adi" : tala;
  }

  /** The tala as it is named, if it is. */
  Optional<String> namedTala() {
    return Optional.ofNullable(tala);
  }

  boolean startIsOpen() {
    return start.strip().equals("?");
  }

  boolean eduppuIsOpen() {
    return eduppu.strip().equals("?");
  }

  /** The head of a score in this setting; an open place stands on samam. */
  String head(int matrasPerBeat) {
    return "tala   "
        + oneLine(tala())
        + "\nkalai  "
        + kalai
        + "\nstart  "
        + place(start, matrasPerBeat)
        + "\neduppu "
        + place(eduppu, matrasPerBeat)
        + "\n";
  }

  /** A composition of a single sollu in this setting, for its tala and places. */
  Composition read(int matrasPerBeat) {
    Reading reading = ScoreReader.read(head(matrasPerBeat) + "Any = ta\n", "", Lexicon.standard());
    return reading
        .composition()
        .orElseThrow(() -> new UserError(explain(reading.problems().get(0))));
  }

  private static String explain(Problem problem) {
    String line = problem.sourceLine().replaceAll(" +", " ").strip();
    return line + ": " + problem.message() + problem.help().map("; "::concat).orElse("");
  }

  private String place(String text, int matrasPerBeat) {
    return text.strip().equals("?")
        ? "samam"
        : UserError.unlessRefused(
            () ->
                TypedPlace.written(
                    oneLine(text), matrasPerBeat, kalai == 2 || kalai == 4 ? kalai : 1));
  }

  /** Takes the tala that is told inside a sum. */
  void inTala(String named) {
    if (tala != null && !tala.equalsIgnoreCase(named)) {
      throw new UserError("the sum is in " + named + " and --tala says " + tala + "; take one");
    }
    tala = named;
  }

  /** Takes the start that is told inside a sum. */
  void startAt(String place) {
    start = place;
  }

  /** A value with a line end or a note in it would become something else than a value. */
  private static String oneLine(String value) {
    return value.replaceAll("[\\r\\n#]", " ").strip();
  }
}
