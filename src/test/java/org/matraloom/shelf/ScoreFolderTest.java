package org.matraloom.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.cli.UserError;

/** Nothing is lost, and nothing outside the folder is touched. */
class ScoreFolderTest {

  private static final ScoreName RAIN = new ScoreName("rain.loom");

  /** A clock that a test turns. */
  private static final class Turned extends Clock {
    private long ms = 1_700_000_000_000L;

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return Instant.ofEpochMilli(ms);
    }
  }

  @TempDir private Path top;
  private Path folder;
  private ScoreFolder scores;
  private final Turned clock = new Turned();

  @BeforeEach
  void open() throws IOException {
    folder = Files.createDirectory(top.resolve("scores"));
    Files.writeString(top.resolve("outside.loom"), "secret");
    scores = new ScoreFolder(folder, top.resolve("kept"), clock);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../outside.loom",
        "..\\outside.loom",
        "/etc/passwd",
        "/outside.loom",
        "a/b.loom",
        ".loom",
        "..loom",
        ".hidden.loom",
        "a\u0000.loom",
        "a\n.loom",
        "C:a.loom",
        "con.loom",
        "a..loom",
        " a.loom",
        "a .loom",
        "a\u202e.loom",
        "a.txt",
        "a",
        ""
      })
  void aNameThatIsAWayIsRefused(String name) {
    assertThrows(UserError.class, () -> new ScoreName(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"rain.loom", "மழை.loom", "été 2.loom", "a+b,c (slow)'s.loom", "v1.2.loom"})
  void plainNamesAreTaken(String name) throws IOException {
    ScoreName taken = new ScoreName(name);
    scores.create(taken, "x");
    assertEquals(List.of(taken), scores.names());
    assertEquals("x", scores.read(taken).text());
  }

  @Test
  void aNameTooLongForAFolderIsRefused() {
    assertThrows(UserError.class, () -> new ScoreName("ம".repeat(40) + ".loom"));
  }

  @Test
  void linksAreNoScores() throws IOException {
    Files.createSymbolicLink(folder.resolve("rain.loom"), top.resolve("outside.loom"));
    Files.createSymbolicLink(folder.resolve("loose.loom"), Path.of("nowhere"));
    Files.createDirectory(folder.resolve("dir.loom"));
    assertEquals(List.of(), scores.names());
    for (String name : List.of("rain", "loose", "dir")) {
      ScoreName score = ScoreName.of(name);
      assertThrows(UserError.class, () -> scores.read(score), name);
      assertThrows(UserError.class, () -> scores.save(score, "x", ""), name);
      assertThrows(UserError.class, () -> scores.discard(score), name);
      assertThrows(UserError.class, () -> scores.rename(score, ScoreName.of("b")), name);
    }
    assertEquals("secret", Files.readString(top.resolve("outside.loom")));
    assertFalse(Files.exists(folder.resolve("nowhere")));
  }

  @Test
  void whatAnotherWroteIsNotWrittenOver() throws IOException {
    scores.create(RAIN, "one");
    String stamp = scores.read(RAIN).stamp();
    Files.writeString(folder.resolve("rain.loom"), "from elsewhere");
    SaveOutcome outcome = scores.save(RAIN, "two", stamp);
    SaveOutcome.Changed changed = (SaveOutcome.Changed) outcome;
    assertEquals("from elsewhere", changed.now().text());
    assertEquals("from elsewhere", Files.readString(folder.resolve("rain.loom")));
    outcome = scores.save(RAIN, "two", changed.now().stamp());
    assertEquals(SavedText.of("two").stamp(), ((SaveOutcome.Saved) outcome).stamp());
    assertEquals("two", Files.readString(folder.resolve("rain.loom")));
    List<KeptVersion> versions = scores.versions().of(RAIN);
    assertEquals("from elsewhere", scores.versions().text(RAIN, versions.get(1).id()));
  }

  @Test
  void twoPagesThatTypeTheSameAreOfOneMind() throws IOException {
    scores.create(RAIN, "one");
    String stamp = scores.read(RAIN).stamp();
    assertTrue(scores.save(RAIN, "two", stamp) instanceof SaveOutcome.Saved);
    assertTrue(scores.save(RAIN, "two", stamp) instanceof SaveOutcome.Saved);
    assertTrue(scores.save(RAIN, "three", stamp) instanceof SaveOutcome.Changed);
  }

  @Test
  void theLastTwoHundredVersionsAreKept() throws IOException {
    scores.create(RAIN, "0");
    String stamp = scores.read(RAIN).stamp();
    for (int i = 1; i <= 230; i++) {
      clock.ms += 60_000;
      stamp = ((SaveOutcome.Saved) scores.save(RAIN, "" + i, stamp)).stamp();
    }
    List<KeptVersion> versions = scores.versions().of(RAIN);
    assertEquals(TextVersions.KEPT, versions.size());
    assertEquals("230", scores.versions().text(RAIN, versions.get(0).id()));
    assertEquals("31", scores.versions().text(RAIN, versions.get(199).id()));
  }

  @Test
  void whatIsTypedInOneGoIsOneVersion() throws IOException {
    scores.create(RAIN, "");
    String stamp = scores.read(RAIN).stamp();
    for (int i = 1; i <= 15; i++) {
      clock.ms += 1_000;
      stamp = ((SaveOutcome.Saved) scores.save(RAIN, "x".repeat(i), stamp)).stamp();
    }
    List<KeptVersion> versions = scores.versions().of(RAIN);
    assertEquals(2, versions.size());
    assertEquals(15, versions.get(0).bytes());
    assertEquals(0, versions.get(1).bytes());
    assertThrows(UserError.class, () -> scores.versions().text(RAIN, "../../outside"));
  }

  @Test
  void whatIsBinnedComesBack() throws IOException {
    scores.create(RAIN, "first");
    scores.discard(RAIN);
    assertEquals(List.of(), scores.names());
    scores.create(RAIN, "second");
    scores.discard(RAIN);
    scores.create(RAIN, "third");
    assertEquals(2, scores.inBin().size());
    ScoreName back = scores.bringBack(RAIN);
    assertEquals("rain-2.loom", back.file());
    assertEquals("first", scores.read(back).text());
    assertEquals("third", scores.read(RAIN).text());
  }

  @Test
  void aNewNameIsNeverAnothersName() throws IOException {
    scores.create(RAIN, "a");
    ScoreName river = scores.create(new ScoreName("river.loom"), "b");
    assertThrows(UserError.class, () -> scores.rename(river, RAIN));
    assertEquals("a", scores.read(RAIN).text());
    scores.save(river, "b2", scores.read(river).stamp());
    scores.rename(river, ScoreName.of("brook"));
    assertEquals(2, scores.versions().of(ScoreName.of("brook")).size());
    assertEquals("rain-2.loom", scores.create(RAIN, "c").file());
  }

  @Test
  void whatAKilledProgramLeftIsSweptAndNothingElse() throws IOException {
    Files.writeString(folder.resolve(".rain.loom.1a2b.part"), "half");
    Files.writeString(folder.resolve(".mine.part"), "kept");
    new ScoreFolder(folder, top.resolve("kept"), clock);
    assertFalse(Files.exists(folder.resolve(".rain.loom.1a2b.part")));
    assertTrue(Files.exists(folder.resolve(".mine.part")));
  }

  @Test
  void aTitleMakesAName() {
    assertEquals("gutter-song.loom", ScoreName.ofTitle("Gutter Song!").file());
    assertEquals("new-piece.loom", ScoreName.ofTitle("../..").file());
    assertEquals("மழை.loom", ScoreName.ofTitle("மழை").file());
  }

  @Test
  void moreThanAScoreMayHoldIsRefused() throws IOException {
    scores.create(RAIN, "a");
    String stamp = scores.read(RAIN).stamp();
    assertThrows(UserError.class, () -> scores.save(RAIN, "x".repeat(1_000_001), stamp));
    Files.writeString(folder.resolve("big.loom"), "x".repeat(1_000_001));
    assertThrows(UserError.class, () -> scores.read(ScoreName.of("big")));
    assertEquals("a", scores.read(RAIN).text());
  }
}
