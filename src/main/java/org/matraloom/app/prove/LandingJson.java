package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import org.matraloom.app.cli.Json;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.PlaceClaim;
import org.matraloom.kanakku.Remarks;
import org.matraloom.score.Closing;
import org.matraloom.score.Composition;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;

/** The landing of a score as JSON; exact numbers are strings such as "56" or "224/5". */
public final class LandingJson {

  private LandingJson() {}

  /**
   * Writes where a score ends.
   *
   * @param landing where it ends
   * @param out where the JSON goes
   * @throws IOException if it cannot be written
   */
  public static void write(Landing landing, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      write(landing, json.generator());
    }
  }

  /** Writes one object into a longer answer. */
  static void write(Landing landing, JsonGenerator generator) throws IOException {
    Performance performance = landing.performance();
    Composition composition = performance.composition();
    generator.writeStartObject();
    generator.writeStringField("title", composition.title());
    generator.writeStringField("tala", composition.avartana().tala().name());
    generator.writeNumberField("beatsPerAvartana", composition.avartana().beats());
    generator.writeStringField("tempo", composition.tempo().beatsPerMinute().toString());
    Optional<Closing.Stroke> stroke = performance.closing().stroke();
    if (stroke.isPresent()) {
      generator.writeStringField("lastStroke", stroke.get().sollu().spelling());
    } else {
      generator.writeNullField("lastStroke");
    }
    generator.writeNumberField("avartanasAfter", performance.closing().avartanas());
    generator.writeStringField("matras", landing.matras().toString());
    generator.writeStringField("beats", landing.beats().toString());
    generator.writeStringField("avartanas", landing.avartanas().toString());
    generator.writeBooleanField("lands", landing.lands());
    generator.writeStringField("missMatras", landing.missMatras().toString());
    generator.writeStringField("missBeats", landing.missBeats().toString());
    if (landing.startCanMend()) {
      generator.writeStringField("startThatLands", landing.startThatLands().toString());
    } else {
      generator.writeNullField("startThatLands");
    }
    generator.writeArrayFieldStart("rounds");
    for (Span.Round round : performance.rounds()) {
      write(round, performance, generator);
    }
    generator.writeEndArray();
    writeParts(performance, generator);
    generator.writeArrayFieldStart("warnings");
    for (String remark : Remarks.on(performance)) {
      generator.writeString(remark);
    }
    generator.writeEndArray();
    generator.writeEndObject();
  }

  private static void write(Span.Round round, Performance performance, JsonGenerator generator)
      throws IOException {
    generator.writeStartObject();
    generator.writeNumberField("round", round.number());
    generator.writeStringField("phrase", round.phrase());
    generator.writeNumberField("nadai", round.nadai());
    generator.writeNumberField("kalam", round.kalam());
    generator.writeStringField("startBeat", round.startBeat().toString());
    generator.writeStringField("startsOn", performance.avartana().say(round.startBeat()));
    generator.writeStringField("beats", round.beats().toString());
    generator.writeStringField("matras", round.matras().toString());
    generator.writeNumberField("sollus", round.sollus());
    generator.writeEndObject();
  }

  /** The parts and the places that are claimed; nothing for a score that has neither. */
  private static void writeParts(Performance performance, JsonGenerator generator)
      throws IOException {
    if (performance.notices().isEmpty()) {
      return;
    }
    generator.writeArrayFieldStart("parts");
    for (Notice notice : performance.notices()) {
      if (notice.step() instanceof Step.Part part) {
        generator.writeStartObject();
        generator.writeStringField("part", part.name());
        generator.writeStringField("startBeat", notice.beat().toString());
        generator.writeEndObject();
      }
    }
    generator.writeEndArray();
    generator.writeArrayFieldStart("places");
    for (PlaceClaim claim : PlaceClaim.in(performance)) {
      generator.writeStartObject();
      generator.writeStringField("words", claim.words(performance.avartana()));
      generator.writeStringField("beat", claim.atBeat().toString());
      generator.writeStringField("missBeats", claim.missBeats().toString());
      generator.writeBooleanField("holds", claim.holds());
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }
}
