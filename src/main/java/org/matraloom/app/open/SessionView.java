package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.matraloom.app.lesson.LessonPass;
import org.matraloom.score.Lexicon;
import org.matraloom.script.Script;
import org.matraloom.staircase.StairStep;

/**
 * What the page shows of a session.
 *
 * @param kind what it is
 * @param words what is told, a sentence a line
 * @param move where the tempo goes, if something was decided
 * @param pass what is said
 */
record SessionView(
    Kind kind, List<String> words, Optional<StairStep.Move> move, Optional<LessonPass> pass) {

  static final SessionView BEGINNING =
      new SessionView(Kind.BEGINNING, List.of(), Optional.empty(), Optional.empty());

  /** What the page is to do. */
  enum Kind {
    /** To wait. */
    BEGINNING,
    /** To play and record a pass. */
    PASS,
    /** To tell how it went. */
    TOLD,
    /** To let the voice rest. */
    REST,
    /** Nothing more. */
    END
  }

  static SessionView pass(LessonPass pass) {
    return new SessionView(Kind.PASS, List.of(pass.words()), Optional.empty(), Optional.of(pass));
  }

  static SessionView told(StairStep.Move move, String sentence, String decision) {
    return new SessionView(
        Kind.TOLD, List.of(sentence, decision), Optional.of(move), Optional.empty());
  }

  static SessionView rest(String sentence) {
    return new SessionView(Kind.REST, List.of(sentence), Optional.empty(), Optional.empty());
  }

  static SessionView end(String why, List<String> summary) {
    List<String> words = new ArrayList<>(List.of(why));
    words.addAll(summary);
    return new SessionView(Kind.END, List.copyOf(words), Optional.empty(), Optional.empty());
  }

  void write(JsonGenerator json) throws IOException {
    json.writeStringField("kind", kind.name().toLowerCase(Locale.ROOT));
    JsonReply.words(json, "words", words);
    if (move.isPresent()) {
      json.writeStringField("move", move.get().name().toLowerCase(Locale.ROOT));
    }
  }

  /** The sheet of a pass, as that of a score is shown. */
  static void sheet(LessonPass pass, Script script, Lexicon lexicon, JsonGenerator json)
      throws IOException {
    String text = pass.text();
    json.writeStringField("text", text);
    ShownPiece.of(text, pass.composition().named(pass.what()), script, lexicon)
        .write(new SentRows(Set.of()), json);
  }
}
