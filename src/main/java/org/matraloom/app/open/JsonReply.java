package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.matraloom.door.DoorReply;

/** A reply in JSON. */
final class JsonReply {

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String TYPE = "application/json; charset=utf-8";

  /** Writes the fields of an object. */
  interface Fields {
    void to(JsonGenerator json) throws IOException;
  }

  private JsonReply() {}

  /** An object. */
  static DoorReply of(Fields fields) throws IOException {
    return of(DoorReply.OK, fields);
  }

  /** An object with another status. */
  static DoorReply of(int status, Fields fields) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.writeStartObject();
      fields.to(json);
      json.writeEndObject();
    }
    return new DoorReply(status, TYPE, Map.of(), out.toByteArray());
  }

  /** JSON that is there already. */
  static DoorReply ready(byte[] json) {
    return DoorReply.of(TYPE, json);
  }

  /** A field that is a list of words. */
  static void words(JsonGenerator json, String name, List<String> words) throws IOException {
    json.writeArrayFieldStart(name);
    for (String word : words) {
      json.writeString(word);
    }
    json.writeEndArray();
  }
}
