package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.matraloom.app.cli.Json;
import org.matraloom.form.Joint;
import org.matraloom.form.Mora;
import org.matraloom.form.Structure;
import org.matraloom.time.Ratio;

/** The lines, moras and joints of phrases as JSON. */
final class StructureJson {

  private StructureJson() {}

  static void write(List<Structure> structures, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      for (Structure structure : structures) {
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
      write(structure, part, generator);
    }
    generator.writeEndArray();
    generator.writeArrayFieldStart("morasInsideLines");
    for (Mora mora : structure.morasInsideLines()) {
      generator.writeStartObject();
      Ratio before = structure.joints().matrasBefore(mora.start());
      generator.writeStringField("afterMatras", before.toString());
      generator.writeStringField("written", mora.written());
      generator.writeEndObject();
    }
    generator.writeEndArray();
    generator.writeArrayFieldStart("jointsInsideLines");
    for (int sollu : structure.jointsInsideLines()) {
      generator.writeStartObject();
      generator.writeStringField("afterMatras", structure.joints().matrasAfter(sollu).toString());
      generator.writeStringField("joint", structure.joints().after(sollu).word());
      generator.writeEndObject();
    }
    generator.writeEndArray();
    generator.writeEndObject();
  }

  private static void write(Structure structure, Structure.Part part, JsonGenerator generator)
      throws IOException {
    generator.writeStartObject();
    generator.writeStringField("kind", part.isMora() ? part.mora() : "lines");
    if (part.isMora()) {
      generator.writeStringField("written", part.written());
    }
    generator.writeBooleanField("uttaranga", part.ends());
    generator.writeStringField("matras", Structure.matras(List.of(part)).toString());
    generator.writeArrayFieldStart("lines");
    for (Structure.Line line : part.lines()) {
      generator.writeStartObject();
      generator.writeStringField("text", line.text());
      generator.writeNumberField("times", line.times());
      generator.writeStringField("matrasEach", line.matrasEach().toString());
      generator.writeStringField("joint", structure.jointAfter(line).orElse(Joint.ROUND).word());
      generator.writeEndObject();
    }
    generator.writeEndArray();
    generator.writeEndObject();
  }
}
