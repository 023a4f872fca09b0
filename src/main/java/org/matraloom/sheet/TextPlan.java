package org.matraloom.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;

/** The end of a sheet in text: each round as the lines it has, and the plan that performs them. */
final class TextPlan {

  /** Every fraction of a beat that a score can name divides this. */
  private static final int FRACTIONS = 5_040;

  private static final int MOST_PARTS = 1_000;

  private final Performance performance;
  private final Avartana avartana;
  private final int widest;
  private final String roundName;
  private final Map<Integer, List<String>> linesOfRound = new LinkedHashMap<>();

  /** A plan of lines that are at most so many characters wide; rounds are named by a word. */
  TextPlan(Performance performance, int widest, String roundName) {
    this.performance = performance;
    this.avartana = performance.avartana();
    this.widest = widest;
    this.roundName = roundName;
  }

  /** Takes the name of the next line of a round. */
  void add(int round, String line) {
    linesOfRound.computeIfAbsent(round, number -> new ArrayList<>()).add(line);
  }

  /** Writes the rounds and the plan. */
  void write(Appendable out) throws IOException {
    writeRounds(out);
    out.append("\nperform\n");
    for (int index = 0; index < performance.spans().size(); index++) {
      notices(index, out);
      perform(performance.spans().get(index), out);
    }
    notices(performance.spans().size(), out);
  }

  /** The rounds as the rows of which they consist, once these are written. */
  void writeRounds(Appendable out) throws IOException {
    for (Map.Entry<Integer, List<String>> round : linesOfRound.entrySet()) {
      writeRound(round.getKey(), round.getValue(), out);
    }
  }

  private void writeRound(int round, List<String> lines, Appendable out) throws IOException {
    StringBuilder line = new StringBuilder(roundName + round + " =");
    int part = 1;
    List<String> parts = new ArrayList<>();
    for (String name : lines) {
      if (line.length() + 1 + name.length() > widest) {
        String partName = roundName + round + "_" + part++;
        out.append(line.toString().replaceFirst("^" + roundName + "\\d+", partName)).append('\n');
        parts.add(partName);
        line = new StringBuilder(roundName + round + " =");
      }
      line.append(' ').append(name);
    }
    if (parts.isEmpty()) {
      out.append(line).append('\n');
    } else {
      String partName = roundName + round + "_" + part;
      out.append(line.toString().replaceFirst("^" + roundName + "\\d+", partName)).append('\n');
      parts.add(partName);
      out.append(roundName + round + " = " + String.join(" ", parts)).append('\n');
    }
  }

  /** The lines of the plan without time that stand before a span. */
  void notices(int span, Appendable out) throws IOException {
    for (Notice notice : performance.notices()) {
      if (notice.span() == span) {
        out.append(ScorePrinter.print(notice.step()) + "\n");
      }
    }
  }

  /** A line of the plan. */
  void perform(Span span, Appendable out) throws IOException {
    if (span instanceof Span.Round round && linesOfRound.containsKey(round.number())) {
      String kalam = round.kalam() == 1 ? "" : " kalam " + round.kalam();
      out.append(roundName + round.number() + " nadai " + round.nadai() + kalam + "\n");
    } else if (span instanceof Span.Pause && span.beats().signum() > 0) {
      out.append(silence(span) + "\n");
    }
  }

  /** A silence by its length, or by its end where only that has a fraction that a nadai has. */
  private String silence(Span span) {
    long parts = span.beats().den();
    if (FRACTIONS % parts == 0 && parts <= MOST_PARTS) {
      return "rest " + span.beats().toMixed() + " beats";
    }
    Ratio place = avartana.placeOf(span.endBeat());
    return place.signum() == 0 ? "until samam" : "until beat " + place.plus(Ratio.ONE).toMixed();
  }
}
