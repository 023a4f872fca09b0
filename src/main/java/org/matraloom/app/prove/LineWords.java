package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.form.Yati;
import org.matraloom.form.YatiSteps;
import org.matraloom.time.Ratio;

/** Says the sum and the shape of lines. */
final class LineWords {

  private LineWords() {}

  /** The lines added up: "28 + 21 + 14 + 7 = 70". */
  static String summed(List<Integer> lines) {
    int total = lines.stream().mapToInt(Integer::intValue).sum();
    return lines.stream().map(String::valueOf).collect(Collectors.joining(" + ")) + " = " + total;
  }

  /** Their yati and steps: "gopuccha (long to short), equal steps of 7". */
  static String shape(List<Integer> lines) {
    Yati named = Yati.ofMatras(lines);
    YatiSteps steps = YatiSteps.of(lines.stream().map(Ratio::of).toList());
    return named == Yati.NONE
        ? "no shape: " + named.meaning()
        : named.word() + " (" + named.meaning() + "), " + steps.inWords();
  }

  /** Sum and shape, in lines that fit a terminal. */
  static String told(List<Integer> lines) {
    return Paragraph.hanging(4, summed(lines) + ": " + shape(lines));
  }

  /** Sum and shape as fields of a JSON object. */
  static void write(List<Integer> lines, JsonGenerator generator) throws IOException {
    writeNumbers("lines", lines, generator);
    generator.writeNumberField("matras", lines.stream().mapToInt(Integer::intValue).sum());
    generator.writeStringField("yati", Yati.ofMatras(lines).word());
    YatiSteps steps = YatiSteps.of(lines.stream().map(Ratio::of).toList());
    generator.writeArrayFieldStart("steps");
    for (Ratio step : steps.steps()) {
      generator.writeString(step.toString());
    }
    generator.writeEndArray();
    generator.writeBooleanField("equalSteps", steps.areEqual());
  }

  /** Whole numbers as a field of a JSON object. */
  static void writeNumbers(String name, List<Integer> numbers, JsonGenerator generator)
      throws IOException {
    generator.writeArrayFieldStart(name);
    for (int number : numbers) {
      generator.writeNumber(number);
    }
    generator.writeEndArray();
  }
}
