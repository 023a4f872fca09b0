package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.matraloom.app.cli.ExitCode;

/**
 * A command that makes files, in a process of its own, so that it can be cancelled and goes on when
 * a page is closed.
 */
final class HandOnJob {

  private static final long PATIENCE_SECONDS = 5;
  private static final String LEFT_OVER = "\\..+\\.[0-9a-f]+\\.part";

  private final int id;
  private final String kind;
  private final Path target;
  private final Process process;
  private final Path said;
  private final long begunNanos = System.nanoTime();
  private volatile boolean cancelled;

  private HandOnJob(int id, String kind, Path target, Process process, Path said) {
    this.id = id;
    this.kind = kind;
    this.target = target;
    this.process = process;
    this.said = said;
  }

  /** Starts a command of this program. */
  static HandOnJob start(int id, String kind, Path target, List<String> words) throws IOException {
    Path said = Files.createTempFile("matraloom-job", ".txt");
    said.toFile().deleteOnExit();
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> start =
        List.of(
            java,
            "-XX:+UseSerialGC",
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            "org.matraloom.app.Main");
    Process process =
        new ProcessBuilder(Stream.concat(start.stream(), words.stream()).toList())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroy, "matraloom-job-end"));
    return new HandOnJob(id, kind, target, process, said);
  }

  Path target() {
    return target;
  }

  boolean isDone() {
    return !process.isAlive() && process.exitValue() == ExitCode.DONE && !cancelled;
  }

  /** Ends the work; what is whole stays, what was half written is taken away. */
  void cancel() throws IOException {
    cancelled = cancelled || process.isAlive();
    process.destroy();
    try {
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
    Path folder = Files.isDirectory(target) ? target : target.getParent();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (file.getFileName().toString().matches(LEFT_OVER)) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  void write(JsonGenerator json) throws IOException {
    boolean runs = process.isAlive();
    json.writeStartObject();
    json.writeNumberField("id", id);
    json.writeStringField("kind", kind);
    json.writeStringField("file", target.getFileName().toString());
    json.writeStringField(
        "state", cancelled ? "cancelled" : runs ? "running" : isDone() ? "done" : "failed");
    json.writeNumberField("seconds", (System.nanoTime() - begunNanos) / 1_000_000_000);
    json.writeNumberField("files", files());
    json.writeStringField("said", runs ? "" : Files.readString(said, StandardCharsets.UTF_8));
    json.writeEndObject();
  }

  /** How many files there are by now. */
  private long files() throws IOException {
    if (!Files.isDirectory(target)) {
      return Files.exists(target) ? 1 : 0;
    }
    try (Stream<Path> files = Files.walk(target)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !file.getFileName().toString().startsWith("."))
          .count();
    }
  }
}
