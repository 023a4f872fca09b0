package org.matraloom.shelf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;

/**
 * The texts of one folder, read and written by name. A link is no score, wherever it leads: a score
 * is opened without following links, so that a name cannot be bent in between.
 */
final class ScoreFiles {

  /** The longest text that is a score, in bytes. */
  static final int MOST_BYTES = 1_000_000;

  private static final String LEFT_OVER = "\\..+\\.loom\\.[0-9a-f]+\\.part";

  private final Path folder;

  ScoreFiles(Path folder) {
    this.folder = folder;
  }

  List<ScoreName> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(ScoreFiles::isPlain)
          .flatMap(file -> name(file).stream())
          .sorted((one, other) -> one.file().compareToIgnoreCase(other.file()))
          .toList();
    }
  }

  private static Optional<ScoreName> name(Path file) {
    String name = file.getFileName().toString();
    try {
      return name.endsWith(ScoreName.ENDING) ? Optional.of(new ScoreName(name)) : Optional.empty();
    } catch (UserError otherName) {
      return Optional.empty();
    }
  }

  boolean has(ScoreName name) {
    return Files.exists(path(name), LinkOption.NOFOLLOW_LINKS);
  }

  Optional<SavedText> find(ScoreName name) throws IOException {
    Path file = path(name);
    if (!has(name)) {
      return Optional.empty();
    }
    refuseLink(file);
    try (InputStream in = Channels.newInputStream(Files.newByteChannel(file, options()))) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new UserError(
            name.file() + " has more than 1 MB; a score has at most 1,000,000 bytes");
      }
      return Optional.of(SavedText.of(new String(bytes, StandardCharsets.UTF_8)));
    } catch (NoSuchFileException gone) {
      return Optional.empty();
    }
  }

  private static Set<OpenOption> options() {
    return Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
  }

  SavedText read(ScoreName name) throws IOException {
    return find(name)
        .orElseThrow(() -> new UserError("there is no score " + name.file() + " here"));
  }

  void write(ScoreName name, String text) throws IOException {
    if (text.length() > MOST_BYTES || text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      throw new UserError("a score has at most 1 MB (1,000,000 bytes)");
    }
    Path file = path(name);
    if (has(name)) {
      refuseLink(file);
    }
    WholeFile.writeText(file, out -> out.append(text));
  }

  void move(ScoreName name, ScoreFiles to, ScoreName other) throws IOException {
    refuseLink(path(name));
    Files.move(path(name), to.path(other));
  }

  /** A name like the wished one that nobody bears. */
  ScoreName free(ScoreName wished) {
    ScoreName name = wished;
    for (int number = 2; has(name); number++) {
      name = wished.numbered(number);
    }
    return name;
  }

  Path path(ScoreName name) {
    return folder.resolve(name.file());
  }

  /** Takes away what a program that was killed had begun to write. */
  void sweep() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(ScoreFiles::isPlain).toList()) {
        if (file.getFileName().toString().matches(LEFT_OVER)) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  private static boolean isPlain(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static void refuseLink(Path file) {
    if (!isPlain(file)) {
      throw new UserError(
          file.getFileName() + " is a link or no file; only files of the folder are scores");
    }
  }
}
