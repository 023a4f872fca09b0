package org.matraloom.app.hear;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.Json;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.Evenness;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TimingJump;
import org.matraloom.score.Performance;
import org.matraloom.verdict.Judgement;

/** The findings of a take as JSON; the keys are the names of the records. */
final class TakeJson {

  private final JsonGenerator json;
  private final MeasureJson measures;
  private final TypedDrill typed;
  private final Optional<String> mouth;

  private TakeJson(JsonGenerator json, TypedDrill typed, Optional<String> mouth) {
    this.mouth = mouth;
    this.json = json;
    this.measures = new MeasureJson(json);
    this.typed = typed;
  }

  static void write(
      TakeFindings findings,
      Performance performance,
      TypedDrill typed,
      Optional<String> mouth,
      PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      new TakeJson(json.generator(), typed, mouth).write(findings, performance);
    }
  }

  static void write(
      List<TakeFindings> takes,
      Performance performance,
      TypedDrill typed,
      Optional<String> mouth,
      PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      json.generator().writeStartArray();
      for (TakeFindings findings : takes) {
        new TakeJson(json.generator(), typed, mouth).write(findings, performance);
      }
      json.generator().writeEndArray();
    }
  }

  private void write(TakeFindings findings, Performance performance) throws IOException {
    json.writeStartObject();
    Judgement judgement = Judgement.of(findings, performance);
    JudgementJson.write(json, judgement, typed);
    json.writeStringField("mouth", mouth.orElse(null));
    if (findings.doubt().isPresent()) {
      json.writeStringField("doubt", findings.doubt().get().reason());
    } else {
      json.writeNullField("doubt");
    }
    if (findings.alignment().unsure().isPresent()) {
      json.writeStringField("unsure", findings.alignment().unsure().get().words());
    } else {
      json.writeNullField("unsure");
    }
    json.writeBooleanField("lands", findings.lands());
    if (findings.pulse().isPresent()) {
      measures.write(findings.pulse().get());
    } else {
      json.writeNullField("pulse");
    }
    if (findings.landing().isPresent()) {
      measures.write(findings.landing().get(), findings.knownLanding().isPresent());
    } else {
      json.writeNullField("landing");
    }
    json.writeArrayFieldStart("slips");
    for (TimingJump slip : slips(findings)) {
      json.writeStartObject();
      json.writeNumberField("place", slip.place());
      measures.seconds("seconds", slip.seconds());
      measures.rounded("matras", slip.matras());
      json.writeBooleanField("waited", slip.waited());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rounds");
    for (RoundFindings round : findings.rounds()) {
      measures.write(round);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("changes");
    for (SaidNadaiChange change : findings.changes()) {
      measures.write(change);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("habits");
    for (HabitFound habit : findings.habits()) {
      measures.write(habit);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("evenness");
    for (Evenness place : findings.evenness()) {
      measures.write(place);
    }
    json.writeEndArray();
    measures.write(findings.breathing());
    write(findings.alignment(), findings);
    json.writeEndObject();
  }

  private static List<TimingJump> slips(TakeFindings findings) {
    return findings
        .pulse()
        .map(p -> TimingJump.of(findings.alignment(), findings.sollus(), p.line()))
        .orElse(List.of());
  }

  private void write(Alignment alignment, TakeFindings findings) throws IOException {
    json.writeArrayFieldStart("sollus");
    for (SaidSollu said : findings.sollus()) {
      ExpectedSollu asked = alignment.expected().get(said.place());
      json.writeStartObject();
      json.writeNumberField("place", said.place());
      json.writeStringField("sollu", asked.sollu().spelling());
      json.writeStringField("beat", asked.beat().toString());
      json.writeNumberField("round", asked.round());
      json.writeNumberField("run", said.run());
      measures.seconds("onsetSeconds", said.onsetSeconds());
      measures.seconds("feltSeconds", said.feltSeconds());
      measures.seconds("deviationSeconds", said.deviationSeconds());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeNumberField("recordedFrom", alignment.recorded().from());
    json.writeNumberField("recordedTo", alignment.recorded().to());
    json.writeArrayFieldStart("missed");
    for (int place : alignment.missed()) {
      json.writeNumber(place);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("addedSeconds");
    for (int onset : alignment.added()) {
      json.writeNumber(MeasureJson.seconds(alignment.onsets().get(onset).seconds()));
    }
    json.writeEndArray();
  }
}
