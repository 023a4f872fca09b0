package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.matraloom.app.prove.LandingText;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Remarks;
import org.matraloom.notation.SolluPlaces;
import org.matraloom.paper.Figure;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.HtmlRows;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.SheetWords;

/**
 * A piece that could be read, as the page shows it.
 *
 * @param text the score
 * @param performance what is performed
 * @param sheet its sheet; none that is empty
 */
record ShownPiece(String text, Performance performance, Sheet sheet) {

  /** The page asks for repairs by a button, and whoever looks at it may not know the command. */
  private static final String COMMAND = "; fit tells what does";

  static ShownPiece of(String text, Composition composition, Script script, Lexicon lexicon) {
    Performance performance = Performance.of(composition);
    SheetOptions options =
        new SheetOptions(
            SheetOptions.Lines.AVARTANA, false, false, new SolluWriting(script, lexicon));
    List<Breath> breaths = BreathPlanner.plan(performance, BreathSettings.study()).breaths();
    return new ShownPiece(text, performance, Sheet.of(performance, options, breaths));
  }

  void write(SentRows rows, JsonGenerator json) throws IOException {
    Composition composition = performance.composition();
    Landing landing = Landing.of(performance);
    json.writeStringField("title", composition.title());
    json.writeNumberField("cycle", composition.avartana().beats());
    json.writeNumberField("tempo", composition.tempo().beatsPerMinute().toDouble());
    json.writeBooleanField("lands", landing.lands() && FalseClaim.in(performance).isEmpty());
    String verdict = new LandingText(landing).verdict();
    json.writeStringField("landing", verdict.replace(COMMAND, ""));
    JsonReply.words(json, "remarks", Remarks.on(performance));
    StringBuilder head = new StringBuilder();
    HtmlSheet.titleBlock(sheet, new SheetWords(sheet), head);
    json.writeStringField("head", head.toString());
    StringBuilder close = new StringBuilder();
    HtmlSheet.closing(sheet, close);
    HtmlSheet.signs(sheet, close);
    json.writeStringField("closing", close.toString());
    json.writeStringField("language", sheet.options().writing().script().languageTag());
    hand(composition.avartana(), json);
    rounds(json);
    rows.write(sheet, json);
    places(json);
  }

  /** What the hand does on each beat of an avartana. */
  private static void hand(Avartana avartana, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("hand");
    for (int beat = 0; beat < avartana.beats(); beat++) {
      json.writeStartObject();
      json.writeStringField("figure", HtmlRows.name(Figure.of(avartana.kriyaAt(beat))));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void rounds(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("rounds");
    for (Span.Round round : performance.rounds()) {
      json.writeStartObject();
      json.writeStringField("phrase", round.phrase());
      json.writeNumberField("nadai", round.matrasPerBeat());
      json.writeNumberField("start", round.startBeat().toDouble());
      json.writeNumberField("end", round.endBeat().toDouble());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void places(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("places");
    for (SolluPlaces.Range range : SolluPlaces.of(text, performance)) {
      json.writeNumber(range.from());
      json.writeNumber(range.to());
    }
    json.writeEndArray();
  }
}
