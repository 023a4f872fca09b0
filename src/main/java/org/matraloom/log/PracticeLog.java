package org.matraloom.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The practice log: a text file to which one line of JSON is added for every record.
 *
 * <p>A record is on the disk when {@link #append} returns. A program that is killed while it writes
 * leaves the beginning of one line; the next writer begins a new line first, so no record is ever
 * joined to it. A line that cannot be read is skipped and told, and stays in the file.
 */
public final class PracticeLog {

  private static final int LINE_END = '\n';

  private final Path file;

  /**
   * Names a log.
   *
   * @param file the file; it need not exist, nor its folder
   */
  public PracticeLog(Path file) {
    this.file = file.toAbsolutePath();
  }

  /**
   * Where the log is kept.
   *
   * @return the file
   */
  public Path file() {
    return file;
  }

  /**
   * Whether records may be added: a file with something in it, but nothing like a record near its
   * beginning, is somebody's score or recording.
   *
   * @return true if there is no file yet, or it is empty, or holds a line that begins as records do
   */
  public boolean mayBeLog() {
    return LogFile.mayHoldRecords(file);
  }

  /**
   * Adds a record; several programs may do so at once.
   *
   * @param entry the record
   * @throws IOException if it cannot be written; what was there before is untouched
   */
  public void append(LogEntry entry) throws IOException {
    add(EntryLine.of(entry));
  }

  /**
   * Says with which recorded voice takes are measured from now on.
   *
   * @param voice its name or its folder, or a word that stands for none; not blank
   * @param when the moment at which it is said
   * @throws IllegalArgumentException if it is blank or longer than a text may be
   * @throws IOException if it cannot be written; what was there before is untouched
   */
  public void setUsualVoice(String voice, OffsetDateTime when) throws IOException {
    add(EntryLine.of(new LogRecord.UsualVoice(when, voice)));
  }

  /**
   * Takes back the record that was added last and is not taken back yet.
   *
   * <p>It stays in the file; a line is added that withdraws it.
   *
   * @param when the moment at which it is taken back
   * @return the record; empty if there is none
   * @throws IOException if the file cannot be read or written; what was there before is untouched
   */
  public Optional<LogEntry> withdrawNewest(OffsetDateTime when) throws IOException {
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    return LogLock.whileHeld(
        file,
        () -> {
          LogPass pass = new LogPass();
          pass.over(file);
          Optional<LogEntry> newest = pass.newest();
          if (newest.isPresent()) {
            LogEntry entry = newest.get();
            addLine(
                EntryLine.of(new LogRecord.Withdrawal(when, entry.piece(), entry.when())) + "\n");
          }
          return newest;
        });
  }

  private void add(String line) throws IOException {
    Files.createDirectories(file.getParent());
    LogLock.whileHeld(file, () -> addLine(line + "\n"));
  }

  private long addLine(String line) throws IOException {
    LogFile.create(file);
    try (FileChannel log =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND)) {
      write(log, endsInsideALine() ? "\n" + line : line);
      return log.size();
    }
  }

  private static void write(FileChannel log, String text) throws IOException {
    long before = log.size();
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    try {
      while (bytes.hasRemaining()) {
        log.write(bytes);
      }
      log.force(false);
    } catch (IOException full) {
      log.truncate(before);
      throw full;
    }
  }

  private boolean endsInsideALine() throws IOException {
    try (FileChannel log = FileChannel.open(file, StandardOpenOption.READ)) {
      ByteBuffer last = ByteBuffer.allocate(1);
      return log.size() > 0 && log.read(last, log.size() - 1) == 1 && last.get(0) != LINE_END;
    }
  }

  /**
   * Reads all that is there; the file is not changed.
   *
   * @return the records and the lines that are damaged; nothing if there is no log yet
   * @throws IOException if the file cannot be read
   */
  public History read() throws IOException {
    try {
      LogPass pass = new LogPass();
      if (pass.over(file) && pass.isDamaged() && Files.isWritable(file.getParent())) {
        return readWhenNobodyWrites();
      }
      return pass.history();
    } catch (NoSuchFileException none) {
      return new History(List.of(), List.of());
    }
  }

  /** An unfinished line may be one that is being written at this moment. */
  private History readWhenNobodyWrites() throws IOException {
    return LogLock.whileHeld(
        file,
        () -> {
          LogPass pass = new LogPass();
          pass.over(file);
          return pass.history();
        });
  }

  /**
   * Moves the lines that cannot be read into a file beside the log, to be looked at by hand.
   *
   * <p>They are on the disk there before they leave the log.
   *
   * @return how many lines were moved
   * @throws IOException if a file cannot be written; no line is lost then
   */
  public int mend() throws IOException {
    if (read().damaged().isEmpty()) {
      return 0;
    }
    return LogLock.whileHeld(file, () -> new LogMend(file, damagedFile()).run());
  }

  /**
   * Where {@link #mend} puts the lines that cannot be read.
   *
   * @return the file, which need not exist
   */
  public Path damagedFile() {
    return file.resolveSibling(file.getFileName() + ".damaged");
  }
}
