package org.matraloom.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads a text that the user names beside the score: a list of sollus, of strokes, of a class, a
 * cue sheet.
 *
 * <p>A pipe or a device may never end, and a file may be larger than the memory, so neither is
 * read.
 */
public final class GivenText {

  /** A million characters of up to four bytes. */
  private static final int MOST_BYTES = 4_000_000;

  private GivenText() {}

  /**
   * Reads a file.
   *
   * @param what what it is, for messages, such as "the list of sollus"
   * @param file the file
   * @return its text
   * @throws UserError if it is no file, has more than 4 MB, or is no text in UTF-8
   */
  public static String read(String what, Path file) {
    String named = what + " " + file;
    if (!Files.isRegularFile(file)) {
      throw new UserError(named + " cannot be read: it is no file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new UserError(named + " has more than 4 MB; shorten it");
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException other) {
      throw new UserError(named + " cannot be read as UTF-8 text; save it so");
    } catch (IOException unreadable) {
      throw new UserError(named + " cannot be read; check its permissions");
    }
  }
}
