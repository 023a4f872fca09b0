package org.matraloom.app.practise;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.Json;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathStretch;
import org.matraloom.breath.Care;
import org.matraloom.breath.Cure;
import org.matraloom.breath.PlanTerm;
import org.matraloom.spell.ScorePrinter;

/** Writes a plan for another program; positions are exact, as strings like "56" or "224/5". */
final class BreathJson {

  private BreathJson() {}

  static void write(BreathPlan plan, List<Cure> cures, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      write(plan, cures, json.generator());
    }
  }

  private static void write(BreathPlan plan, List<Cure> cures, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("title", plan.performance().composition().title());
    json.writeStringField(
        "tempo", plan.performance().composition().tempo().beatsPerMinute().toString());
    json.writeBooleanField("possible", plan.isPossible());
    json.writeNumberField("longestSeconds", plan.settings().longestSeconds().toDouble());
    json.writeNumberField("longestSollus", plan.settings().longestSollus());
    json.writeObjectFieldStart("cost");
    for (PlanTerm term : PlanTerm.values()) {
      json.writeNumberField(term.words(), plan.cost().of(term));
    }
    json.writeEndObject();
    json.writeStringField("way", word(plan.settings().way()));
    json.writeArrayFieldStart("breaths");
    for (Breath breath : plan.breaths()) {
      write(breath, json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("stretches");
    for (BreathStretch stretch : plan.stretches()) {
      write(stretch, stretch.isTooLong(plan.settings()), json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("notes");
    for (String note : plan.notes()) {
      json.writeString(note);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cures");
    for (Cure cure : cures) {
      json.writeStartObject();
      json.writeStringField("kind", word(cure.kind()));
      json.writeStringField("words", cure.words());
      json.writeStringField("score", ScorePrinter.print(cure.composition()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("care");
    for (String sentence : Care.of(plan)) {
      json.writeString(sentence);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(Breath breath, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeNumberField("round", breath.round());
    json.writeStringField("after", breath.after().sollu());
    json.writeStringField("afterBeat", breath.afterBeat().toString());
    json.writeStringField("beat", breath.startBeat().toString());
    json.writeStringField("beats", breath.beats().toString());
    json.writeNumberField("seconds", breath.seconds().toDouble());
    json.writeStringField("kind", word(breath.kind()));
    json.writeStringField("from", word(breath.air().source()));
    json.writeStringField("cutBeats", breath.air().cutBeats().toString());
    json.writeStringField("joint", breath.joint().word());
    json.writeBooleanField("endsPhrase", breath.joint().endsPhrase());
    json.writeBooleanField("beforeNadaiChange", breath.beforeChange());
    json.writeStringField("why", breath.why());
    json.writeEndObject();
  }

  private static void write(BreathStretch stretch, boolean tooLong, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeNumberField("round", stretch.round());
    json.writeStringField("phrase", stretch.phrase());
    json.writeStringField("beat", stretch.startBeat().toString());
    json.writeStringField("endBeat", stretch.endBeat().toString());
    json.writeNumberField("seconds", stretch.seconds().toDouble());
    json.writeNumberField("sollus", stretch.sollus());
    json.writeBooleanField("tooLong", tooLong);
    json.writeEndObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
