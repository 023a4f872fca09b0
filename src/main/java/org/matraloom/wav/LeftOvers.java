package org.matraloom.wav;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;

/** The parts of files that a program left behind when it was killed while it wrote them. */
public final class LeftOvers {

  /** A part that has not grown for so long has nobody who writes it. */
  private static final Duration FORSAKEN = Duration.ofMinutes(10);

  private LeftOvers() {}

  /**
   * Removes the parts of a file that lie beside it and have not been touched for ten minutes. What
   * cannot be removed stays; nothing else is touched.
   *
   * @param target the file that is about to be written anew
   */
  public static void removeBeside(Path target) {
    Path folder = target.toAbsolutePath().getParent();
    Pattern part =
        Pattern.compile(
            Pattern.quote("." + target.getFileName() + ".") + "[0-9a-f]{1,16}(\\.raw)?\\.part");
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(
            folder, file -> part.matcher(file.getFileName().toString()).matches())) {
      Instant since = Instant.now().minus(FORSAKEN);
      for (Path left : parts) {
        if (Files.getLastModifiedTime(left).toInstant().isBefore(since)) {
          Files.deleteIfExists(left);
        }
      }
    } catch (IOException | RuntimeException stays) {
      // What is left over harms nobody; the file that is wanted is written all the same.
      return;
    }
  }
}
