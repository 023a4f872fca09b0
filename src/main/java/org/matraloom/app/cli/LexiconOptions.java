package org.matraloom.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.LexiconException;
import picocli.CommandLine.Option;

/** The lexicon of a command: the built-in one and, if given, the user's own list. */
public final class LexiconOptions {

  /** What the option is called. */
  public static final String NAME = "--lexicon";

  /** The most bytes that are read: a million characters of up to four. */
  private static final int MOST_BYTES = 4_000_000;

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
      return Lexicon.standard().plus(text(), file.toString());
    } catch (LexiconException faulty) {
      throw new UserError(faulty.getMessage());
    } catch (IOException unreadable) {
      throw new UserError("the list of sollus " + file + " cannot be read as UTF-8 text");
    }
  }

  private String text() throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new UserError("the list of sollus " + file + " cannot be read: it is no file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new UserError("the list of sollus " + file + " has more than 4 MB; shorten it");
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }
  }
}
