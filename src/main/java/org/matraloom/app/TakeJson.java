package org.matraloom.app;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.score.Performance;
import org.matraloom.take.Alignment;
import org.matraloom.take.Breathing;
import org.matraloom.take.Evenness;
import org.matraloom.take.ExpectedSollu;
import org.matraloom.take.HabitFound;
import org.matraloom.take.Judgement;
import org.matraloom.take.Landing;
import org.matraloom.take.Practice;
import org.matraloom.take.Pulse;
import org.matraloom.take.Quickening;
import org.matraloom.take.RoundFindings;
import org.matraloom.take.SaidSollu;
import org.matraloom.take.Slip;
import org.matraloom.take.TakeFindings;

/** The findings of a take as JSON; the keys are the names of the records. */
final class TakeJson {

  private static final int SECONDS_PLACES = 6;
  private static final int PLACES = 3;

  private final JsonGenerator json;

  private TakeJson(JsonGenerator json) {
    this.json = json;
  }

  static void write(TakeFindings findings, Performance performance, PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      new TakeJson(json.generator()).write(findings, performance);
    }
  }

  static void write(List<TakeFindings> takes, Performance performance, PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      json.generator().writeStartArray();
      for (TakeFindings findings : takes) {
        new TakeJson(json.generator()).write(findings, performance);
      }
      json.generator().writeEndArray();
    }
  }

  private void write(TakeFindings findings, Performance performance) throws IOException {
    json.writeStartObject();
    Judgement judgement = Judgement.of(findings, performance);
    json.writeStringField("recorded", judgement.recorded().orElse(null));
    json.writeStringField("good", judgement.good());
    json.writeStringField("wrong", judgement.wrong());
    json.writeStringField("practice", judgement.practice().map(Practice::why).orElse(null));
    if (findings.doubt().isPresent()) {
      json.writeStringField("doubt", findings.doubt().get().reason());
    } else {
      json.writeNullField("doubt");
    }
    if (findings.pulse().isPresent()) {
      write(findings.pulse().get());
    } else {
      json.writeNullField("pulse");
    }
    if (findings.landing().isPresent()) {
      write(findings.landing().get());
    } else {
      json.writeNullField("landing");
    }
    json.writeArrayFieldStart("slips");
    for (Slip slip : slips(findings)) {
      json.writeStartObject();
      json.writeNumberField("place", slip.place());
      seconds("seconds", slip.seconds());
      rounded("matras", slip.matras());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rounds");
    for (RoundFindings round : findings.rounds()) {
      write(round);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("changes");
    for (Quickening change : findings.changes()) {
      write(change);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("habits");
    for (HabitFound habit : findings.habits()) {
      write(habit);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("evenness");
    for (Evenness place : findings.evenness()) {
      write(place);
    }
    json.writeEndArray();
    write(findings.breathing());
    write(findings.alignment(), findings);
    json.writeEndObject();
  }

  private static List<Slip> slips(TakeFindings findings) {
    return findings
        .pulse()
        .map(p -> Slip.of(findings.alignment(), findings.sollus(), p.line()))
        .orElse(List.of());
  }

  private void write(Pulse pulse) throws IOException {
    json.writeObjectFieldStart("pulse");
    rounded("beatsPerMinute", pulse.beatsPerMinute());
    rounded("driftPercent", pulse.driftPercent());
    seconds("spreadSeconds", pulse.spreadSeconds());
    if (pulse.leadSeconds().isPresent()) {
      seconds("leadSeconds", pulse.leadSeconds().getAsDouble());
    } else {
      json.writeNullField("leadSeconds");
    }
    json.writeNumberField("runs", pulse.line().runs());
    json.writeEndObject();
  }

  private void write(Landing landing) throws IOException {
    json.writeObjectFieldStart("landing");
    json.writeNumberField("place", landing.place());
    seconds("errorSeconds", landing.errorSeconds());
    rounded("errorMatras", landing.errorMatras());
    json.writeBooleanField("lands", landing.lands());
    json.writeEndObject();
  }

  private void write(RoundFindings round) throws IOException {
    json.writeStartObject();
    json.writeNumberField("round", round.round());
    json.writeStringField("phrase", round.phrase());
    json.writeNumberField("matrasPerBeat", round.matrasPerBeat());
    json.writeNumberField("sollus", round.sollus());
    json.writeNumberField("unrecorded", round.unrecorded());
    json.writeNumberField("missed", round.missed());
    json.writeNumberField("added", round.added());
    rounded("beatsPerMinute", round.beatsPerMinute());
    seconds("spreadSeconds", round.spreadSeconds());
    json.writeEndObject();
  }

  private void write(Quickening change) throws IOException {
    json.writeStartObject();
    json.writeNumberField("place", change.place());
    json.writeNumberField("round", change.round());
    json.writeNumberField("from", change.from());
    json.writeNumberField("to", change.to());
    rounded("ratio", change.ratio());
    rounded("asked", change.asked());
    if (change.beatsUntilSteady().isPresent()) {
      json.writeNumberField("beatsUntilSteady", change.beatsUntilSteady().getAsInt());
    } else {
      json.writeNullField("beatsUntilSteady");
    }
    json.writeEndObject();
  }

  private void write(HabitFound found) throws IOException {
    json.writeStartObject();
    json.writeStringField("habit", found.habit().name());
    json.writeNumberField("round", found.round());
    rounded("amount", found.amount());
    rounded("sure", found.sure());
    json.writeNumberField("beats", found.beats());
    json.writeEndObject();
  }

  private void write(Evenness place) throws IOException {
    json.writeStartObject();
    json.writeNumberField("matrasPerBeat", place.matrasPerBeat());
    json.writeNumberField("matra", place.matra());
    seconds("meanSeconds", place.meanSeconds());
    seconds("spreadSeconds", place.spreadSeconds());
    json.writeNumberField("count", place.count());
    json.writeEndObject();
  }

  private void write(Breathing breathing) throws IOException {
    json.writeObjectFieldStart("breathing");
    seconds("longestSeconds", breathing.longestSeconds());
    json.writeNumberField("longestFromPlace", breathing.longestFromPlace());
    json.writeNumberField("planned", breathing.planned());
    json.writeNumberField("kept", breathing.kept());
    json.writeArrayFieldStart("taken");
    for (Breathing.Pause pause : breathing.taken()) {
      json.writeStartObject();
      json.writeNumberField("afterPlace", pause.afterPlace());
      seconds("atSeconds", pause.atSeconds());
      seconds("seconds", pause.seconds());
      json.writeBooleanField("planned", pause.planned());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
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
      seconds("onsetSeconds", said.onsetSeconds());
      seconds("feltSeconds", said.feltSeconds());
      seconds("deviationSeconds", said.deviationSeconds());
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
      json.writeNumber(text(alignment.onsets().get(onset).seconds(), SECONDS_PLACES));
    }
    json.writeEndArray();
  }

  private void seconds(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(text(value, SECONDS_PLACES));
  }

  private void rounded(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(text(value, PLACES));
  }

  /** A number without an exponent and without a sign before zero. */
  private static String text(double value, int places) {
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    return text.matches("-[0.]+") ? text.substring(1) : text;
  }
}
