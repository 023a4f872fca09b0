package org.matraloom.app.hear;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.Evenness;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeLanding;

/** The measures of a take as fields and objects of JSON; the keys are the names of the records. */
final class MeasureJson {

  private static final int SECONDS_PLACES = 6;
  private static final int PLACES = 3;

  private final JsonGenerator json;

  MeasureJson(JsonGenerator json) {
    this.json = json;
  }

  void write(Pulse pulse) throws IOException {
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

  /** How it landed; if it is not known which sound is the last sollu, only how it may have. */
  void write(TakeLanding landing, boolean known) throws IOException {
    json.writeObjectFieldStart("landing");
    json.writeNumberField("place", landing.place());
    if (known) {
      seconds("errorSeconds", landing.errorSeconds());
      rounded("errorMatras", landing.errorMatras());
    } else {
      json.writeNullField("errorSeconds");
      json.writeNullField("errorMatras");
      seconds("errorSecondsIfWhole", landing.errorSeconds());
    }
    seconds("giveOrTakeSeconds", landing.giveOrTakeSeconds());
    json.writeBooleanField("lands", known && landing.lands());
    json.writeBooleanField("off", known && landing.isOff());
    json.writeStringField("against", landing.against().words());
    json.writeEndObject();
  }

  void write(RoundFindings round) throws IOException {
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

  void write(SaidNadaiChange change) throws IOException {
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

  void write(HabitFound found) throws IOException {
    json.writeStartObject();
    json.writeStringField("habit", found.habit().name());
    json.writeNumberField("round", found.round());
    rounded("amount", found.amount());
    rounded("sure", found.sure());
    json.writeNumberField("beats", found.beats());
    json.writeEndObject();
  }

  void write(Evenness place) throws IOException {
    json.writeStartObject();
    json.writeNumberField("matrasPerBeat", place.matrasPerBeat());
    json.writeNumberField("matra", place.matra());
    seconds("meanSeconds", place.meanSeconds());
    seconds("spreadSeconds", place.spreadSeconds());
    json.writeNumberField("count", place.count());
    json.writeEndObject();
  }

  void write(BreathFindings breathing) throws IOException {
    json.writeObjectFieldStart("breathing");
    seconds("longestSeconds", breathing.longestSeconds());
    json.writeNumberField("longestFromPlace", breathing.longestFromPlace());
    json.writeNumberField("planned", breathing.planned());
    json.writeNumberField("kept", breathing.kept());
    json.writeArrayFieldStart("taken");
    for (BreathFindings.Pause pause : breathing.taken()) {
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

  void seconds(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(seconds(value));
  }

  void rounded(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(text(value, PLACES));
  }

  /** Seconds as they stand in the JSON. */
  static String seconds(double value) {
    return text(value, SECONDS_PLACES);
  }

  /** A number without an exponent and without a sign before zero. */
  private static String text(double value, int places) {
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    return text.matches("-[0.]+") ? text.substring(1) : text;
  }
}
