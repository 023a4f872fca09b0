package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.form.Joint;
import org.matraloom.form.Joints;
import org.matraloom.form.Mora;
import org.matraloom.form.Structure;
import org.matraloom.form.Yati;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The lines of every phrase that is said, with their sums. */
final class StructureText {

  private static final int WIDEST = 36;

  private final Composition composition;

  StructureText(Composition composition) {
    this.composition = composition;
  }

  void print(PrintWriter out) {
    structures().forEach(structure -> print(structure, out));
  }

  /** For every phrase that is said, in the nadai in which it is first said. */
  List<Structure> structures() {
    List<Span.Round> rounds = Performance.of(composition).rounds();
    List<String> phrases = rounds.stream().map(Span.Round::phrase).distinct().toList();
    return phrases.stream()
        .map(phrase -> rounds.stream().filter(r -> r.phrase().equals(phrase)).findFirst().get())
        .map(first -> Structure.of(composition, first.phrase(), first.nadai()))
        .toList();
  }

  private static void print(Structure structure, PrintWriter out) {
    Ratio all = Structure.matras(structure.parts());
    out.println(Paragraph.hanging(2, structure.phrase() + ": " + LengthWords.matras(all)));
    List<Structure.Part> purvanga = structure.purvanga();
    if (!purvanga.isEmpty()) {
      String matras = LengthWords.matras(Structure.matras(purvanga));
      out.println(Paragraph.hanging(4, "  purvanga, " + matras + ", " + shape(structure)));
    }
    Ratio sum = Ratio.ZERO;
    for (Structure.Part part : structure.parts()) {
      String matras = LengthWords.matras(Structure.matras(List.of(part)));
      if (part.ends()) {
        out.println(
            Paragraph.hanging(
                4, "  uttaranga, " + matras + ", a " + part.mora() + " " + part.written()));
      } else if (part.isMora()) {
        out.println(
            Paragraph.hanging(6, "    " + matras + ", a " + part.mora() + " " + part.written()));
      }
      sum = printLines(structure, part, sum, out);
    }
    printInside(structure, out);
  }

  private static String shape(Structure structure) {
    Yati yati = structure.yati();
    String named = yati.word() + " (" + yati.meaning() + ")";
    return yati == Yati.NONE ? "no shape: " + yati.meaning() : named + steps(structure);
  }

  private static String steps(Structure structure) {
    return ", " + structure.steps().inWords();
  }

  private static Ratio printLines(
      Structure structure, Structure.Part part, Ratio before, PrintWriter out) {
    int indent = part.isMora() && !part.ends() ? 6 : 4;
    int width = WIDEST + 4 - indent;
    Ratio sum = before;
    for (Structure.Line line : part.lines()) {
      sum = sum.plus(line.matras());
      String times = line.times() == 1 ? "" : line.matrasEach().toMixed() + " x " + line.times();
      String row =
          String.format(
              Locale.ROOT,
              " ".repeat(indent) + "%-" + width + "s %8s %6s  %-8s %s",
              cut(line.text(), width),
              times,
              line.matras().toMixed(),
              "(" + sum.toMixed() + ")",
              structure.jointAfter(line).map(Joint::word).orElse(""));
      out.println(row.stripTrailing());
    }
    return sum;
  }

  /** What no line shows: moras and joints inside lines, by the matras before them. */
  private static void printInside(Structure structure, PrintWriter out) {
    Joints joints = structure.joints();
    for (Mora mora : structure.morasInsideLines()) {
      String from = joints.matrasBefore(mora.start()).toMixed();
      out.println(Paragraph.folded("  inside a line, after " + from + ": mora " + mora.written()));
    }
    String inside =
        structure.jointsInsideLines().stream()
            .map(sollu -> joints.matrasAfter(sollu).toMixed() + " " + joints.after(sollu).word())
            .collect(Collectors.joining(", "));
    if (!inside.isEmpty()) {
      out.println(Paragraph.folded("  joints inside lines after " + inside));
    }
  }

  private static String cut(String text, int widest) {
    return text.length() <= widest ? text : text.substring(0, widest - 3) + "...";
  }
}
