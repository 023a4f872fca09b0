package org.matraloom.app.open;

import java.io.IOException;
import java.util.List;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.log.History;
import org.matraloom.pasted.PastedText;
import org.matraloom.pasted.TidyScore;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;

/** The scores of the folder, and what is done with them as a whole. */
final class ShelfAnswers {

  private static final String NEW_PIECE =
      """
      title   %s
      tala    adi
      tempo   60

      Song = (takadimi takajunu) x4

      perform
        Song   nadai 4
      """;

  private final OpenDesk desk;
  private final ScoreFolder scores;
  private final KnownScores known;

  ShelfAnswers(OpenDesk desk) {
    this.desk = desk;
    this.scores = desk.scores();
    this.known = new KnownScores(scores, desk.lexicon());
  }

  DoorReply list() throws IOException {
    History history = desk.log().read();
    List<ScoreName> names = scores.names();
    List<ShelfFacts> facts = known.of(names);
    List<String> bin = scores.inBin().stream().map(ScoreName::file).toList();
    return JsonReply.of(
        json -> {
          json.writeStringField("folder", String.valueOf(scores.folder().getFileName()));
          json.writeArrayFieldStart("scores");
          for (int i = 0; i < names.size(); i++) {
            json.writeStartObject();
            json.writeStringField("name", names.get(i).file());
            new ShelfEntry(facts.get(i), history).write(json);
            json.writeEndObject();
          }
          json.writeEndArray();
          JsonReply.words(json, "bin", bin);
          JsonReply.words(json, "samples", Samples.NAMES);
        });
  }

  DoorReply create(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    if (sent.find("pasted").isPresent()) {
      TidyScore tidy = PastedText.tidy(sent.text("pasted"), desk.lexicon());
      ScoreName name = scores.create(wished(sent, "pasted"), tidy.score());
      return named(name, tidy.guesses());
    }
    if (sent.find("sample").isPresent()) {
      String sample = sent.text("sample");
      return named(scores.create(ScoreName.of(sample), Samples.text(sample)), List.of());
    }
    String title = sent.find("title").filter(given -> !given.isBlank()).orElse("New piece");
    String line = title.strip().replaceAll("[\\p{Cntrl}#]+", " ");
    return named(
        scores.create(ScoreName.ofTitle(title), String.format(NEW_PIECE, line)), List.of());
  }

  private static ScoreName wished(JsonFields sent, String usual) {
    return ScoreName.ofTitle(sent.find("title").filter(title -> !title.isBlank()).orElse(usual));
  }

  DoorReply rename(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    ScoreName other = ScoreName.of(sent.text("to"));
    ScoreName name = new ScoreName(sent.text("name"));
    scores.rename(name, other);
    HandOnAnswers.follow(scores.folder(), name, other);
    return named(other, List.of());
  }

  DoorReply copy(DoorRequest request) throws IOException {
    ScoreName name = new ScoreName(JsonFields.of(request).text("name"));
    return named(scores.create(name, scores.read(name).text()), List.of());
  }

  DoorReply discard(DoorRequest request) throws IOException {
    ScoreName name = new ScoreName(JsonFields.of(request).text("name"));
    scores.discard(name);
    return named(name, List.of());
  }

  DoorReply bringBack(DoorRequest request) throws IOException {
    ScoreName name = new ScoreName(JsonFields.of(request).text("name"));
    return named(scores.bringBack(name), List.of());
  }

  private static DoorReply named(ScoreName name, List<String> guesses) throws IOException {
    return JsonReply.of(
        json -> {
          json.writeStringField("name", name.file());
          JsonReply.words(json, "guesses", guesses);
        });
  }
}
