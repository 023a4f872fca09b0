package org.matraloom.app.open;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.matraloom.door.DoorReply;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.script.Script;
import org.matraloom.sheet.HtmlRows;
import org.matraloom.spell.TalaReader;

/** The words that the editor can offer. */
final class Vocabulary {

  private static final List<String> HEADERS =
      List.of("title", "tala", "kalai", "tempo", "start", "eduppu", "perform");

  private Vocabulary() {}

  static DoorReply of(Lexicon lexicon) throws IOException {
    return JsonReply.of(
        json -> {
          JsonReply.words(
              json,
              "sollus",
              lexicon.sounds().stream().map(sound -> sound.name()).distinct().toList());
          JsonReply.words(json, "talas", List.copyOf(TalaReader.names().keySet()));
          JsonReply.words(json, "headers", HEADERS);
          JsonReply.words(
              json, "scripts", Arrays.stream(Script.values()).map(Scripts::name).toList());
          StringBuilder figures = new StringBuilder();
          HtmlRows.figures(figures);
          json.writeStringField("figures", figures.toString());
          json.writeArrayFieldStart("groups");
          for (int size = 1; size <= Lexicon.LARGEST_GROUP; size++) {
            json.writeStartArray();
            for (List<Sollu> words : lexicon.wordChoices(size)) {
              json.writeString(String.join("", words.stream().map(Sollu::spelling).toList()));
            }
            json.writeEndArray();
          }
          json.writeEndArray();
        });
  }
}
