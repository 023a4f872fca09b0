package org.matraloom.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.LexiconException;
import picocli.CommandLine.Option;

/** The lexicon of a command: the built-in one and, if given, the user's own list. */
public final class LexiconOptions {

  /** What the option is called. */
  public static final String NAME = "--lexicon";

  @Option(
      names = NAME,
      paramLabel = "FILE",
      description = "A list of your own sollus and spellings, added to the built-in ones.")
  private Path file;

  /**
   * The user's list as it was given.
   *
   * @return the file; empty if none was given
   */
  public Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /**
   * Reads the user's list, if there is one, on top of the built-in one.
   *
   * @return the lexicon
   * @throws UserError if the list cannot be read or has faulty lines
   */
  public Lexicon lexicon() {
    if (file == null) {
      return Lexicon.standard();
    }
    try {
      return Lexicon.standard().plus(GivenText.read("the list of sollus", file), file.toString());
    } catch (LexiconException faulty) {
      throw new UserError(faulty.getMessage());
    }
  }
}
