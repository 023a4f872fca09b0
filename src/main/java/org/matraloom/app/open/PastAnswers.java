package org.matraloom.app.open;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.shelf.ScoreName;

/**
 * What was practised before: the log as a picture, the takes that are kept, two of them compared.
 */
final class PastAnswers {

  private static final Pattern TAKE = Pattern.compile("take-\\d{1,6}\\.[a-z0-9]{2,5}");

  private static final long MOST_HEARD = 500_000_000;

  /** Media types that are not named by the ending (IANA, media types, audio). */
  private static final Map<String, String> TYPES =
      Map.of("mp3", "audio/mpeg", "m4a", "audio/mp4", "opus", "audio/ogg");

  private final OpenDesk desk;
  private final HandOnAnswers files;

  PastAnswers(OpenDesk desk, HandOnAnswers files) {
    this.desk = desk;
    this.files = files;
  }

  /** The tempi of a piece over time, as {@code log --picture} draws them. */
  DoorReply picture(DoorRequest request) throws DoorFault, IOException {
    Path drawing = Files.createTempFile("matraloom-log", ".svg");
    try {
      run(
          "log",
          "--piece",
          request.value("title"),
          "--picture",
          drawing.toString(),
          "--log-file",
          desk.log().file().toString());
      return DoorReply.of("image/svg+xml", Files.readAllBytes(drawing));
    } finally {
      Files.deleteIfExists(drawing);
    }
  }

  /** The names of the takes that are kept of a score. */
  DoorReply takes(DoorRequest request) throws DoorFault, IOException {
    ScoreName name = new ScoreName(request.value("name"));
    desk.scores().read(name);
    try (Stream<Path> all = Files.list(files.folder(name))) {
      List<String> takes =
          all.filter(Files::isRegularFile)
              .map(file -> file.getFileName().toString())
              .filter(file -> TAKE.matcher(file).matches())
              .sorted()
              .toList();
      return JsonReply.of(json -> JsonReply.words(json, "takes", takes));
    }
  }

  /** Two takes side by side, in the words of {@code take --compare}. */
  DoorReply compare(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    ScoreName name = new ScoreName(sent.text("name"));
    String words =
        run(
            "take",
            "--compare",
            "--log-file",
            desk.log().file().toString(),
            desk.scores().path(name).toString(),
            take(name, sent.text("one")),
            take(name, sent.text("other")));
    String folder = files.folder(name) + "/";
    String plain = words.replace(folder, "");
    return JsonReply.of(json -> json.writeStringField("words", plain));
  }

  /** The sound of a take. */
  DoorReply sound(DoorRequest request) throws DoorFault, IOException {
    String take = request.value("take");
    Path file = Path.of(take(new ScoreName(request.value("name")), take));
    if (Files.size(file) > MOST_HEARD) {
      throw new UserError(take + " is too large for the page");
    }
    String ending = take.substring(take.lastIndexOf('.') + 1);
    return DoorReply.of(TYPES.getOrDefault(ending, "audio/" + ending), Files.readAllBytes(file));
  }

  private String take(ScoreName name, String take) throws IOException {
    Path file = files.folder(name).resolve(take);
    if (!TAKE.matcher(take).matches() || Files.isSymbolicLink(file) || !Files.exists(file)) {
      throw new UserError("there is no take " + take + " of " + name.file());
    }
    return file.toString();
  }

  private String run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = desk.program().runAlso(new PrintWriter(out), new PrintWriter(err), words);
    if (code != ExitCode.DONE && code != ExitCode.CHECK_FAILED) {
      throw new UserError(err.toString().strip());
    }
    return out.toString();
  }
}
