package org.matraloom.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;

/**
 * The latest versions of each score, kept outside its folder.
 *
 * <p>What is typed in one go is one version, which grows; after a while, or when another program
 * has written, a new one begins.
 */
public final class TextVersions {

  /** How many versions of a score are kept. */
  public static final int KEPT = 200;

  private static final long ONE_GO_MS = 20_000;
  private static final String FILE = "\\d{13,16}\\.txt";

  private final Path folder;

  TextVersions(Path folder) {
    this.folder = folder;
  }

  /** Keeps a text, unless it is what was kept last; in one go with the last if that is recent. */
  void keep(ScoreName name, String text, long nowMs, boolean typed) throws IOException {
    List<KeptVersion> kept = of(name);
    Path own = Files.createDirectories(folder.resolve(name.file()));
    if (!kept.isEmpty() && text(name, kept.get(0).id()).equals(text)) {
      return;
    }
    boolean goesOn = typed && kept.size() > 1 && nowMs - kept.get(0).whenMs() < ONE_GO_MS;
    long id = goesOn ? kept.get(0).whenMs() : Math.max(nowMs, newest(kept) + 1);
    WholeFile.writeText(own.resolve(id + ".txt"), out -> out.append(text));
    for (int i = KEPT - (goesOn ? 0 : 1); i < kept.size(); i++) {
      Files.deleteIfExists(own.resolve(kept.get(i).id() + ".txt"));
    }
  }

  private static long newest(List<KeptVersion> kept) {
    return kept.isEmpty() ? 0 : kept.get(0).whenMs();
  }

  /**
   * The versions of a score.
   *
   * @param name its name
   * @return the newest first
   * @throws IOException if they cannot be listed
   */
  public List<KeptVersion> of(ScoreName name) throws IOException {
    Path own = folder.resolve(name.file());
    List<KeptVersion> versions = new ArrayList<>();
    if (!Files.isDirectory(own)) {
      return versions;
    }
    try (Stream<Path> files = Files.list(own)) {
      for (Path file : files.filter(one -> one.getFileName().toString().matches(FILE)).toList()) {
        String id = file.getFileName().toString().replace(".txt", "");
        versions.add(new KeptVersion(id, Long.parseLong(id), Files.size(file)));
      }
    }
    versions.sort(Comparator.comparingLong(KeptVersion::whenMs).reversed());
    return versions;
  }

  /**
   * The text of a version.
   *
   * @param name the score
   * @param id the version
   * @return its text
   * @throws UserError if there is none
   * @throws IOException if it cannot be read
   */
  public String text(ScoreName name, String id) throws IOException {
    String written = id + ".txt";
    if (!written.matches(FILE) || !Files.exists(folder.resolve(name.file()).resolve(written))) {
      throw new UserError("there is no such version of " + name.file());
    }
    return Files.readString(folder.resolve(name.file()).resolve(written));
  }

  /** A score has a new name, and its versions go with it. */
  void rename(ScoreName name, ScoreName other) throws IOException {
    Path from = folder.resolve(name.file());
    Path to = folder.resolve(other.file());
    if (Files.isDirectory(from) && !Files.exists(to)) {
      Files.move(from, to);
    }
  }
}
