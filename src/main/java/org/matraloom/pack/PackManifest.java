package org.matraloom.pack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.loudness.Levels;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.wav.WholeText;

/** The list of a set, as JSON; it also tells to which order a folder belongs. */
final class PackManifest {

  private static final String NAME = "manifest.json";

  /** Goes into the fingerprint; a change of the sound or of the names asks for another. */
  private static final String KIND = "matraloom set 2";

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private final PackOrder order;
  private final List<PackTrack> tracks;
  private final PackBeside beside;

  PackManifest(PackOrder order, List<PackTrack> tracks, PackBeside beside) {
    this.beside = beside;
    this.order = order;
    this.tracks = tracks;
  }

  /** Takes a folder for this order; a folder of the same order is taken up again. */
  void claim(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (Files.exists(file)) {
      if (!fingerprint().equals(fingerprintIn(file))) {
        throw new IllegalArgumentException(
            "the folder "
                + folder
                + " holds another set; give an empty folder, or remove that set first");
      }
    } else {
      write(folder, List.of());
    }
  }

  /** Writes the list, with the levels of WAV files once every track is there. */
  void write(Path folder, List<Optional<Levels>> levels) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT));
      write(json, levels);
    }
    WholeText.put(folder.resolve(NAME), text + "\n");
  }

  private void write(JsonGenerator json, List<Optional<Levels>> levels) throws IOException {
    json.writeStartObject();
    json.writeStringField("title", order.composition().title());
    json.writeStringField("tala", order.composition().avartana().tala().name());
    json.writeStringField("tempo", order.composition().tempo().beatsPerMinute().toString());
    json.writeStringField("fingerprint", fingerprint());
    json.writeBooleanField("complete", levels.size() == tracks.size());
    json.writeArrayFieldStart("tracks");
    for (int at = 0; at < levels.size(); at++) {
      PackTrack track = tracks.get(at);
      json.writeStartObject();
      json.writeNumberField("number", track.number());
      json.writeStringField("title", track.title());
      if (order.files().hasWave()) {
        json.writeStringField("wav", track.waveName());
      }
      if (order.files().hasMp3()) {
        json.writeStringField("mp3", track.mp3Name());
      }
      json.writeStringField("section", track.section());
      json.writeStringField("mix", track.mix().slug());
      json.writeStringField("percent", track.percent().toString());
      json.writeStringField("tempo", track.composition().tempo().beatsPerMinute().toString());
      json.writeStringField("nadai", PackList.nadais(track));
      if (levels.get(at).isPresent()) {
        Levels measured = levels.get(at).get();
        json.writeStringField("lufs", String.format(Locale.ROOT, "%.1f", measured.lufs()));
        json.writeStringField("dbtp", String.format(Locale.ROOT, "%.1f", measured.dbtp()));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private String fingerprint() {
    String whole =
        String.join(
            "\n",
            KIND,
            ScorePrinter.print(order.composition()),
            order.percents().toString(),
            order.mixes().toString(),
            order.drills() + " " + order.countInAvartanas() + " " + order.files(),
            order.sruti().toString()
                + order.breaths().map(cued -> "\n" + cued).orElse("")
                + beside.known());
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(whole.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }

  private static String fingerprintIn(Path file) throws IOException {
    try (JsonParser json = new JsonFactory().createParser(Files.readString(file))) {
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME
            && json.currentName().equals("fingerprint")) {
          return json.nextTextValue();
        }
      }
      return "";
    } catch (JsonParseException notOurs) {
      return "";
    }
  }
}
