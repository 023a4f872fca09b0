package org.matraloom.log;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** The file that a practice log is kept in: whose it is, and whether it is one at all. */
final class LogFile {

  private static final String RECORD = "{\"";
  private static final int BEGINNING_BYTES = 1 << 20;

  private LogFile() {}

  /**
   * Whether a file is not there, empty, or has a line near its beginning that begins as records do.
   */
  static boolean mayHoldRecords(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String beginning = new String(in.readNBytes(BEGINNING_BYTES), StandardCharsets.ISO_8859_1);
      return beginning.isBlank()
          || beginning.startsWith(RECORD)
          || beginning.contains("\n" + RECORD);
    } catch (IOException unreadable) {
      return true;
    }
  }

  /** Creates it if it is not there: what somebody practised is nobody else's business. */
  static void create(Path file) throws IOException {
    if (Files.notExists(file)
        && Files.getFileStore(file.getParent()).supportsFileAttributeView("posix")) {
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    }
  }
}
