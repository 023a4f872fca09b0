package org.matraloom.wav;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A text file that is whole or not there. */
public final class WholeText {

  private WholeText() {}

  /**
   * Writes a text in UTF-8; an older file of that name is replaced, and where the name is a link,
   * the link.
   *
   * @param target the file
   * @param text what it holds
   * @throws IOException if it cannot be written; the message names the file, and nothing is left
   */
  public static void put(Path target, String text) throws IOException {
    try (PartFile file = new PartFile(target)) {
      ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
      while (bytes.hasRemaining()) {
        file.channel().write(bytes);
      }
      file.finish();
    } catch (IOException failure) {
      String why = String.valueOf(failure.getMessage());
      throw why.contains(target.toString())
          ? failure
          : new IOException("cannot write " + target + ": " + why, failure);
    }
  }
}
