package org.matraloom.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.paper.Figure;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.score.TalaSections;
import org.matraloom.score.TalaTurn;
import org.matraloom.sheet.HtmlRows;
import org.matraloom.sheet.Mark;
import org.matraloom.sheet.RoundPart;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.Ratio;

/** What the script of a phone page must know: the score in beats and the sounds, as JSON. */
final class PageScore {

  private final Sheet sheet;
  private final PageSound sound;
  private final SheetWords words;
  private final Avartana avartana;

  PageScore(Sheet sheet, PageSound sound) {
    this.sheet = sheet;
    this.sound = sound;
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().avartana();
  }

  void write(Appendable out) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      Ratio tempo = sheet.performance().composition().tempo().beatsPerMinute();
      json.writeNumberField("tempo", tempo.toDouble());
      json.writeNumberField("cycle", TalaSections.of(avartana).get(0).avartana().beats());
      json.writeNumberField("start", sheet.performance().startBeat().toDouble());
      json.writeNumberField("end", sheet.performance().handEndBeat().toDouble());
      beats("rows", sheet.rows().stream().map(Row::startBeat).toList(), json);
      beats("marks", marks().stream().map(Mark::beat).toList(), json);
      beats("rounds", rounds(), json);
      json.writeNumberField("countIn", countIn(sound.beside().leadIn()));
      if (sound.beside().droneHertz().isPresent()) {
        json.writeNumberField("drone", sound.beside().droneHertz().get());
      }
      hand(json);
      talas(json);
      turns(json);
      events(json);
      sound(json);
      json.writeEndObject();
    }
    out.append(text.toString().replace("<", "\\u003c"));
  }

  private List<Mark> marks() {
    return sheet.rows().stream()
        .flatMap(row -> row.cells().stream())
        .flatMap(cell -> cell.marks().stream())
        .toList();
  }

  private List<Ratio> rounds() {
    return sheet.performance().rounds().stream().map(Span.Round::startBeat).toList();
  }

  private static void beats(String name, List<Ratio> beats, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart(name);
    for (Ratio beat : beats) {
      json.writeNumber(beat.toDouble());
    }
    json.writeEndArray();
  }

  private void hand(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("hand");
    for (TalaTurn part : TalaSections.of(avartana)) {
      for (int beat = 0; beat < part.avartana().beats(); beat++) {
        Kriya kriya = part.avartana().kriyaAt(beat);
        json.writeStartObject();
        json.writeStringField("figure", HtmlRows.name(Figure.of(kriya)));
        json.writeStringField("word", words.kriya(kriya));
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  /** Where each tala begins, how long its cycle is and where its kriyas stand in the list. */
  private void talas(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("talas");
    int first = 0;
    for (TalaTurn part : TalaSections.of(avartana)) {
      json.writeStartObject();
      json.writeNumberField("beat", part.beat());
      json.writeNumberField("cycle", part.avartana().beats());
      json.writeNumberField("first", first);
      json.writeEndObject();
      first += part.avartana().beats();
    }
    json.writeEndArray();
  }

  /** Where a round begins or a nadai changes, each with its words. */
  private void turns(JsonGenerator json) throws IOException {
    TreeMap<Ratio, String> turns = new TreeMap<>();
    for (Row row : sheet.rows()) {
      row.turns().forEach(turn -> turns.put(turn.beat(), words.nadai(turn.matrasPerBeat())));
    }
    for (Row row : sheet.rows()) {
      row.parts().stream()
          .filter(RoundPart::opensHere)
          .forEach(part -> turns.put(part.from(), words.roundHeading(part)));
    }
    for (Notice notice : sheet.performance().notices()) {
      if (notice.step() instanceof Step.Part || notice.step() instanceof Step.ToTala) {
        turns.merge(notice.beat(), notice.words().orElse(""), (words, name) -> name + ": " + words);
      }
    }
    json.writeArrayFieldStart("turns");
    for (Ratio beat : turns.keySet()) {
      json.writeStartObject();
      json.writeNumberField("beat", beat.toDouble());
      json.writeStringField("words", turns.get(beat));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Avartanas that are counted in before the first one: those with words, at least one. */
  private static int countIn(Optional<Integer> leadIn) {
    return leadIn.map(avartanas -> Math.max(1, avartanas)).orElse(1);
  }

  /**
   * What is heard of a performance; with words from samam, if the avartana of its start has them.
   */
  static Timeline timeline(Performance performance, Optional<Integer> leadIn) {
    int counted = leadIn.isPresent() ? countIn(leadIn) : 0;
    return SpokenLeadIn.before(ScoreTimeline.of(performance, counted), leadIn);
  }

  private void events(JsonGenerator json) throws IOException {
    Timeline timeline = timeline(sheet.performance(), sound.beside().leadIn());
    json.writeArrayFieldStart("ticks");
    for (Event event : timeline) {
      if (event instanceof Event.Tick tick && tick.round() > 0) {
        json.writeNumber(tick.beat().toDouble());
      }
    }
    json.writeEndArray();
    json.writeArrayFieldStart("sollus");
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid said) {
        json.writeNumber(said.beat().toDouble());
      }
    }
    json.writeEndArray();
  }

  private void sound(JsonGenerator json) throws IOException {
    List<Integer> percents = sound.sollus().keySet().stream().sorted().toList();
    json.writeArrayFieldStart("percents");
    for (int percent : percents) {
      json.writeNumber(percent);
    }
    json.writeEndArray();
    json.writeObjectFieldStart("sound");
    json.writeNumberField("rate", sound.ratePerSecond());
    json.writeArrayFieldStart("steps");
    for (int step : PackedClip.STEPS) {
      json.writeNumber(step);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("clips");
    for (PageSound.Clip clip : sound.clips()) {
      PackedClip packed = PackedClip.of(clip.samples());
      json.writeStartObject();
      json.writeNumberField("lead", clip.leadFrames());
      json.writeNumberField("length", packed.length());
      json.writeNumberField("index", packed.index());
      json.writeStringField("data", Base64.getEncoder().encodeToString(packed.codes()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("hand");
    for (Optional<PageSound.Stroke> stroke : sound.hand()) {
      if (stroke.isPresent()) {
        stroke(stroke.get(), json);
      } else {
        json.writeNull();
      }
    }
    json.writeEndArray();
    json.writeFieldName("tick");
    stroke(sound.tick(), json);
    json.writeNumberField("voiceGain", sound.voiceGain());
    json.writeArrayFieldStart("voice");
    for (int percent : percents) {
      json.writeStartArray();
      for (int clip : sound.sollus().get(percent)) {
        json.writeNumber(clip);
      }
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void stroke(PageSound.Stroke stroke, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeNumberField("clip", stroke.clip());
    json.writeNumberField("gain", stroke.gain());
    json.writeEndObject();
  }
}
