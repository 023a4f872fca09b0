package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Pattern;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.shelf.ScoreName;

/** Takes: kept beside the score, measured by {@code take}, with the drill that it advises. */
final class TakeAnswers {

  /** Fifty minutes at 16 bits; what is dropped on the page may be of any kind that take reads. */
  static final long MOST_BYTES = 300_000_000;

  private static final Pattern ENDING = Pattern.compile("[a-z0-9]{2,5}");
  private static final Pattern WORD = Pattern.compile("'((?:[^']|'\\\\'')*)'|(\\S+)");

  private final OpenDesk desk;
  private final HandOnAnswers files;
  private final Map<String, String> drills = new ConcurrentHashMap<>();
  private final AtomicBoolean isExpected = new AtomicBoolean();

  TakeAnswers(OpenDesk desk, HandOnAnswers files) {
    this.desk = desk;
    this.files = files;
  }

  /** A take is being said; its measure is made ready once. */
  DoorReply expect(DoorRequest request) throws IOException {
    if (!isExpected.getAndSet(true)) {
      WarmStart.beginTakes(desk.program());
    }
    return JsonReply.of(json -> {});
  }

  /** Keeps a take and measures it; the reply is what {@code take --json} prints. */
  DoorReply measure(DoorRequest request) throws DoorFault, IOException {
    ScoreName name = new ScoreName(request.value("name"));
    String ending = request.value("as").toLowerCase(Locale.ROOT);
    if (!ENDING.matcher(ending).matches()) {
      throw new UserError("a recording's name ends in letters such as wav, given " + ending);
    }
    String text = desk.scores().read(name).text();
    Path take = free(files.folder(name), ending);
    if (GuidedTake.isOne(request.query())) {
      new GuidedTake(desk.lexicon()).write(take, name, text, request.query(), request.body());
    } else {
      Files.write(take, request.body());
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        desk.program()
            .runAlso(
                new PrintWriter(out),
                new PrintWriter(err),
                "take",
                desk.scores().path(name).toString(),
                take.toString(),
                "--json",
                "--log-file",
                desk.log().file().toString());
    if (code != ExitCode.DONE && code != ExitCode.CHECK_FAILED) {
      throw new UserError(err.toString().strip());
    }
    drills.put(name.file(), drill(out.toString()));
    return JsonReply.ready(out.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static Path free(Path folder, String ending) {
    int number = 1;
    while (Files.exists(folder.resolve("take-" + number + "." + ending))) {
      number++;
    }
    return folder.resolve("take-" + number + "." + ending);
  }

  /** The command line of the drill that a take asks for; empty if it asks for none. */
  private static String drill(String take) throws IOException {
    try (JsonParser json = new JsonFactory().createParser(take)) {
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME && json.currentName().equals("drill")) {
          return json.nextToken() == JsonToken.VALUE_STRING ? json.getText() : "";
        }
      }
    }
    return "";
  }

  /** Begins to make the drill that the last take of a score asks for. */
  DoorReply drill(DoorRequest request) throws IOException {
    ScoreName name = new ScoreName(JsonFields.of(request).text("name"));
    List<String> words = new ArrayList<>();
    WORD.matcher(drills.getOrDefault(name.file(), ""))
        .results()
        .forEach(
            found ->
                words.add(
                    found.group(1) == null
                        ? found.group(2)
                        : found.group(1).replace("'\\''", "'")));
    if (words.size() < 3 || !words.get(1).equals("drill")) {
      throw new UserError("the last take asks for no drill");
    }
    Path target = files.folder(name).resolve("drill.wav");
    List<String> command = new ArrayList<>(words.subList(1, words.size() - 1));
    command.add(target.toString());
    return files.begin("drill", target, command);
  }
}
