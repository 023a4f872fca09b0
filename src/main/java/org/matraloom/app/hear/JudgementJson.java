package org.matraloom.app.hear;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.matraloom.verdict.Judgement;

/** The sentences about a take as fields of a JSON object, and the drill to go on with. */
final class JudgementJson {

  private JudgementJson() {}

  /**
   * Writes the fields into the object that is open.
   *
   * @param json where it goes
   * @param judgement the sentences
   * @param typed turns a drill into what is to be typed
   * @throws IOException if it cannot be written
   */
  static void write(JsonGenerator json, Judgement judgement, TypedDrill typed) throws IOException {
    json.writeStringField("recorded", judgement.recorded().orElse(null));
    json.writeStringField("good", judgement.good());
    json.writeStringField("wrong", judgement.wrong());
    json.writeStringField("practice", judgement.practice().map(PracticeWords::of).orElse(null));
    json.writeStringField("drill", judgement.practice().map(typed::of).orElse(null));
  }
}
