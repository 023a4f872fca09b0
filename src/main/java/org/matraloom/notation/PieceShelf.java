package org.matraloom.notation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.spell.MeantWord;
import org.matraloom.spell.Quoted;

/**
 * The scores that a score may be put together from: those beside it and in folders below it. None
 * else is ever opened, and each is read once.
 */
final class PieceShelf {

  private static final int MOST_FILES = 100;
  private static final int MOST_IN_EACH_OTHER = 8;

  /**
   * A score on the shelf.
   *
   * @param composition what it says
   * @param namesTempo whether it names a tempo of its own
   */
  record Piece(Composition composition, boolean namesTempo) {}

  /** How a score on the shelf is read. */
  interface PieceReading {

    /** Reads a file that may use others; what is wrong with it is told. */
    Optional<Piece> of(Path file, PieceShelf shelf, Problems problems);
  }

  private final Path root;
  private final PieceReading reading;
  private final Map<Path, Optional<Piece>> read;
  private final Map<Path, String> faults;
  private final List<Path> open;

  private PieceShelf(
      Path root,
      PieceReading reading,
      Map<Path, Optional<Piece>> read,
      Map<Path, String> faults,
      List<Path> open) {
    this.root = root;
    this.reading = reading;
    this.read = read;
    this.faults = faults;
    this.open = open;
  }

  /** The shelf of a score; empty if its folder cannot be told. */
  static Optional<PieceShelf> of(Path score, PieceReading reading) {
    try {
      Path real = score.toRealPath();
      Path folder = real.getParent();
      return folder == null
          ? Optional.empty()
          : Optional.of(
              new PieceShelf(folder, reading, new HashMap<>(), new HashMap<>(), List.of(real)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Finds a score by the path that is written in the one being read; tells why it cannot be had.
   */
  Optional<Piece> piece(Token place, String written, Problems problems) {
    Optional<Path> found = found(place, written, problems);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Path file = found.get();
    String name = Quoted.brief(written);
    if (open.contains(file)) {
      String by =
          open.indexOf(file) == open.size() - 1
              ? ""
              : " by way of " + open.get(open.size() - 1).getFileName();
      return refused(place, name + " uses itself" + by, "take one of the two lines out", problems);
    } else if (open.size() > MOST_IN_EACH_OTHER) {
      return refused(
          place,
          "scores use one another at most " + MOST_IN_EACH_OTHER + " deep",
          "use the inner ones from the main score",
          problems);
    } else if (!read.containsKey(file) && read.size() == MOST_FILES) {
      return refused(
          place,
          "a score uses at most " + MOST_FILES + " others",
          "put some of them together in a score of their own, or write them out",
          problems);
    }
    if (!read.containsKey(file)) {
      read.put(file, Optional.empty());
      read.put(file, read(file));
    }
    Optional<Piece> piece = read.get(file);
    if (piece.isEmpty()) {
      refused(
          place,
          name + " cannot be used: " + faults.getOrDefault(file, "it uses itself"),
          "matraloom check " + name + " tells all that is wrong with it",
          problems);
    }
    return piece;
  }

  private Optional<Piece> read(Path file) {
    Problems own = new Problems(file.toString());
    List<Path> inside = new ArrayList<>(open);
    inside.add(file);
    PieceShelf shelf = new PieceShelf(root, reading, read, faults, inside);
    Optional<Piece> piece = reading.of(file, shelf, own);
    if (piece.isEmpty()) {
      own.inOrder().stream()
          .filter(problem -> problem.severity() == Problem.Severity.ERROR)
          .findFirst()
          .ifPresent(problem -> faults.put(file, inOneSentence(problem)));
    }
    return piece;
  }

  private static String inOneSentence(Problem problem) {
    String where =
        problem.place().line() == 0
            ? ""
            : "line " + problem.place().line() + ", column " + problem.place().column() + ": ";
    return where + problem.message();
  }

  /** The file that a path means; only below the folder of the main score. */
  private Optional<Path> found(Token place, String written, Problems problems) {
    Path relative;
    try {
      relative = Path.of(written);
    } catch (InvalidPathException e) {
      return refused(place, "this is no name of a file", "write use \"other.loom\"", problems);
    }
    boolean leaves = written.contains("..") || written.contains("\\") || relative.isAbsolute();
    Path folder = open.get(open.size() - 1).getParent();
    if (leaves || folder == null) {
      return outside(place, written, problems);
    }
    Path file = folder.resolve(relative);
    try {
      if (!Files.isRegularFile(file)) {
        return refused(
            place,
            "there is no file " + Quoted.brief(written) + " beside the score",
            nearest(folder, relative).map("the nearest is "::concat),
            problems);
      }
      Path real = file.toRealPath();
      return real.startsWith(root) ? Optional.of(real) : outside(place, written, problems);
    } catch (IOException e) {
      return refused(place, "the file cannot be read", "check its permissions", problems);
    }
  }

  private static Optional<String> nearest(Path folder, Path relative) throws IOException {
    Path parent = folder.resolve(relative).getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return Optional.empty();
    }
    try (var files = Files.list(parent)) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".loom"))
              .sorted()
              .toList();
      return MeantWord.of(relative.getFileName().toString(), names);
    }
  }

  private static <T> Optional<T> outside(Token place, String written, Problems problems) {
    return refused(
        place,
        Quoted.brief(written) + " lies outside the folder of the score",
        "a score uses files beside it or in folders below it, as in use \"lessons/other.loom\"",
        problems);
  }

  private static <T> Optional<T> refused(
      Token place, String message, String help, Problems problems) {
    return refused(place, message, Optional.of(help), problems);
  }

  private static <T> Optional<T> refused(
      Token place, String message, Optional<String> help, Problems problems) {
    problems.error(place, message, () -> help);
    return Optional.empty();
  }
}
