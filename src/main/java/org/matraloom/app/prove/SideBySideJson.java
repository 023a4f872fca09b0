package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import org.matraloom.app.cli.Json;
import org.matraloom.kanakku.BothLandings;
import org.matraloom.score.TwoReciters.SideBySide;

/** What two reciters do as JSON: each as a score of its own is told, then side by side. */
final class SideBySideJson {

  private SideBySideJson() {}

  static void write(BothLandings both, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartObject();
      generator.writeArrayFieldStart("reciters");
      LandingJson.write(both.first(), generator);
      LandingJson.write(both.second(), generator);
      generator.writeEndArray();
      generator.writeBooleanField("secondIsJudged", both.judgedSecond().isPresent());
      generator.writeArrayFieldStart("sideBySide");
      for (SideBySide stretch : both.reciters().stretches()) {
        generator.writeStartObject();
        generator.writeStringField("startBeat", stretch.lineFrom().toString());
        generator.writeBooleanField("firstIsSilent", stretch.silent());
        generator.writeStringField("beats", stretch.lineTo().minus(stretch.lineFrom()).toString());
        generator.writeStringField("secondBeats", stretch.to().minus(stretch.from()).toString());
        generator.writeStringField("lateBeats", stretch.lateBeats().toString());
        generator.writeStringField("missBeats", stretch.missBeats().toString());
        generator.writeEndObject();
      }
      generator.writeEndArray();
      generator.writeBooleanField("holds", both.holds());
      generator.writeEndObject();
    }
  }
}
