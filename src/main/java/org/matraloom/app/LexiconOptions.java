package org.matraloom.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.LexiconException;
import picocli.CommandLine.Option;

/** The lexicon of a command: the built-in one and, if given, the user's own list. */
final class LexiconOptions {

  @Option(
      names = "--lexicon",
      paramLabel = "FILE",
      description = "A list of your own sollus and spellings, added to the built-in ones.")
  private Path file;

  /** The user's list as it was given. */
  Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  Lexicon lexicon() {
    if (file == null) {
      return Lexicon.standard();
    }
    try {
      return Lexicon.standard().plus(Files.readString(file), file.toString());
    } catch (LexiconException faulty) {
      throw new UserError(faulty.getMessage());
    } catch (IOException unreadable) {
      throw new UserError("the list of sollus " + file + " cannot be read as UTF-8 text");
    }
  }
}
