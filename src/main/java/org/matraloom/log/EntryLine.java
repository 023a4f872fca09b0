package org.matraloom.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** A record as one line of JSON (RFC 8259), keys always in one order. */
final class EntryLine {

  /** The kind of a line that takes another back. */
  static final String WITHDRAWAL = "withdrawal";

  /** The kind of a line that names the usual voice. */
  static final String VOICE = "voice";

  private static final JsonFactory JSON = new JsonFactory();

  private EntryLine() {}

  /** The line, without its end. */
  static String of(LogEntry entry) {
    StringWriter text = new StringWriter();
    try (JsonGenerator line = JSON.createGenerator(text)) {
      line.writeStartObject();
      line.writeStringField("when", time(entry.when()));
      line.writeStringField("kind", entry.kind().name().toLowerCase(Locale.ROOT));
      line.writeStringField("piece", entry.piece());
      if (entry.tempo().isPresent()) {
        line.writeNumberField("tempo", entry.tempo().getAsDouble());
      }
      if (entry.clean().isPresent()) {
        line.writeBooleanField("clean", entry.clean().get());
      }
      if (entry.landingErrorMs().isPresent()) {
        line.writeNumberField("landingErrorMs", entry.landingErrorMs().getAsDouble());
      }
      line.writeNumberField("voicedSeconds", entry.voicedSeconds());
      if (!entry.rounds().isEmpty()) {
        rounds(entry, line);
      }
      if (!entry.outcome().places().isEmpty()) {
        places(entry, line);
      }
      if (entry.recording().isPresent()) {
        line.writeStringField("recording", entry.recording().get());
      }
      if (!entry.remark().isEmpty()) {
        line.writeStringField("remark", entry.remark());
      }
      line.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory cannot fail", impossible);
    }
    return text.toString();
  }

  /** The line that takes another back, without its end. */
  static String of(LogRecord.Withdrawal withdrawal) {
    StringWriter text = new StringWriter();
    try (JsonGenerator line = JSON.createGenerator(text)) {
      line.writeStartObject();
      line.writeStringField("when", time(withdrawal.when()));
      line.writeStringField("kind", WITHDRAWAL);
      line.writeStringField("piece", withdrawal.piece());
      line.writeStringField("withdraws", time(withdrawal.withdraws()));
      line.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory cannot fail", impossible);
    }
    return text.toString();
  }

  /** The line that names the usual voice, without its end. */
  static String of(LogRecord.UsualVoice usual) {
    StringWriter text = new StringWriter();
    try (JsonGenerator line = JSON.createGenerator(text)) {
      line.writeStartObject();
      line.writeStringField("when", time(usual.when()));
      line.writeStringField("kind", VOICE);
      line.writeStringField("voice", usual.voice());
      line.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory cannot fail", impossible);
    }
    return text.toString();
  }

  private static String time(OffsetDateTime when) {
    return when.truncatedTo(ChronoUnit.SECONDS).toString();
  }

  private static void rounds(LogEntry entry, JsonGenerator line) throws IOException {
    line.writeArrayFieldStart("rounds");
    for (LogEntry.RoundEntry round : entry.rounds()) {
      line.writeStartObject();
      line.writeNumberField("round", round.round());
      line.writeNumberField("nadai", round.nadai());
      line.writeNumberField("tempo", round.tempo());
      line.writeBooleanField("clean", round.clean());
      line.writeEndObject();
    }
    line.writeEndArray();
  }

  /** Each is kind, round, name and how far off, in an array: there are many of them. */
  private static void places(LogEntry entry, JsonGenerator line) throws IOException {
    line.writeArrayFieldStart("places");
    for (PlaceNote note : entry.outcome().places()) {
      line.writeStartArray();
      line.writeString(note.place().kind().name().toLowerCase(Locale.ROOT));
      line.writeNumber(note.place().round());
      line.writeString(note.place().name());
      line.writeNumber(note.off());
      line.writeEndArray();
    }
    line.writeEndArray();
  }
}
