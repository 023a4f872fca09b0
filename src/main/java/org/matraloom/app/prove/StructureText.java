package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.form.Structure;
import org.matraloom.form.Yati;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The lines of every phrase that is said, with their sums. */
final class StructureText {

  private static final int WIDEST = 42;

  private final Composition composition;

  StructureText(Composition composition) {
    this.composition = composition;
  }

  void print(PrintWriter out) {
    structures().forEach(structure -> print(structure, out));
  }

  /** One for every phrase that is said, in the nadai in which it is first said. */
  private List<Structure> structures() {
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
        out.println("  uttaranga, " + matras + ", a " + part.mora());
      } else if (part.isMora()) {
        out.println("    " + matras + ", a " + part.mora());
      }
      sum = printLines(part.lines(), part.isMora() && !part.ends() ? 6 : 4, sum, out);
    }
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
      List<Structure.Line> lines, int indent, Ratio before, PrintWriter out) {
    Ratio sum = before;
    for (Structure.Line line : lines) {
      sum = sum.plus(line.matras());
      String times = line.times() == 1 ? "" : line.matrasEach().toMixed() + " x " + line.times();
      out.printf(
          Locale.ROOT,
          " ".repeat(indent) + "%-" + (WIDEST + 4 - indent) + "s %8s %6s  (%s)%n",
          cut(line.text(), WIDEST + 4 - indent),
          times,
          line.matras().toMixed(),
          sum.toMixed());
    }
    return sum;
  }

  private static String cut(String text, int widest) {
    return text.length() <= widest ? text : text.substring(0, widest - 3) + "...";
  }

  void write(PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      for (Structure structure : structures()) {
        write(structure, generator);
      }
      generator.writeEndArray();
    }
  }

  private static void write(Structure structure, JsonGenerator generator) throws IOException {
    generator.writeStartObject();
    generator.writeStringField("phrase", structure.phrase());
    generator.writeStringField("matras", Structure.matras(structure.parts()).toString());
    generator.writeStringField("yati", structure.yati().word());
    generator.writeArrayFieldStart("steps");
    for (Ratio step : structure.steps().steps()) {
      generator.writeString(step.toString());
    }
    generator.writeEndArray();
    generator.writeArrayFieldStart("parts");
    for (Structure.Part part : structure.parts()) {
      generator.writeStartObject();
      generator.writeStringField("kind", part.isMora() ? part.mora() : "lines");
      generator.writeBooleanField("uttaranga", part.ends());
      generator.writeStringField("matras", Structure.matras(List.of(part)).toString());
      generator.writeArrayFieldStart("lines");
      for (Structure.Line line : part.lines()) {
        generator.writeStartObject();
        generator.writeStringField("text", line.text());
        generator.writeNumberField("times", line.times());
        generator.writeStringField("matrasEach", line.matrasEach().toString());
        generator.writeEndObject();
      }
      generator.writeEndArray();
      generator.writeEndObject();
    }
    generator.writeEndArray();
    generator.writeEndObject();
  }
}
