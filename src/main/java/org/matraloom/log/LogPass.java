package org.matraloom.log;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One reading of the file from its beginning to its end. */
final class LogPass {
  private final List<LogEntry> entries = new ArrayList<>();
  private final List<LogEntry> withdrawn = new ArrayList<>();
  private final List<DamagedLine> damaged = new ArrayList<>();
  private Optional<String> usualVoice = Optional.empty();

  /** Reads a file; true if it ends inside a line. */
  boolean over(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      LogLines lines = new LogLines(in);
      for (long number = 1; lines.next(); number++) {
        read(lines, number);
      }
      return lines.endsInside();
    }
  }

  private void read(LogLines lines, long number) {
    if (lines.isBlank()) {
      return;
    }
    try {
      LogRecord record = lines.record();
      if (record instanceof LogEntry entry) {
        entries.add(entry);
      } else if (record instanceof LogRecord.Withdrawal withdrawal) {
        withdraw(withdrawal);
      } else if (record instanceof LogRecord.UsualVoice usual) {
        usualVoice = Optional.of(usual.voice());
      }
    } catch (IllegalArgumentException problem) {
      damaged.add(new DamagedLine(number, lines.bytes(), problem.getMessage()));
    }
  }

  private void withdraw(LogRecord.Withdrawal withdrawal) {
    for (int i = entries.size() - 1; i >= 0; i--) {
      if (withdrawal.isAbout(entries.get(i))) {
        withdrawn.add(entries.remove(i));
        return;
      }
    }
  }

  Optional<LogEntry> newest() {
    return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
  }

  boolean isDamaged() {
    return !damaged.isEmpty();
  }

  History history() {
    return new History(entries, damaged, withdrawn, usualVoice);
  }
}
