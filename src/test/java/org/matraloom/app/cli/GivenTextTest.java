package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;

/** Texts beside a score that are no texts, have no end, or are larger than the memory. */
class GivenTextTest {

  private static final String SCORE = "samples-synth/tin-roof.loom";

  @TempDir private Path folder;

  private static String refusal(Path file) {
    return assertThrows(UserError.class, () -> GivenText.read("the list", file)).getMessage();
  }

  private Path huge() throws IOException {
    Path file = folder.resolve("huge.txt");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(3L << 30);
    }
    return file;
  }

  @Test
  void whatIsNoTextIsRefusedInASentence() throws IOException {
    Path latin = Files.write(folder.resolve("latin.txt"), new byte[] {'a', (byte) 0xE4});
    assertEquals("the list " + latin + " cannot be read as UTF-8 text; save it so", refusal(latin));
    Path huge = huge();
    assertEquals("the list " + huge + " has more than 4 MB; shorten it", refusal(huge));
    assertTrue(refusal(folder).endsWith("it is no file"), refusal(folder));
    Path text = Files.writeString(folder.resolve("text.txt"), "dhim = din + thom\n");
    assertEquals("dhim = din + thom\n", GivenText.read("the list", text));
  }

  @Test
  void everyCommandThatTakesATextRefusesOneOfThreeGigabytes() throws IOException {
    String huge = huge().toString();
    String page = folder.resolve("page.svg").toString();
    String shelf = folder.resolve("voices").toString();
    Path room = Files.createDirectories(folder.resolve("class"));
    Files.copy(Path.of(SCORE), room.resolve("tin-roof.loom"));
    Files.createSymbolicLink(room.resolve("class.txt"), Path.of(huge));
    String[][] commands = {
      {"check", SCORE, "--lexicon", huge},
      {"sheet", SCORE, "--with-drum", "--strokes", huge, "-o", page},
      {"voice", "make", "rain", SCORE, "--cue", huge, "--consent", "--shelf", shelf},
      {"class", room.toString(), "-o", folder.resolve("set").toString(), "--contents"}
    };
    for (String[] command : commands) {
      CommandLineRun run = CommandLineRun.of(command);
      assertEquals(ExitCode.BAD_INPUT, run.code(), run.err());
      assertTrue(run.err().contains("more than 4 MB"), run.err());
    }
  }
}
