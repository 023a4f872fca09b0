package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.matraloom.app.cli.Json;
import org.matraloom.form.KoraippuTurn;

/** Proposals as JSON. */
final class ProposalJson {

  private ProposalJson() {}

  /** Lines of a shape; more says whether there are others that are not written. */
  static void write(List<List<Integer>> proposals, boolean more, PrintWriter out)
      throws IOException {
    try (Json written = Json.to(out)) {
      JsonGenerator generator = written.generator();
      generator.writeStartObject();
      generator.writeArrayFieldStart("proposals");
      for (List<Integer> lines : proposals) {
        generator.writeStartObject();
        LineWords.write(lines, generator);
        generator.writeEndObject();
      }
      generator.writeEndArray();
      generator.writeBooleanField("more", more);
      generator.writeEndObject();
    }
  }

  /** A phrase that is reduced or expanded. */
  static void write(ReductionOptions reduction, PrintWriter out) throws IOException {
    try (Json written = Json.to(out)) {
      JsonGenerator generator = written.generator();
      generator.writeStartObject();
      write("held", reduction.held(), generator);
      write("front", List.of(reduction.dropped(true)), generator);
      write("end", List.of(reduction.dropped(false)), generator);
      generator.writeEndObject();
    }
  }

  private static void write(String name, List<ReductionOptions.Way> ways, JsonGenerator generator)
      throws IOException {
    generator.writeArrayFieldStart(name);
    for (ReductionOptions.Way way : ways) {
      generator.writeStartObject();
      generator.writeStringField("written", way.written());
      LineWords.write(way.lines(), generator);
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /** The turns of a koraippu. */
  static void writeTurns(List<KoraippuTurn> turns, PrintWriter out) throws IOException {
    try (Json written = Json.to(out)) {
      JsonGenerator generator = written.generator();
      generator.writeStartArray();
      for (KoraippuTurn turn : turns) {
        generator.writeStartObject();
        generator.writeNumberField("matras", turn.matras());
        generator.writeNumberField("group", turn.group());
        generator.writeNumberField("groups", turn.groups());
        generator.writeNumberField("gapMatras", turn.gapMatras());
        generator.writeEndObject();
      }
      generator.writeEndArray();
    }
  }
}
