package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;

/** What is read is not written over, and what is no log or no list is not taken for one. */
class InputsKeptTest {

  private static final String SCORE = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  private void isKept(Path file, String... arguments) throws IOException {
    byte[] before = Files.readAllBytes(file);
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out() + run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(Arrays.equals(before, Files.readAllBytes(file)), file.toString());
  }

  @Test
  void theListOfSollusIsNotWrittenOver() throws IOException {
    Path list = Files.writeString(folder.resolve("own.txt"), "zz : zz : t a\n");
    String own = list.toString();
    isKept(list, "sheet", SCORE, "--lexicon", own, "-o", own);
    Path linked = Files.createSymbolicLink(folder.resolve("linked.csv"), list);
    isKept(list, "export", SCORE, "--lexicon", own, "-o", linked.toString());
    CommandLineRun other =
        CommandLineRun.of(
            "sheet", SCORE, "--lexicon", own, "-o", folder.resolve("other.txt").toString());
    assertEquals(ExitCode.DONE, other.code(), other.err());
  }

  @Test
  void thePracticeLogIsNotWrittenOver() throws IOException {
    Path log = folder.resolve("p.svg");
    String file = log.toString();
    CommandLineRun added =
        CommandLineRun.of("log", "add", "Song", "--tempo", "60", "--log-file", file);
    assertEquals(ExitCode.DONE, added.code(), added.err());
    isKept(log, "log", "--log-file", file, "--csv", file);
    isKept(log, "log", "--log-file", file, "--picture", file);
  }

  @Test
  void aScoreIsNoPracticeLog() throws IOException {
    Path score = Files.copy(Path.of(SCORE), folder.resolve("me.loom"));
    String file = score.toString();
    isKept(score, "log", "add", "Song", "--tempo", "60", "--log-file", file);
    isKept(score, "log", "--log-file", file);
  }

  @Test
  void whatWasPractisedIsForItsOwnerAlone() throws IOException {
    Path log = folder.resolve("practice.jsonl");
    CommandLineRun.of("log", "add", "Song", "--tempo", "60", "--log-file", log.toString());
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(log)));
  }

  @Test
  void aHugeListIsNotReadWhole() throws IOException {
    Path huge = folder.resolve("huge.txt");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(3_000_000_000L);
    }
    CommandLineRun run = CommandLineRun.of("check", SCORE, "--lexicon", huge.toString());
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("more than 4 MB"), run.err());
  }

  @Test
  void noControlCharacterOfATitleReachesTheTerminal() throws IOException {
    Path score =
        Files.writeString(
            folder.resolve("e.loom"), "title a\u001b]0;gone\u0007b\u202ec\ntala adi\nA = ta\n");
    CommandLineRun run = CommandLineRun.of("check", score.toString());
    String shown = run.out() + run.err();
    assertTrue(shown.startsWith("a\ufffd]0;gone\ufffdb\ufffdc"), shown);
    assertFalse(shown.contains("\u001b") || shown.contains("\u202e"), shown);
  }

  @Test
  void noFormulaStandsInATableOfTheLog() {
    String log = folder.resolve("f.jsonl").toString();
    CommandLineRun.of("log", "add", "=1+1", "--tempo", "60", "--log-file", log);
    CommandLineRun run = CommandLineRun.of("log", "--log-file", log, "--csv", "-");
    assertTrue(run.out().contains(",'=1+1,"), run.out());
  }

  @Test
  void anAnswerThatCouldNotBeWrittenIsNoSuccess() {
    AnswerStream full = new AnswerStream(failing("No space left on device"));
    assertEquals("", full.fault().orElse(""));
    writes(full);
    assertEquals("No space left on device", full.fault().orElse(""));
    AnswerStream closed = new AnswerStream(failing("Broken pipe"));
    writes(closed);
    assertTrue(closed.fault().isEmpty(), "a reader that has enough is no fault");
  }

  private static void writes(AnswerStream stream) {
    try {
      stream.write('x');
      throw new AssertionError("it fails");
    } catch (IOException asMeant) {
      assertTrue(asMeant.getMessage().length() > 3);
    }
  }

  private static OutputStream failing(String words) {
    return new OutputStream() {
      @Override
      public void write(int letter) throws IOException {
        throw new IOException(words);
      }
    };
  }
}
