package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;

/** What a session leaves on the disk: a take for each pass, its decisions, entries in the log. */
final class LessonNotes {

  private static final String DECISIONS = "decisions.txt";

  private final Path folder;
  private final Optional<PracticeLog> log;
  private int takes;

  /** Makes the folder; it must not exist, so that no older session is mixed with this one. */
  LessonNotes(Path folder, Optional<PracticeLog> log) throws IOException {
    this.folder = folder;
    this.log = log;
    Files.createDirectory(folder);
  }

  Path folder() {
    return folder;
  }

  /** How many takes there are on the disk; one that broke off before its first sound is none. */
  long takes() {
    return IntStream.rangeClosed(1, takes).filter(number -> Files.exists(take(number))).count();
  }

  Path nextTake() {
    takes++;
    return take(takes);
  }

  private Path take(int number) {
    return folder.resolve(String.format(Locale.ROOT, "pass-%02d.wav", number));
  }

  /** Adds a line to the decisions; it is on the disk when this returns. */
  void decided(String line) throws IOException {
    try (FileChannel file =
        FileChannel.open(
            folder.resolve(DECISIONS), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      file.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)));
      file.force(false);
    }
  }

  void note(LogEntry entry) throws IOException {
    if (log.isPresent()) {
      log.get().append(entry);
    }
  }
}
