package org.matraloom.app.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** The sollus are listed, and can be heard and seen. */
class SollusCommandTest {

  @TempDir private Path folder;

  @Test
  void listsSollusAndWords() {
    CommandLineRun run = CommandLineRun.of("sollus");
    assertEquals(ExitCode.DONE, run.code());
    long sollus = run.out().lines().filter(line -> line.startsWith("  ")).count();
    assertTrue(sollus > 60 + 18, "sollus and at least two words for each of nine groups");
    assertTrue(run.out().contains("ta tha"), run.out());
    assertTrue(run.out().contains("ta ka di mi"), run.out());
  }

  @Test
  void writesJsonThatReads() throws IOException {
    CommandLineRun run = CommandLineRun.of("sollus", "--json");
    int names = 0;
    try (JsonParser parser = new JsonFactory().createParser(run.out())) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        names += token == JsonToken.FIELD_NAME && parser.currentName().equals("name") ? 1 : 0;
      }
    }
    assertTrue(names >= 60, "sollus: " + names);
  }

  @Test
  void saysAPhraseOfMatrasThatAreSoLong() throws IOException {
    Path file = folder.resolve("ta.wav");
    CommandLineRun run =
        CommandLineRun.of(
            "sollus", "--hear", "takadimi dhin , ,", "-o", file.toString(), "--length", "200");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    long frames = (Files.size(file) - 44) / 2;
    assertEquals(7 * 200, frames / 48.0, 40, "ms, with the first consonant before the grid");
    byte[] once = Files.readAllBytes(file);
    CommandLineRun.of(
        "sollus", "--hear", "takadimi dhin , ,", "-o", file.toString(), "--length", "200");
    assertArrayEquals(once, Files.readAllBytes(file), "the same bytes every time");
  }

  @Test
  void drawsWhatItSays() throws IOException {
    Path picture = folder.resolve("tom.png");
    CommandLineRun run =
        CommandLineRun.of("sollus", "--hear", "tom", "--picture", picture.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(ImageIO.read(picture.toFile()).getWidth() > 200);
  }

  @Test
  void takesSollusOfTheUser() throws IOException {
    Path list = Files.writeString(folder.resolve("mine.txt"), "kra : kra krah : k r a\n");
    Path file = folder.resolve("kra.wav");
    CommandLineRun run =
        CommandLineRun.of(
            "sollus", "--hear", "krah ta", "-o", file.toString(), "--lexicon", list.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(Files.size(file) > 20_000);
    assertTrue(CommandLineRun.of("sollus", "--lexicon", list.toString()).out().contains("k r a"));
  }

  @Test
  void tellsWhatIsWrong() {
    String file = folder.resolve("x.wav").toString();
    refused("no sollus known for \"xyz\"", "--hear", "xyz", "-o", file);
    refused("is silent", "--hear", ". .", "-o", file);
    refused("needs a file", "--hear", "ta");
    refused("with --hear", "-o", file);
    refused("25 to 3000 ms, given 9", "--hear", "ta", "-o", file, "--length", "9");
    refused("accents 7.0 are outside", "--hear", "ta", "-o", file, "--accents", "7");
    refused("cannot be read", "--lexicon", folder.resolve("none.txt").toString());
    assertFalse(Files.exists(Path.of(file)));
  }

  private static void refused(String why, String... arguments) {
    String[] line = new String[arguments.length + 1];
    line[0] = "sollus";
    System.arraycopy(arguments, 0, line, 1, arguments.length);
    CommandLineRun run = CommandLineRun.of(line);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.err());
    assertTrue(run.err().contains(why), run.err());
  }
}
