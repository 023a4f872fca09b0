package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Comparator;
import java.util.Optional;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;

/**
 * What the shelf says of one score.
 *
 * @param facts what its text tells
 * @param history the practice log
 */
record ShelfEntry(ShelfFacts facts, History history) {

  void write(JsonGenerator json) throws IOException {
    facts.write(json);
    Optional<String> title = facts.practisedAs();
    if (title.isPresent()) {
      practised(title.get(), json);
    }
  }

  private void practised(String title, JsonGenerator json) throws IOException {
    Optional<LogEntry> latest =
        history.of(title).stream().max(Comparator.comparing(entry -> entry.when().toInstant()));
    if (latest.isPresent()) {
      json.writeStringField("practised", latest.get().when().toLocalDate().toString());
    }
    var clean =
        CleanTempo.of(history, title).get(0).points().stream()
            .filter(CleanTempo.Point::clean)
            .mapToDouble(CleanTempo.Point::tempo)
            .max();
    if (clean.isPresent()) {
      json.writeNumberField("clean", Math.round(clean.getAsDouble()));
    }
  }
}
