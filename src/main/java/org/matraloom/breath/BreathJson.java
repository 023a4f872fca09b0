package org.matraloom.breath;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;

/** Writes a plan for another program; positions are exact, as strings like "56" or "224/5". */
public final class BreathJson {

  private BreathJson() {}

  /**
   * Writes a plan as one JSON object, keys in a fixed order.
   *
   * @param plan the plan
   * @param cures what would make an impossible piece possible
   * @param out where it is written; flushed, not closed
   * @throws IOException if {@code out} fails
   */
  public static void write(BreathPlan plan, List<Cure> cures, Writer out) throws IOException {
    JsonGenerator json = new JsonFactory().createGenerator(out);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.useDefaultPrettyPrinter();
    json.writeStartObject();
    json.writeStringField("title", plan.performance().composition().title());
    json.writeStringField(
        "tempo", plan.performance().composition().tempo().beatsPerMinute().toString());
    json.writeBooleanField("possible", plan.isPossible());
    json.writeNumberField("longestSeconds", plan.settings().longestSeconds().toDouble());
    json.writeNumberField("longestSollus", plan.settings().longestSollus());
    json.writeNumberField("cost", plan.cost());
    json.writeArrayFieldStart("breaths");
    for (Breath breath : plan.breaths()) {
      write(breath, json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("stretches");
    for (Stretch stretch : plan.stretches()) {
      write(stretch, stretch.isTooLong(plan.settings()), json);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cures");
    for (Cure cure : cures) {
      json.writeStartObject();
      json.writeStringField("kind", word(cure.kind()));
      json.writeStringField("words", cure.words());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("care");
    for (String sentence : Care.of(plan)) {
      json.writeString(sentence);
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.close();
  }

  private static void write(Breath breath, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeNumberField("round", breath.round());
    json.writeStringField("after", breath.after());
    json.writeStringField("afterBeat", breath.afterBeat().toString());
    json.writeStringField("beat", breath.startBeat().toString());
    json.writeStringField("beats", breath.beats().toString());
    json.writeNumberField("seconds", breath.seconds().toDouble());
    json.writeStringField("kind", word(breath.kind()));
    json.writeStringField("from", word(breath.source()));
    json.writeStringField("cutBeats", breath.cutBeats().toString());
    json.writeBooleanField("endsPhrase", breath.endsPhrase());
    json.writeBooleanField("beforeNadaiChange", breath.beforeChange());
    json.writeEndObject();
  }

  private static void write(Stretch stretch, boolean tooLong, JsonGenerator json)
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
