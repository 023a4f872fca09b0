package org.matraloom.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Faults are put in at every byte: what was kept before them is always read. */
class PracticeLogTest {

  private static final List<LogEntry> FIVE =
      IntStream.range(0, 5).mapToObj(Entries::numbered).toList();

  @TempDir private Path folder;
  private PracticeLog log;

  @BeforeEach
  void name() {
    log = new PracticeLog(folder.resolve("new/folder/practice.jsonl"));
  }

  @Test
  void whatWasAddedIsReadInOrder() throws IOException {
    assertEquals(new History(List.of(), List.of()), log.read());
    writeFive();
    assertEquals(new History(FIVE, List.of()), log.read());
    assertEquals(5, Files.readAllLines(log.file()).size());
    assertTrue(log.read().holds("sha256:3"));
    assertFalse(log.read().holds("sha256:77"));
  }

  @Test
  void brokenOffAtAnyByteTheEarlierRecordsAreReadAndTheRestIsTold() throws IOException {
    byte[] whole = writeFive();
    int afterThree = lineEnds(whole)[2];
    int torn = 0;
    for (int length = afterThree; length <= whole.length; length++) {
      Files.write(log.file(), Arrays.copyOf(whole, length));
      History history = log.read();
      int complete = completeRecords(whole, length);
      assertEquals(FIVE.subList(0, complete), history.entries(), "cut at byte " + length);
      int tornBytes = tornBytes(whole, length);
      assertEquals(tornBytes > 0 ? 1 : 0, history.damaged().size(), "cut at byte " + length);
      if (tornBytes > 0) {
        torn++;
        assertEquals(complete + 1, history.damaged().get(0).number());
        assertEquals(tornBytes, history.damaged().get(0).bytes());
      }
    }
    assertTrue(torn > 300, "lines were torn: " + torn);
  }

  @Test
  void addingAfterABreakAtAnyByteLosesNothing() throws IOException {
    byte[] whole = writeFive();
    LogEntry next = Entries.numbered(99);
    for (int length = lineEnds(whole)[3]; length < whole.length; length++) {
      Files.write(log.file(), Arrays.copyOf(whole, length));
      log.append(next);
      History history = log.read();
      int complete = completeRecords(whole, length);
      assertEquals(FIVE.subList(0, complete), history.entries().subList(0, complete));
      assertEquals(next, history.entries().get(complete), "cut at byte " + length);
      assertEquals(tornBytes(whole, length) > 0 ? 1 : 0, history.damaged().size());
      byte[] kept = Arrays.copyOf(Files.readAllBytes(log.file()), length);
      assertArrayEquals(Arrays.copyOf(whole, length), kept, "no byte was taken away");
    }
  }

  /** A spoilt byte may turn one text or number into another, but never reaches other lines. */
  @Test
  void aSpoiltByteAnywhereHarmsItsOwnLineOnly() throws IOException {
    byte[] whole = writeFive();
    int from = lineEnds(whole)[1];
    int to = lineEnds(whole)[2] - 1;
    int told = 0;
    for (int at = from; at < to; at++) {
      for (int spoilt : new int[] {0, 0xFF, '"', '{'}) {
        byte[] bytes = whole.clone();
        bytes[at] = (byte) spoilt;
        Files.write(log.file(), bytes);
        History history = log.read();
        List<LogEntry> others = history.entries().stream().filter(FIVE::contains).toList();
        assertTrue(others.containsAll(List.of(FIVE.get(0), FIVE.get(1), FIVE.get(3), FIVE.get(4))));
        assertEquals(5, history.entries().size() + history.damaged().size(), "byte " + at);
        history.damaged().forEach(line -> assertEquals(3, line.number()));
        told += history.damaged().size();
      }
    }
    assertTrue(told > 400, "damage was told: " + told);
  }

  @Test
  void damagedLinesAreSetAsideWhenAskedForAndNotBefore() throws IOException {
    byte[] whole = writeFive();
    byte[] zeros = new byte[3000];
    String half = "{\"when\":\"2026-03-04T19:30:00+01:00\",\"kind\":\"take\",\"pie";
    Files.write(
        log.file(), "\n\r\nnot JSON at all\n[]\n".getBytes(UTF_8), StandardOpenOption.APPEND);
    Files.write(log.file(), zeros, StandardOpenOption.APPEND);
    Files.writeString(log.file(), "\n" + half, StandardOpenOption.APPEND);
    byte[] before = Files.readAllBytes(log.file());

    assertEquals(
        List.of(8L, 9L, 10L, 11L), log.read().damaged().stream().map(DamagedLine::number).toList());
    assertArrayEquals(before, Files.readAllBytes(log.file()));
    assertFalse(Files.exists(log.damagedFile()));

    assertEquals(4, log.mend());
    assertArrayEquals(whole, Files.readAllBytes(log.file()));
    String zeroText = new String(zeros, UTF_8);
    assertEquals(
        "not JSON at all\n[]\n" + zeroText + "\n" + half + "\n",
        Files.readString(log.damagedFile()));
    assertEquals(0, log.mend());
    log.append(Entries.numbered(6));
    assertEquals(6, log.read().entries().size());
    try (var files = Files.list(log.file().getParent())) {
      assertEquals(
          List.of("practice.jsonl", "practice.jsonl.damaged", "practice.jsonl.lock"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aLineOfManyMegabytesIsSteppedOver() throws IOException {
    writeFive();
    byte[] junk = new byte[5 * LogLines.LONGEST];
    Arrays.fill(junk, (byte) 'x');
    Files.write(log.file(), junk, StandardOpenOption.APPEND);
    log.append(Entries.numbered(5));
    History history = log.read();
    assertEquals(6, history.entries().size());
    assertEquals(
        List.of(new DamagedLine(6, junk.length, "it is far too long for a record")),
        history.damaged());
    assertEquals(1, log.mend());
    assertEquals(junk.length + 1, Files.size(log.damagedFile()));
    assertEquals(6, log.read().entries().size());
  }

  @Test
  void whatIsTakenBackCountsNoLongerAndStaysInTheFile() throws IOException {
    OffsetDateTime later = Entries.EVENING.plusDays(1);
    assertEquals(Optional.empty(), log.withdrawNewest(later));
    assertFalse(Files.exists(log.file().getParent()));
    byte[] whole = writeFive();
    assertEquals(Optional.of(FIVE.get(4)), log.withdrawNewest(later));
    assertEquals(Optional.of(FIVE.get(3)), log.withdrawNewest(later));
    assertEquals(
        new History(FIVE.subList(0, 3), List.of(), List.of(FIVE.get(4), FIVE.get(3))), log.read());
    assertFalse(log.read().holds("sha256:4"), "a take that was taken back may be noted again");
    assertArrayEquals(whole, Arrays.copyOf(Files.readAllBytes(log.file()), whole.length));

    log.append(FIVE.get(4));
    log.append(FIVE.get(4));
    assertEquals(Optional.of(FIVE.get(4)), log.withdrawNewest(later));
    assertEquals(List.of(FIVE.get(0), FIVE.get(1), FIVE.get(2), FIVE.get(4)), log.read().entries());
    assertEquals(0, log.mend());
    while (log.withdrawNewest(later).isPresent()) {}
    assertEquals(List.of(), log.read().entries());
    assertEquals(7, log.read().withdrawn().size());
  }

  /** A withdrawal that is cut off takes nothing back, or what it was to; never another. */
  @Test
  void brokenOffAtAnyByteAWithdrawalReachesNoOtherRecord() throws IOException {
    byte[] five = writeFive();
    log.withdrawNewest(Entries.EVENING.plusDays(1));
    byte[] whole = Files.readAllBytes(log.file());
    int kept = 0;
    for (int length = five.length; length <= whole.length; length++) {
      Files.write(log.file(), Arrays.copyOf(whole, length));
      History history = log.read();
      boolean isComplete = length >= whole.length - 1;
      assertEquals(FIVE.subList(0, isComplete ? 4 : 5), history.entries(), "cut at " + length);
      assertEquals(length == five.length || isComplete ? 0 : 1, history.damaged().size());
      kept += isComplete ? 0 : 1;
    }
    assertTrue(kept > 80, "lines were torn: " + kept);
  }

  @Test
  void keysOfALaterProgramArePassedOver() throws IOException {
    Files.createDirectories(log.file().getParent());
    Files.writeString(
        log.file(),
        "{\"mood\":{\"calm\":[1,2]},\"when\":\"2026-03-04T19:30:00+01:00\",\"kind\":\"note\","
            + "\"piece\":\"Rain\"}\n");
    History history = log.read();
    assertEquals(List.of(), history.damaged());
    assertEquals(List.of("Rain"), history.pieces());
  }

  /** An older program wrote no places; a later one may know more kinds of them, or more of one. */
  @Test
  void placesAreReadWhoeverWroteThem() throws IOException {
    String head = "{\"when\":\"2026-03-04T19:30:00+01:00\",\"kind\":\"take\",\"piece\":\"Rain\"";
    List<String> lines =
        List.of(
            head + "}",
            head + ",\"places\":[[\"sway\",1,\"\",3],[\"into\",2,\"4>5\",31.2,{\"more\":[1]}]]}",
            head + ",\"places\":[[\"into\",2,\"4>5\"]]}",
            head + ",\"places\":[[\"into\",\"2\",\"4>5\",31.2]]}",
            head + ",\"places\":{\"into\":2}}",
            head + ",\"places\":[[\"into\",-2,\"4>5\",31.2]]}",
            head + ",\"places\":[[\"into\",2,\"4>5\",1e9]]}",
            head + ",\"places\":[" + "[\"into\",2,\"\",1],".repeat(64) + "[\"into\",2,\"\",1]]}");
    Files.createDirectories(log.file().getParent());
    Files.write(log.file(), lines);
    History history = log.read();
    assertEquals(2, history.entries().size());
    assertEquals(List.of(), history.entries().get(0).outcome().places());
    assertEquals(
        List.of(new PlaceNote(new ScorePlace(ScorePlace.Kind.INTO, 2, "4>5"), 31.2)),
        history.entries().get(1).outcome().places());
    assertEquals(
        List.of(3L, 4L, 5L, 6L, 7L, 8L),
        history.damaged().stream().map(DamagedLine::number).toList());
  }

  private byte[] writeFive() throws IOException {
    for (LogEntry entry : FIVE) {
      log.append(entry);
    }
    return Files.readAllBytes(log.file());
  }

  /** Where each line has ended, its end included. */
  private static int[] lineEnds(byte[] bytes) {
    return IntStream.range(0, bytes.length).filter(i -> bytes[i] == '\n').map(i -> i + 1).toArray();
  }

  /** A record counts as complete without its line end. */
  private static int completeRecords(byte[] whole, int length) {
    return (int) Arrays.stream(lineEnds(whole)).filter(end -> end - 1 <= length).count();
  }

  private static int tornBytes(byte[] whole, int length) {
    int[] ends = lineEnds(whole);
    int complete = completeRecords(whole, length);
    int from = complete == 0 ? 0 : ends[complete - 1];
    return Math.max(0, length - from);
  }
}
