package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.ExactNumber;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.NadaiNumber;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.breath.EndingBreaths;
import org.matraloom.form.Ending;
import org.matraloom.form.EndingChoice;
import org.matraloom.form.Endings;
import org.matraloom.form.GivenPurvanga;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Tempo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the threefold endings that fill a number of matras. */
@Command(
    name = "endings",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "List the threefold endings, such as 9(1)9(1)9, for a number of matras.",
      "They are equal, with unequal karvais, growing, shrinking, and with one matra borrowed.",
      "Those that are easiest to breathe and to say come first."
    },
    footer = {"", "Example: matraloom endings 128 --after 24,75 --tempo 80"})
public final class EndingsCommand implements Callable<Integer> {

  private static final int MOST = 10_000;
  private static final int A_SCREENFUL = 18;
  private static final int UNDER_WORDS = 42;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "MATRAS",
      description = "The matras to fill; with --after, the matras of the whole.")
  private int matras;

  @Option(
      names = "--after",
      paramLabel = "LINES",
      split = "[,+]",
      description = "The lines before the ending, in matras, such as 24,75.")
  private List<Integer> lines = List.of();

  @Option(
      names = "--nadai",
      paramLabel = "N",
      defaultValue = "4",
      description = "In this nadai: the ending (default ${DEFAULT-VALUE}).")
  private NadaiNumber nadai;

  @Option(
      names = "--tempo",
      paramLabel = "BPM",
      defaultValue = "60",
      description = "Beats a minute (default ${DEFAULT-VALUE}).")
  private ExactNumber tempo;

  @Option(names = "--all", description = "List up to 10000, not only a screenful.")
  private boolean all;

  @Option(names = "--json", description = "Write JSON, everything.")
  private boolean json;

  @Mixin private BreathOptions breaths;

  @Override
  public Integer call() throws IOException {
    GivenPurvanga filling = new GivenPurvanga(matras, lines);
    check(filling.left());
    Tempo beat = new Tempo(tempo.value());
    List<EndingChoice> ranked =
        new EndingBreaths(nadai.matrasPerBeat(), beat, breaths.settings())
            .ranked(EndingChoice.rank(filling.left(), nadai.matrasPerBeat(), 1, beat));
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      write(ranked, filling, out);
      return ranked.isEmpty() ? ExitCode.CHECK_FAILED : ExitCode.DONE;
    }
    out.printf(
        Locale.ROOT,
        "%d matras to fill in %d a beat at %s beats a minute:%n",
        filling.left(),
        nadai.matrasPerBeat(),
        beat.beatsPerMinute().toMixed());
    int shown = Math.min(all ? MOST : A_SCREENFUL, ranked.size());
    ranked.subList(0, shown).forEach(choice -> print(choice, filling, out));
    if (shown < ranked.size()) {
      out.println(
          "... and " + (ranked.size() - shown) + " more" + (all ? "." : "; --all lists them."));
    }
    return ranked.isEmpty() ? ExitCode.CHECK_FAILED : ExitCode.DONE;
  }

  private void check(int left) {
    if (left < 1 || left > Endings.LONGEST) {
      throw new UserError(
          "an ending has 1 to " + Endings.LONGEST + " matras; " + left + " would be left");
    } else if (!Tempo.inRange(tempo.value())) {
      throw new UserError(
          "a tempo is " + Tempo.SLOWEST + " to " + Tempo.FASTEST + " beats a minute");
    }
  }

  private void print(EndingChoice choice, GivenPurvanga filling, PrintWriter out) {
    Ending ending = choice.ending();
    String row =
        String.format(
            Locale.ROOT,
            "  %-16s %-13s %5.2f s  %s",
            ending.written(),
            choice.breath().words(),
            choice.karvaiSeconds(),
            String.join("; ", words(ending, notes(ending, filling))));
    out.println(Paragraph.hanging(UNDER_WORDS, row));
  }

  private List<String> notes(Ending ending, GivenPurvanga filling) {
    List<String> notes = new ArrayList<>();
    if (ending.form() != Ending.Form.EQUAL) {
      notes.add(ending.form().words());
    }
    if (ending.borrowed() != 0) {
      String borrowed =
          ending.borrowed() > 0
              ? "1 matra borrowed from the line before"
              : "1 matra lent to the line before";
      notes.add(lines.isEmpty() ? borrowed : borrowed + ": " + filling.sum(ending));
    }
    return notes;
  }

  private void write(List<EndingChoice> choices, GivenPurvanga filling, PrintWriter out)
      throws IOException {
    try (Json written = Json.to(out)) {
      JsonGenerator generator = written.generator();
      generator.writeStartObject();
      generator.writeNumberField("matras", filling.left());
      generator.writeNumberField("nadai", nadai.matrasPerBeat());
      generator.writeStringField("tempo", tempo.value().toString());
      generator.writeArrayFieldStart("endings");
      for (EndingChoice choice : choices) {
        Ending ending = choice.ending();
        generator.writeStartObject();
        generator.writeStringField("written", ending.written());
        LineWords.writeNumbers("statements", ending.statements(), generator);
        LineWords.writeNumbers("karvais", ending.karvais(), generator);
        generator.writeStringField("form", ending.form().words());
        generator.writeNumberField("borrowed", ending.borrowed());
        generator.writeStringField("breath", choice.breath().words());
        generator.writeNumberField("karvaiSeconds", choice.karvaiSeconds());
        if (!lines.isEmpty()) {
          generator.writeStringField("sum", filling.sum(ending));
        }
        generator.writeEndObject();
      }
      generator.writeEndArray();
      generator.writeEndObject();
    }
  }

  private static List<String> words(Ending ending, List<String> notes) {
    List<String> all = new ArrayList<>();
    int longest = ending.longestStatement();
    if (longest >= 1 && longest <= Lexicon.LARGEST_GROUP) {
      GroupWords words = Lexicon.standard().moraWords(longest);
      all.add(words.isPlain() ? words.written().replace(" ", "") : words.written());
    }
    all.addAll(notes);
    return all;
  }
}
