package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log and processes of their own: two that write at once, and some that are killed. */
class LogProcessesTest {

  private static final int ROUNDS = 4;

  @TempDir private Path folder;

  /** {@code destroyForcibly} of a handle is {@code kill -9} on Linux and macOS. */
  @Test
  void aKilledWriterLosesNothingThatItSaidWasKept() throws Exception {
    PracticeLog log = new PracticeLog(folder.resolve("practice.jsonl"));
    SplittableRandom random = new SplittableRandom(20260304);
    Set<Integer> kept = new HashSet<>();
    for (int round = 0; round < ROUNDS; round++) {
      int from = round * 1_000_000;
      Process writer = LogWriterProcess.start(log.file(), from, from + 1_000_000);
      try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
        int enough = random.nextInt(20, 120);
        for (int i = 0; i < enough; i++) {
          kept.add(Integer.parseInt(said.readLine()));
        }
        writer.toHandle().destroyForcibly();
        said.lines()
            .filter(line -> line.matches("\\d+"))
            .mapToInt(Integer::parseInt)
            .forEach(kept::add);
      }
      writer.waitFor();
    }
    assertTrue(kept.size() >= 20 * ROUNDS, "records were acknowledged: " + kept.size());
    History history = log.read();
    Set<String> read = history.entries().stream().map(LogEntry::remark).collect(Collectors.toSet());
    assertEquals(
        Set.of(),
        kept.stream()
            .filter(number -> !read.contains(Entries.numbered(number).remark()))
            .collect(Collectors.toSet()));
    assertTrue(history.damaged().size() <= ROUNDS, "at most one torn line a kill");
    log.append(Entries.numbered(1));
    assertEquals(history.entries().size() + 1, log.read().entries().size());
  }

  @Test
  void twoProcessesAtOnceLoseNothing() throws Exception {
    PracticeLog log = new PracticeLog(folder.resolve("practice.jsonl"));
    int each = 150;
    Process one = LogWriterProcess.start(log.file(), 0, each);
    Process two = LogWriterProcess.start(log.file(), each, 2 * each);
    drain(one);
    drain(two);
    assertEquals(List.of(0, 0), List.of(one.waitFor(), two.waitFor()));
    History history = log.read();
    assertEquals(List.of(), history.damaged());
    assertEquals(
        IntStream.range(0, 2 * each).mapToObj(Entries::numbered).collect(Collectors.toSet()),
        new HashSet<>(history.entries()));
    assertEquals(2 * each, history.entries().size());
  }

  @Test
  void twoThreadsAtOnceLoseNothing() throws Exception {
    PracticeLog log = new PracticeLog(folder.resolve("practice.jsonl"));
    IntStream.range(0, 100)
        .parallel()
        .forEach(
            number -> {
              try {
                new PracticeLog(log.file()).append(Entries.numbered(number));
              } catch (IOException failed) {
                throw new IllegalStateException(failed);
              }
            });
    assertEquals(100, new HashSet<>(log.read().entries()).size());
  }

  private static void drain(Process writer) throws IOException {
    try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
      said.lines().forEach(line -> assertTrue(line.matches("\\d+"), line));
    }
  }
}
