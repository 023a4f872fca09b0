package org.matraloom.app.hear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.log.History;
import org.matraloom.log.PracticeLog;

/** One student's log, by the name of its file. */
record NamedLog(String name, Path file, History history) {

  private static final String ENDING = ".jsonl";

  /** What a log is called if nobody gave it a name; then its folder tells whose it is. */
  private static final String USUAL = "practice";

  /**
   * Reads logs; in whatever order they are given, they come by name, and each once.
   *
   * @throws UserError if there is none
   */
  static List<NamedLog> read(List<Path> given, LogOptions place) throws IOException {
    TreeSet<Path> files = new TreeSet<>();
    for (Path path : given) {
      files.addAll(filesAt(path));
    }
    List<NamedLog> logs = new ArrayList<>();
    for (Path file : files) {
      String name = nameOf(file);
      boolean isTwice = files.stream().filter(other -> nameOf(other).equals(name)).count() > 1;
      PracticeLog log = new PracticeLog(file);
      logs.add(new NamedLog(isTwice ? folderOf(file) + "/" + name : name, file, place.read(log)));
    }
    logs.sort(Comparator.comparing(NamedLog::name).thenComparing(NamedLog::file));
    return logs;
  }

  private static List<Path> filesAt(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      try (Stream<Path> inside = Files.list(path)) {
        List<Path> logs =
            inside
                .filter(file -> file.toString().endsWith(ENDING) && Files.isRegularFile(file))
                .map(NamedLog::plain)
                .toList();
        if (logs.isEmpty()) {
          throw new UserError(
              "the folder " + path + " holds no log; the name of one ends in .jsonl");
        }
        return logs;
      }
    }
    if (!Files.isRegularFile(path)) {
      throw new UserError(
          "there is no log " + path + "; give logs, such as class/heron.jsonl, or their folder");
    }
    return List.of(plain(path));
  }

  private static Path plain(Path path) {
    return path.toAbsolutePath().normalize();
  }

  private static String nameOf(Path file) {
    String name = file.getFileName().toString();
    String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return bare.equals(USUAL) ? folderOf(file) : bare;
  }

  private static String folderOf(Path file) {
    Path folder = file.getParent().getFileName();
    return folder == null ? USUAL : folder.toString();
  }
}
