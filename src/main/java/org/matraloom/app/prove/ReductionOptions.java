package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Paragraph;
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

  /**
   * One way from line to line.
   *
   * @param written the lines in writing
   * @param lines their lengths in matras
   */
  record Way(String written, List<Integer> lines) {
    /** Copies the list. */
    Way {
      lines = List.copyOf(lines);
    }
  }

  void print(PrintWriter out) {
    out.println("Held " + (grow ? "longer" : "shorter") + " from line to line:");
    for (Way way : held()) {
      String row = String.format("  %-24s %s", way.written(), LineWords.summed(way.lines()));
      out.println(Paragraph.folded(row));
    }
    for (boolean fromFront : new boolean[] {true, false}) {
      String end = fromFront ? "front" : "end";
      out.println((grow ? "A sollu added at the " : "A sollu dropped from the ") + end + ":");
      Way way = dropped(fromFront);
      out.println(Paragraph.folded("  " + way.written() + "  " + LineWords.summed(way.lines())));
    }
  }

  /** Every way to hold its sollus shorter from line to line. */
  List<Way> held() {
    return Reduction.all(sollus().size(), longest, shortest).stream()
        .map(way -> grow ? way.reversed() : way)
        .map(way -> new Way(way.written(), way.lines()))
        .toList();
  }

  /** The way in which a sollu less is said from line to line. */
  Way dropped(boolean fromFront) {
    List<List<Sollu>> lines = new ArrayList<>(Reduction.dropping(sollus(), 1, fromFront));
    if (grow) {
      Collections.reverse(lines);
    }
    String words =
        lines.stream()
            .map(line -> line.stream().map(Sollu::spelling).collect(Collectors.joining()))
            .collect(Collectors.joining(" "));
    return new Way(words, lines.stream().map(List::size).toList());
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
