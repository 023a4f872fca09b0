package org.matraloom.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a line of the log back.
 *
 * <p>Keys that are not known are passed over, so that an older program reads what a newer one
 * wrote. The same key twice, a value of another kind or something after the record is damage.
 */
final class EntryReader {

  private static final JsonFactory JSON =
      new JsonFactoryBuilder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private Optional<OffsetDateTime> when = Optional.empty();
  private Optional<String> kind = Optional.empty();
  private Optional<String> piece = Optional.empty();
  private Optional<String> voice = Optional.empty();
  private Optional<OffsetDateTime> withdraws = Optional.empty();
  private OptionalDouble tempo = OptionalDouble.empty();
  private Optional<Boolean> clean = Optional.empty();
  private OptionalDouble landingErrorMs = OptionalDouble.empty();
  private OptionalDouble voicedSeconds = OptionalDouble.empty();
  private final List<LogEntry.RoundEntry> rounds = new ArrayList<>();
  private final List<PlaceNote> places = new ArrayList<>();
  private Optional<String> recording = Optional.empty();
  private String remark = "";

  private EntryReader() {}

  /**
   * Reads a line.
   *
   * @param line its bytes, without the line end
   * @param length how many of them
   * @throws IllegalArgumentException if it is no record; the message says why, in a few words
   */
  static LogRecord read(byte[] line, int length) {
    try (JsonParser json = JSON.createParser(line, 0, length)) {
      return new EntryReader().record(json);
    } catch (JsonProcessingException broken) {
      throw new IllegalArgumentException("it is damaged or breaks off", broken);
    } catch (DateTimeException wrong) {
      throw new IllegalArgumentException("its time cannot be read", wrong);
    } catch (IOException wrong) {
      throw new IllegalArgumentException("it is damaged", wrong);
    }
  }

  private LogRecord record(JsonParser json) throws IOException {
    require(json.nextToken() == JsonToken.START_OBJECT, "it is not a record");
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String key = json.currentName();
      json.nextToken();
      value(key, json);
    }
    require(json.nextToken() == null, "something follows the record");
    require(when.isPresent() && kind.isPresent(), "a value is missing");
    if (kind.get().equals(EntryLine.VOICE)) {
      require(voice.isPresent(), "a value is missing");
      return new LogRecord.UsualVoice(when.get(), voice.get());
    }
    require(piece.isPresent(), "a value is missing");
    if (kind.get().equals(EntryLine.WITHDRAWAL)) {
      require(withdraws.isPresent(), "a value is missing");
      return new LogRecord.Withdrawal(when.get(), piece.get(), withdraws.get());
    }
    return new LogEntry(
        when.get(),
        kind(kind.get()),
        piece.get(),
        tempo,
        new LogEntry.Outcome(clean, landingErrorMs, rounds, places),
        voicedSeconds.orElse(0),
        recording,
        remark);
  }

  private void value(String key, JsonParser json) throws IOException {
    switch (key) {
      case "when" -> when = Optional.of(OffsetDateTime.parse(text(json)));
      case "kind" -> kind = Optional.of(text(json));
      case "piece" -> piece = Optional.of(text(json));
      case "voice" -> voice = Optional.of(text(json));
      case "withdraws" -> withdraws = Optional.of(OffsetDateTime.parse(text(json)));
      case "tempo" -> tempo = OptionalDouble.of(number(json));
      case "clean" -> clean = Optional.of(truth(json));
      case "landingErrorMs" -> landingErrorMs = OptionalDouble.of(number(json));
      case "voicedSeconds" -> voicedSeconds = OptionalDouble.of(number(json));
      case "rounds" -> rounds(json);
      case "places" -> places(json);
      case "recording" -> recording = Optional.of(text(json));
      case "remark" -> remark = text(json);
      default -> json.skipChildren();
    }
  }

  private static LogEntry.Kind kind(String name) {
    return Arrays.stream(LogEntry.Kind.values())
        .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("its kind is not known"));
  }

  private void rounds(JsonParser json) throws IOException {
    require(json.currentToken() == JsonToken.START_ARRAY, "rounds is not a list");
    while (json.nextToken() != JsonToken.END_ARRAY) {
      rounds.add(round(json));
    }
  }

  private static LogEntry.RoundEntry round(JsonParser json) throws IOException {
    require(json.currentToken() == JsonToken.START_OBJECT, "a round is not a record");
    int round = 0;
    int nadai = 0;
    double tempo = 0;
    boolean clean = false;
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String key = json.currentName();
      json.nextToken();
      switch (key) {
        case "round" -> round = (int) number(json);
        case "nadai" -> nadai = (int) number(json);
        case "tempo" -> tempo = number(json);
        case "clean" -> clean = truth(json);
        default -> json.skipChildren();
      }
    }
    return new LogEntry.RoundEntry(round, nadai, tempo, clean);
  }

  private void places(JsonParser json) throws IOException {
    require(json.currentToken() == JsonToken.START_ARRAY, "places is not a list");
    while (json.nextToken() != JsonToken.END_ARRAY) {
      place(json).ifPresent(places::add);
    }
  }

  /** Empty if it is of a kind that only a later program knows; what follows is passed over. */
  private static Optional<PlaceNote> place(JsonParser json) throws IOException {
    require(json.currentToken() == JsonToken.START_ARRAY, "a place is not a list");
    json.nextToken();
    String kind = text(json);
    json.nextToken();
    int round = (int) number(json);
    json.nextToken();
    String name = text(json);
    json.nextToken();
    double off = number(json);
    while (json.nextToken() != JsonToken.END_ARRAY) {
      json.skipChildren();
    }
    return Arrays.stream(ScorePlace.Kind.values())
        .filter(known -> known.name().toLowerCase(Locale.ROOT).equals(kind))
        .map(known -> new PlaceNote(new ScorePlace(known, round, name), off))
        .findFirst();
  }

  private static String text(JsonParser json) throws IOException {
    require(json.currentToken() == JsonToken.VALUE_STRING, "a value is not a text");
    return json.getText();
  }

  private static double number(JsonParser json) throws IOException {
    require(json.currentToken().isNumeric(), "a value is not a number");
    return json.getDoubleValue();
  }

  private static boolean truth(JsonParser json) throws IOException {
    require(json.currentToken().isBoolean(), "a value is neither true nor false");
    return json.getBooleanValue();
  }

  private static void require(boolean holds, String reason) {
    if (!holds) {
      throw new IllegalArgumentException(reason);
    }
  }
}
