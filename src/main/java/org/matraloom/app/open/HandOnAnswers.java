package org.matraloom.app.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;

/**
 * Files for others. Each is made by its command, into a folder beside the score that bears its
 * name; every page sees all the work that goes on.
 */
final class HandOnAnswers {

  private static final String FOLDER_ENDING = "-files";
  private static final long MOST_DOWNLOADED = 500_000_000;

  private final ScoreFolder scores;
  private final String voice;
  private final Map<Integer, HandOnJob> jobs = new TreeMap<>();

  HandOnAnswers(ScoreFolder scores, String voice) {
    this.scores = scores;
    this.voice = voice;
  }

  /** Begins to make something of a saved score. */
  DoorReply make(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    HandOnKind kind = HandOnKind.of(sent.text("kind"));
    ScoreName name = new ScoreName(sent.text("name"));
    scores.read(name);
    Path folder = folder(name);
    Path target =
        kind.isFolder() ? folder.resolve("pack") : folder.resolve(name.stem() + kind.ending());
    List<String> words = new ArrayList<>(kind.command());
    words.add(scores.path(name).toString());
    words.addAll(List.of("-o", target.toString()));
    if (kind.isSheet()) {
      sent.find("script")
          .ifPresent(script -> words.addAll(List.of("--script", Scripts.name(Scripts.of(script)))));
      words.addAll(sent.isSet("large") ? List.of("--large") : List.of());
      words.addAll(sent.isSet("cues") ? List.of("--cues") : List.of());
    }
    words.addAll(kind.isSpoken() ? List.of("--voice", voice) : List.of());
    return begin(sent.text("kind"), target, words);
  }

  /** Begins a job. */
  synchronized DoorReply begin(String kind, Path target, List<String> words) throws IOException {
    int id = jobs.size() + 1;
    jobs.put(id, HandOnJob.start(id, kind, target, words));
    return JsonReply.of(json -> json.writeNumberField("id", id));
  }

  /** The files of a score go along when it is renamed, unless another score's files are there. */
  static void follow(Path scores, ScoreName name, ScoreName other) throws IOException {
    Path before = scores.resolve(name.stem() + FOLDER_ENDING);
    Path after = scores.resolve(other.stem() + FOLDER_ENDING);
    if (Files.isDirectory(before, LinkOption.NOFOLLOW_LINKS) && Files.notExists(after)) {
      Files.move(before, after);
    }
  }

  /** The folder for the files of a score; a link is none. */
  Path folder(ScoreName name) throws IOException {
    Path folder = scores.folder().resolve(name.stem() + FOLDER_ENDING);
    if (Files.isSymbolicLink(folder)) {
      throw new UserError(
          folder.getFileName() + " is a link; files go only into the folder itself");
    }
    return Files.createDirectories(folder);
  }

  DoorReply list() throws IOException {
    List<HandOnJob> all = all();
    return JsonReply.of(
        json -> {
          json.writeArrayFieldStart("jobs");
          for (HandOnJob job : all) {
            job.write(json);
          }
          json.writeEndArray();
        });
  }

  private synchronized List<HandOnJob> all() {
    return List.copyOf(jobs.values());
  }

  DoorReply cancel(DoorRequest request) throws IOException {
    job(JsonFields.of(request).number("id")).cancel();
    return list();
  }

  /** A file that a job has made. */
  DoorReply made(DoorRequest request) throws DoorFault, IOException {
    HandOnJob job = job(number(request.value("id")));
    Path file = job.target();
    if (!job.isDone() || !Files.isRegularFile(file)) {
      throw new DoorFault(DoorReply.MISSING, "there is no such file to be had");
    }
    if (Files.size(file) > MOST_DOWNLOADED) {
      throw new UserError(file + " is too large for the page; take it from the folder");
    }
    String name = file.getFileName().toString().replaceAll("[^\\w.-]", "_");
    return new DoorReply(
        DoorReply.OK,
        name.endsWith(".wav") ? "audio/wav" : "application/octet-stream",
        Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""),
        Files.readAllBytes(file));
  }

  private static int number(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException noNumber) {
      throw new UserError("a number is wanted, given " + text);
    }
  }

  private synchronized HandOnJob job(int id) {
    return Optional.ofNullable(jobs.get(id))
        .orElseThrow(() -> new UserError("there is no work under the number " + id));
  }
}
