package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.DemoScore;
import org.matraloom.app.cli.ExitCode;

class CheckCommandTest {

  @TempDir private Path folder;

  @Test
  void provesTheDemoPieceInWords() throws IOException {
    CommandLineRun run = check(DemoScore.text());
    assertEquals("", run.err());
    assertEquals(
        """
        River Steps
        adi (I4 O O), 8 beats; tempo 66; from samam to samam

        round  phrase       nadai        begins on      matras    beats
        1      Steps        chatusra     samam              80       20
        2      Steps        chatusra     beat 5             80       20
        3      Steps        khanda       samam              80       16

        Sum: 80 + 80 + 80 = 240 matras; 20 + 20 + 16 = 56 beats = 7 avartanas.
        It lands: the last matra ends on samam.
        Matras a second: 4.4 in chatusra, 5.5 in khanda.
        """,
        run.out());
    assertEquals(ExitCode.DONE, run.code());
  }

  @Test
  void tellsTheMissInMatrasAndBeats() throws IOException {
    CommandLineRun run = check("tala adi\nOver = (takadimi) x8 ta\n");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertTrue(
        run.out()
            .contains(
                "It misses: the last matra ends on beat 1 1/4, 1 matra (1/4 beat) too late for\n"
                    + "  samam.\n"),
        run.out());
    assertTrue(run.out().contains("Start on beat 8 3/4 and it lands as it is"), run.out());
  }

  @Test
  void aShortPieceIsToldToGrowAndNotToLoseAllItHas() throws IOException {
    CommandLineRun run = check("tala adi\nWord = takadimi\n");
    assertTrue(run.out().contains("Sum: 4 matras; 1 beat.\n"), run.out());
    assertTrue(run.out().contains("or add 28 matras in the last round."), run.out());
  }

  /** 72 matras are 18 + 18 + 14 2/5 beats: six times eight, and 2 2/5 over. */
  @Test
  void countsWholeAvartanasAndKeepsItsColumns() throws IOException {
    CommandLineRun run =
        check(
            "tala adi\nstart beat 3 1/4\nALongNameOfAPhrase = (takadimi) x18\nperform\n"
                + "  ALongNameOfAPhrase x2\n  ALongNameOfAPhrase nadai 5\n");
    assertTrue(run.out().contains("= 50 2/5 beats = 6 avartanas\n  and 2 2/5 beats.\n"), run.out());
    assertTrue(run.out().contains("No start on a matra mends it"), "the miss is 3 7/20 beats");
    assertFalse(run.out().contains("cut 16 3/4"), run.out());
    List<String> table =
        run.out().lines().dropWhile(line -> !line.startsWith("round")).limit(4).toList();
    assertEquals(4, table.size());
    table.forEach(line -> assertEquals(table.get(0).length(), line.length(), line));
  }

  @Test
  void offersNoStartToAPlanThatWaits() throws IOException {
    String score = "tala adi\nOver = (takadimi) x8 ta\nperform\n  Over\n  until beat 1\n  Over\n";
    CommandLineRun run = check(score);
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertFalse(run.out().contains("lands as it is"), run.out());
    assertTrue(run.out().contains("no other start mends it: cut 1 matra"), run.out());
    assertEquals("null", topLevel(check(score, "--json").out()).get("startThatLands"));
  }

  @Test
  void writesTheLandingAsJson() throws IOException {
    Map<String, String> fields =
        topLevel(
            check(
                    "tala adi\nSong = (takadimi) x16\nperform\n  Song x2 nadai 4\n  Song nadai 5\n",
                    "--json")
                .out());
    assertEquals("224/5", fields.get("beats"));
    assertEquals("192", fields.get("matras"));
    assertEquals("28/5", fields.get("avartanas"));
    assertEquals("false", fields.get("lands"));
    assertEquals("-16", fields.get("missMatras"));
    assertEquals("-16/5", fields.get("missBeats"));
  }

  @Test
  void namesAFalseBarAndFails() throws IOException {
    CommandLineRun run = check("tala adi\nSong = (takadimi) x5 | (takadimi) x3 ||\n");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertTrue(run.out().contains("It lands"), run.out());
    assertTrue(run.out().contains("Note: line 2, column 22: the bar | says"), run.out());
    assertTrue(run.out().contains("1 beat after the end of one"), run.out());
  }

  @Test
  void readsAtAnotherTempo() throws IOException {
    Path score = score(DemoScore.text());
    CommandLineRun run =
        CommandLineRun.of("check", score.toString(), "--tempo", "100", "--slow", "75%");
    assertTrue(run.out().contains("tempo 75;"), run.out());
  }

  @Test
  void aMissingFileIsOnePlainSentence() {
    CommandLineRun run = CommandLineRun.of("check", folder.resolve("none.loom").toString());
    assertEquals("", run.out());
    assertFalse(run.err().contains("Exception"), run.err());
    assertTrue(run.err().contains("none.loom: error: there is no such file"), run.err());
    assertEquals(ExitCode.BAD_INPUT, run.code());
  }

  @Test
  void aBrokenScoreIsBadInput() throws IOException {
    CommandLineRun run = check("tala rupoka\nSong = takadimx\n");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains(":1:6: error:"), run.err());
    assertTrue(run.err().contains(":2:8: error:"), run.err());
  }

  @Test
  void anUnknownOptionIsBadUsage() {
    CommandLineRun run = CommandLineRun.of("check", "--jsom", "x.loom");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().startsWith("matraloom: Unknown option: '--jsom'"), run.err());
  }

  private CommandLineRun check(String text, String... options) throws IOException {
    String[] arguments = new String[options.length + 2];
    arguments[0] = "check";
    arguments[1] = score(text).toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return CommandLineRun.of(arguments);
  }

  private Path score(String text) throws IOException {
    return Files.writeString(folder.resolve("piece.loom"), text);
  }

  private static Map<String, String> topLevel(String json) throws IOException {
    Map<String, String> fields = new LinkedHashMap<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      assertEquals(JsonToken.START_OBJECT, parser.nextToken());
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        parser.nextToken();
        fields.put(name, parser.getText());
        parser.skipChildren();
      }
    }
    return fields;
  }
}
