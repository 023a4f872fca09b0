package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.form.Joints;
import org.matraloom.form.Structure;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The lines of every phrase that is said, with their sums. */
final class StructureText {

  private static final int WIDEST = 44;

  private final Composition composition;

  StructureText(Composition composition) {
    this.composition = composition;
  }

  void print(PrintWriter out) {
    List<Span.Round> rounds = Performance.of(composition).rounds();
    List<String> phrases = rounds.stream().map(Span.Round::phrase).distinct().toList();
    for (String phrase : phrases) {
      Span.Round first = rounds.stream().filter(r -> r.phrase().equals(phrase)).findFirst().get();
      print(Structure.of(composition, phrase, first.nadai()), out);
      JointsText.print(Joints.of(composition, phrase, first.nadai()), out);
    }
  }

  private static void print(Structure structure, PrintWriter out) {
    Ratio purvanga = Structure.matras(structure.purvanga());
    Ratio uttaranga = Structure.matras(structure.uttaranga());
    out.printf("%s: %s matras%n", structure.phrase(), purvanga.plus(uttaranga).toMixed());
    if (!structure.purvanga().isEmpty()) {
      out.printf(
          "  purvanga, %s matras, %s (%s), %s%n",
          purvanga.toMixed(),
          structure.yati().word(),
          structure.yati().meaning(),
          structure.steps().inWords());
    }
    Ratio sum = printLines(structure.purvanga(), Ratio.ZERO, out);
    if (!structure.uttaranga().isEmpty()) {
      out.printf("  uttaranga, %s matras%n", uttaranga.toMixed());
    }
    printLines(structure.uttaranga(), sum, out);
  }

  private static Ratio printLines(List<Structure.Line> lines, Ratio before, PrintWriter out) {
    Ratio sum = before;
    for (Structure.Line line : lines) {
      sum = sum.plus(line.matras());
      String times = line.times() == 1 ? "" : line.matrasEach().toMixed() + " x " + line.times();
      out.printf(
          Locale.ROOT,
          "    %-" + WIDEST + "s %8s %6s  (%s)%n",
          cut(line.text()),
          times,
          line.matras().toMixed(),
          sum.toMixed());
    }
    return sum;
  }

  private static String cut(String text) {
    return text.length() <= WIDEST ? text : text.substring(0, WIDEST - 3) + "...";
  }
}
