package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorRequest;

/**
 * What a page has sent: an object of JSON whose values are words and numbers.
 *
 * @param values the values by name, as text
 */
record JsonFields(Map<String, String> values) {

  private static final JsonFactory FACTORY = new JsonFactory();

  /** Reads what was sent along. */
  static JsonFields of(DoorRequest request) throws IOException {
    Map<String, String> values = new HashMap<>();
    try (JsonParser json = FACTORY.createParser(request.body())) {
      require(json.nextToken() == JsonToken.START_OBJECT);
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String name = json.currentName();
        JsonToken value = json.nextToken();
        require(value.isScalarValue());
        if (value != JsonToken.VALUE_NULL) {
          values.put(name, json.getText());
        }
      }
    } catch (JsonParseException noJson) {
      require(false);
    }
    return new JsonFields(values);
  }

  private static void require(boolean holds) {
    if (!holds) {
      throw new UserError("what was sent is no flat object of JSON");
    }
  }

  String text(String name) {
    return find(name).orElseThrow(() -> new UserError("what was sent lacks " + name));
  }

  Optional<String> find(String name) {
    return Optional.ofNullable(values.get(name));
  }

  int number(String name) {
    try {
      return Integer.parseInt(text(name));
    } catch (NumberFormatException noNumber) {
      throw new UserError(name + " is a whole number, given " + text(name));
    }
  }

  boolean isSet(String name) {
    return "true".equals(values.get(name));
  }
}
