package org.matraloom.app.open;

import java.io.IOException;
import java.util.List;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.shelf.KeptVersion;
import org.matraloom.shelf.SaveOutcome;
import org.matraloom.shelf.SavedText;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;

/** The text of a score: read, saved, as it was before. */
final class TextAnswers {

  private final ScoreFolder scores;

  TextAnswers(ScoreFolder scores) {
    this.scores = scores;
  }

  DoorReply read(DoorRequest request) throws DoorFault, IOException {
    return told(DoorReply.OK, scores.read(name(request)));
  }

  DoorReply stamp(DoorRequest request) throws DoorFault, IOException {
    String stamp = scores.read(name(request)).stamp();
    return JsonReply.of(json -> json.writeStringField("stamp", stamp));
  }

  /** What another has written meanwhile comes back with the status of a conflict. */
  DoorReply save(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    ScoreName name = new ScoreName(sent.text("name"));
    SaveOutcome outcome = scores.save(name, sent.text("text"), sent.text("stamp"));
    if (outcome instanceof SaveOutcome.Changed changed) {
      return told(DoorReply.CONFLICT, changed.now());
    }
    String stamp = ((SaveOutcome.Saved) outcome).stamp();
    return JsonReply.of(json -> json.writeStringField("stamp", stamp));
  }

  DoorReply versions(DoorRequest request) throws DoorFault, IOException {
    List<KeptVersion> versions = scores.versions().of(name(request));
    return JsonReply.of(
        json -> {
          json.writeArrayFieldStart("versions");
          for (KeptVersion version : versions) {
            json.writeStartObject();
            json.writeStringField("id", version.id());
            json.writeNumberField("when", version.whenMs());
            json.writeNumberField("bytes", version.bytes());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  DoorReply version(DoorRequest request) throws DoorFault, IOException {
    String text = scores.versions().text(name(request), request.value("id"));
    return JsonReply.of(json -> json.writeStringField("text", text));
  }

  private static ScoreName name(DoorRequest request) throws DoorFault {
    return new ScoreName(request.value("name"));
  }

  private static DoorReply told(int status, SavedText saved) throws IOException {
    return JsonReply.of(
        status,
        json -> {
          json.writeStringField("text", saved.text());
          json.writeStringField("stamp", saved.stamp());
        });
  }
}
