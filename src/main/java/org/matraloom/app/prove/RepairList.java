package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreEditor;
import org.matraloom.notation.ScoreReader;
import org.matraloom.repair.Repair;
import org.matraloom.repair.Repairs;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;
import org.matraloom.spell.TalaReader;

/**
 * Repairs as a numbered list, no longer than a screen, of which one can be written into a copy.
 *
 * @param repairs the repairs, the smallest first
 * @param options how many are shown, and which is written where
 */
record RepairList(List<Repair> repairs, RepairOptions options) {

  /** Copies the list. */
  RepairList {
    repairs = List.copyOf(repairs);
  }

  /** The talas in which a piece may be set. */
  static List<Tala> talas() {
    return List.copyOf(TalaReader.names().values());
  }

  /** All repairs of a piece. */
  static List<Repair> of(Composition piece, Lexicon lexicon) {
    return Repairs.of(piece, lexicon, talas());
  }

  void print(PrintWriter out) {
    if (repairs.isEmpty()) {
      return;
    }
    out.println("What makes it land, the smallest change first:");
    int shown = Math.min(options.most(), repairs.size());
    for (int i = 0; i < shown; i++) {
      out.println(Paragraph.hanging(5, String.format("%3d  %s", i + 1, repairs.get(i).words())));
    }
    if (shown < repairs.size()) {
      out.println(options.more(repairs.size() - shown));
    }
  }

  /** All repairs, as the field "repairs" of a JSON object. */
  void write(JsonGenerator generator) throws IOException {
    generator.writeArrayFieldStart("repairs");
    for (Repair repair : repairs) {
      generator.writeStartObject();
      generator.writeStringField("kind", repair.kind().name().toLowerCase(Locale.ROOT));
      generator.writeStringField("words", repair.words());
      generator.writeNumberField("cost", repair.cost());
      generator.writeStringField("beats", repair.performance().beats().toString());
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /** The repair of a number, counted from 1. */
  Repair repair(int number) {
    if (number < 1 || number > repairs.size()) {
      String ways =
          repairs.isEmpty() ? "no way; there is none" : "a way from 1 to " + repairs.size();
      throw new UserError("--apply takes " + ways + ", given " + number);
    }
    return repairs.get(number - 1);
  }

  /** Writes changes into a copy of the score. */
  void write(WrittenPiece piece, List<Edit> edits, String words, PrintWriter out)
      throws IOException {
    Path target = options.target(piece.path());
    String text = ScoreEditor.apply(piece.text(), piece.path(), edits, piece.lexicon());
    Reading reading = ScoreReader.read(text, target.toString(), piece.lexicon());
    if (reading.composition().isEmpty()) {
      throw new UserError(
          "this change goes beyond what a score may be: " + reading.problems().get(0).message());
    }
    WholeFile.writeText(target, file -> file.append(text));
    out.println(Paragraph.folded(target + ": " + words + "."));
  }
}
