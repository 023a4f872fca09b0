package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.app.cli.UserError;
import org.matraloom.form.Reduction;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import picocli.CommandLine.Option;

/** A phrase that is reduced, or expanded, from line to line. */
final class ReductionOptions {

  @Option(
      names = "--reduce",
      paramLabel = "PHRASE",
      description = "A word such as tadiginatom, or a number of sollus.")
  private String phrase;

  @Option(
      names = "--from",
      paramLabel = "N",
      defaultValue = "6",
      description = "The longest hold, in matras (default ${DEFAULT-VALUE}).")
  private int longest;

  @Option(
      names = "--to",
      paramLabel = "N",
      defaultValue = "2",
      description = "The shortest hold, in matras (default ${DEFAULT-VALUE}).")
  private int shortest;

  @Option(names = "--grow", description = "Turn the lines round: an expansion.")
  private boolean grow;

  boolean isAsked() {
    return phrase != null;
  }

  void print(PrintWriter out) {
    List<Sollu> sollus = sollus();
    out.println("Held " + (grow ? "longer" : "shorter") + " from line to line:");
    for (Reduction way : Reduction.all(sollus.size(), longest, shortest)) {
      Reduction shown = grow ? way.reversed() : way;
      out.printf("  %-24s %s%n", shown.written(), LineWords.summed(shown.lines()));
    }
    dropping(sollus, true, out);
    dropping(sollus, false, out);
  }

  private void dropping(List<Sollu> sollus, boolean fromFront, PrintWriter out) {
    String end = fromFront ? "front" : "end";
    out.println((grow ? "A sollu added at the " : "A sollu dropped from the ") + end + ":");
    List<List<Sollu>> lines = new ArrayList<>(Reduction.dropping(sollus, 1, fromFront));
    if (grow) {
      Collections.reverse(lines);
    }
    String words =
        lines.stream()
            .map(line -> line.stream().map(Sollu::spelling).collect(Collectors.joining()))
            .collect(Collectors.joining(" "));
    out.println("  " + words + "  " + LineWords.summed(lines.stream().map(List::size).toList()));
  }

  private List<Sollu> sollus() {
    if (phrase.matches("\\d{1,2}") && !phrase.matches("0+")) {
      return Lexicon.standard().words(Integer.parseInt(phrase));
    }
    return Lexicon.standard()
        .split(phrase)
        .orElseThrow(() -> new UserError("--reduce " + phrase + ": not a word of known sollus"));
  }
}
