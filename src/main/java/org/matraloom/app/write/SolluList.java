package org.matraloom.app.write;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Json;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;

/** Prints a lexicon: the sollus with their spellings, and the words for groups. */
final class SolluList {

  private final Lexicon lexicon;

  SolluList(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  void print(PrintWriter out) {
    out.printf(Locale.ROOT, "%d sollus: name, spellings, phones%n", lexicon.sounds().size());
    for (SolluSound sound : lexicon.sounds()) {
      out.printf(
          Locale.ROOT,
          "  %-7s %-32s %s%n",
          sound.name(),
          String.join(" ", sound.spellings()),
          String.join(" ", sound.phones()));
    }
    out.println("Words for groups; the first of a size is the usual one");
    for (int size = 1; size <= Lexicon.LARGEST_OWN_GROUP; size++) {
      for (List<Sollu> words : lexicon.wordChoices(size)) {
        out.printf(Locale.ROOT, "  %-7d %s%n", size, spelt(words));
      }
    }
    out.println("Words for groups in an ending such as 9(1)9(1)9; other sizes as above");
    for (int size = 1; size <= Lexicon.LARGEST_OWN_GROUP; size++) {
      for (GroupWords words : lexicon.moraChoices(size)) {
        out.printf(Locale.ROOT, "  %-7d %s%n", size, words.written());
      }
    }
  }

  void printJson(PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartObject();
      generator.writeArrayFieldStart("sollus");
      for (SolluSound sound : lexicon.sounds()) {
        generator.writeStartObject();
        generator.writeStringField("name", sound.name());
        writeStrings(generator, "spellings", sound.spellings());
        writeStrings(generator, "phones", sound.phones());
        generator.writeEndObject();
      }
      generator.writeEndArray();
      generator.writeArrayFieldStart("words");
      for (int size = 1; size <= Lexicon.LARGEST_OWN_GROUP; size++) {
        for (List<Sollu> words : lexicon.wordChoices(size)) {
          generator.writeStartObject();
          generator.writeNumberField("size", size);
          writeStrings(generator, "sollus", words.stream().map(Sollu::spelling).toList());
          generator.writeEndObject();
        }
      }
      generator.writeEndArray();
      generator.writeArrayFieldStart("wordsInEndings");
      for (int size = 1; size <= Lexicon.LARGEST_OWN_GROUP; size++) {
        for (GroupWords words : lexicon.moraChoices(size)) {
          generator.writeStartObject();
          generator.writeNumberField("size", size);
          generator.writeStringField("written", words.written());
          generator.writeEndObject();
        }
      }
      generator.writeEndArray();
      generator.writeEndObject();
    }
  }

  private static void writeStrings(JsonGenerator generator, String name, List<String> values)
      throws IOException {
    generator.writeArrayFieldStart(name);
    for (String value : values) {
      generator.writeString(value);
    }
    generator.writeEndArray();
  }

  private static String spelt(List<Sollu> words) {
    return words.stream().map(Sollu::spelling).collect(Collectors.joining(" "));
  }
}
