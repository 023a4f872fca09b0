package org.matraloom.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.UserError;

/**
 * A folder of scores that several pages and other programs may change at once.
 *
 * <p>Nothing is written over unseen: who saves says which text was there when it was begun. What is
 * replaced is kept as a version first. Safe for several threads.
 */
public final class ScoreFolder {

  private final Path folder;
  private final ScoreFiles files;
  private final ScoreFiles bin;
  private final TextVersions versions;
  private final Clock clock;

  /**
   * Opens a folder, and takes away what a killed program had begun to write in it.
   *
   * @param folder where the scores are
   * @param kept where versions and the bin of this folder are, outside it; made if need be
   * @param clock gives the time of versions
   * @throws IOException if one of the folders cannot be read or made
   */
  public ScoreFolder(Path folder, Path kept, Clock clock) throws IOException {
    this.folder = folder.toRealPath();
    this.files = new ScoreFiles(this.folder);
    this.bin = new ScoreFiles(Files.createDirectories(kept.resolve("bin")));
    this.versions = new TextVersions(Files.createDirectories(kept.resolve("versions")));
    this.clock = clock;
    files.sweep();
  }

  /**
   * Where the scores are.
   *
   * @return the folder, without links
   */
  public Path folder() {
    return folder;
  }

  /**
   * The scores.
   *
   * @return their names in alphabetical order
   * @throws IOException if the folder cannot be read
   */
  public List<ScoreName> names() throws IOException {
    return files.names();
  }

  /**
   * The file of a score, for those that read it themselves.
   *
   * @param name its name
   * @return its path
   */
  public Path path(ScoreName name) {
    return files.path(name);
  }

  /**
   * A score.
   *
   * @param name its name
   * @return its text
   * @throws UserError if there is none of that name, or it is a link or too long
   * @throws IOException if it cannot be read
   */
  public SavedText read(ScoreName name) throws IOException {
    return files.read(name);
  }

  /**
   * Saves a text.
   *
   * @param name the score
   * @param text what is to be there
   * @param stamp the stamp of the text that was there when this one was begun
   * @return its new stamp, or what else is there now
   * @throws IOException if it cannot be written; the old text is whole then
   */
  public synchronized SaveOutcome save(ScoreName name, String text, String stamp)
      throws IOException {
    SavedText next = SavedText.of(text);
    Optional<SavedText> now = files.find(name);
    if (now.isPresent() && now.get().stamp().equals(next.stamp())) {
      return new SaveOutcome.Saved(next.stamp());
    }
    if (now.isPresent() && !now.get().stamp().equals(stamp)) {
      versions.keep(name, now.get().text(), clock.millis(), false);
      return new SaveOutcome.Changed(now.get());
    }
    if (now.isPresent()) {
      versions.keep(name, now.get().text(), clock.millis(), true);
    }
    files.write(name, text);
    versions.keep(name, text, clock.millis(), true);
    return new SaveOutcome.Saved(next.stamp());
  }

  /**
   * Makes a new score.
   *
   * @param wished its name; it gets a number if there is one of that name
   * @param text its text
   * @return its name
   * @throws IOException if it cannot be written
   */
  public synchronized ScoreName create(ScoreName wished, String text) throws IOException {
    ScoreName name = files.free(wished);
    files.write(name, text);
    return name;
  }

  /**
   * Gives a score another name.
   *
   * @param name its name
   * @param other the new name
   * @throws UserError if there is one of that name
   * @throws IOException if it cannot be done
   */
  public synchronized void rename(ScoreName name, ScoreName other) throws IOException {
    files.read(name);
    if (files.has(other)) {
      throw new UserError("there is a score " + other.file() + " already; take another name");
    }
    files.move(name, files, other);
    versions.rename(name, other);
  }

  /**
   * Puts a score into the bin.
   *
   * @param name its name
   * @throws IOException if it cannot be moved
   */
  public synchronized void discard(ScoreName name) throws IOException {
    files.read(name);
    files.move(name, bin, bin.free(name));
  }

  /**
   * What is in the bin.
   *
   * @return the names there
   * @throws IOException if it cannot be read
   */
  public List<ScoreName> inBin() throws IOException {
    return bin.names();
  }

  /**
   * Takes a score out of the bin.
   *
   * @param name its name there
   * @return its name in the folder; it gets a number if there is one of that name
   * @throws IOException if it cannot be moved
   */
  public synchronized ScoreName bringBack(ScoreName name) throws IOException {
    bin.read(name);
    ScoreName free = files.free(name);
    bin.move(name, files, free);
    return free;
  }

  /**
   * The versions that are kept.
   *
   * @return versions of all scores
   */
  public TextVersions versions() {
    return versions;
  }
}
