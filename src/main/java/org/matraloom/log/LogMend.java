package org.matraloom.log;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Parts a log into records and lines that cannot be read, while nobody else writes. */
final class LogMend {

  private final Path log;
  private final Path aside;

  /**
   * Names the files.
   *
   * @param log the log
   * @param aside the file to which damaged lines are added
   */
  LogMend(Path log, Path aside) {
    this.log = log;
    this.aside = aside;
  }

  /** Moves the damaged lines; returns how many there were. */
  int run() throws IOException {
    Path part = log.resolveSibling(log.getFileName() + ".part");
    try {
      int moved = sort(part);
      if (moved > 0) {
        Files.move(part, log, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      }
      return moved;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private int sort(Path part) throws IOException {
    int moved = 0;
    Files.deleteIfExists(part);
    try (InputStream in = new BufferedInputStream(Files.newInputStream(log));
        FileChannel from = FileChannel.open(log, StandardOpenOption.READ);
        FileChannel kept =
            FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        FileChannel damaged =
            FileChannel.open(aside, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      damaged.position(damaged.size());
      LogLines lines = new LogLines(in);
      while (lines.next()) {
        if (lines.isBlank()) {
          continue;
        }
        boolean isRecord = isRecord(lines);
        moved += isRecord ? 0 : 1;
        copy(from, lines, isRecord ? kept : damaged);
      }
      damaged.force(false);
      kept.force(false);
    }
    return moved;
  }

  private static boolean isRecord(LogLines lines) {
    try {
      lines.record();
      return true;
    } catch (IllegalArgumentException damaged) {
      return false;
    }
  }

  private static void copy(FileChannel from, LogLines line, FileChannel to) throws IOException {
    long done = 0;
    while (done < line.bytes()) {
      long count = from.transferTo(line.start() + done, line.bytes() - done, to);
      if (count <= 0) {
        throw new IOException("the log became shorter while it was read");
      }
      done += count;
    }
    to.write(ByteBuffer.wrap(new byte[] {'\n'}));
  }
}
