package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** The commands for endings, shapes, proposals, conversions and the cut by the beat. */
class ComposingCommandsTest {

  private static final String LEDGER = "samples-synth/monsoon-ledger.loom";

  @TempDir private Path folder;

  @Test
  void endingsComeWithBreathAndWords() {
    List<String> lines = lines("endings", "29", "--tempo", "80");
    assertEquals("29 matras to fill in 4 a beat at 80 beats a minute:", lines.get(0));
    assertEquals("7(4)7(4)7 full breath 0.75 s ta , di , gi na tom", lines.get(1));
    assertEquals("9(1)9(1)9 no breath 0.19 s ta , di , gi , na , tom", lines.get(2));
    assertTrue(lines.size() <= 24, "a screenful");
    assertTrue(lines.get(lines.size() - 1).endsWith("more; --all lists them."));
    String last = lastOf(lines("endings", "29", "--all"));
    assertTrue(last.startsWith("1("), last);
  }

  @Test
  void aBorrowedMatraIsLabelledInTheSum() {
    List<String> lines = lines("endings", "128", "--after", "24,75", "--all");
    assertTrue(
        lines.stream()
            .anyMatch(
                line ->
                    line.startsWith("10 10 10 ")
                        && line.endsWith(
                            "1 matra borrowed from the line before: 24 + 74 + 30 = 128")),
        lines::toString);
  }

  @Test
  void anEndingThatCannotBeSaidOnABreathComesLater() {
    List<String> slow = lines("endings", "100", "--tempo", "40", "--sollus", "20");
    String first = slow.get(1).split("\\(")[0];
    assertTrue(Integer.parseInt(first) <= 20, slow::toString);
  }

  @Test
  void fourMatrasHaveNoPlainEnding() {
    assertTrue(lines("endings", "4").stream().noneMatch(line -> line.endsWith(" s ta")));
    CommandLineRun none = CommandLineRun.of("endings", "0");
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertTrue(none.err().contains("an ending has 1 to 1000 matras; 0 would be left"), none.err());
    assertTrue(CommandLineRun.of("endings", "20", "--after", "30").err().contains("-10"));
  }

  @Test
  void shapesAreNamed() {
    assertEquals(
        "28 + 21 + 14 + 7 = 70: gopuccha (long to short), equal steps of 7\n",
        CommandLineRun.of("shape", "28", "21", "14", "7").out());
    assertEquals(
        List.of(
            "Song: 80 matras",
            "purvanga, 44 matras, srotovaha (short to long), equal steps of 2",
            "Cloud 8 (8) line",
            "Drizzle 10 (18) line",
            "Shower 12 (30) line",
            "Downpour 14 (44) section",
            "uttaranga, 36 matras, a mora 10(3)10(3)10",
            "Entry ,; 13 (57) statement",
            "Entry ,; 13 (70) statement",
            "Entry 10 (80)"),
        lines("shape", LEDGER));
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("shape").code());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("shape", "x").code());
  }

  /** What no line shows is told once, below the lines. */
  @Test
  void morasAndJointsInsideLinesAreListed() throws IOException {
    Path piece =
        Files.writeString(
            folder.resolve("weir.loom"),
            """
            tala adi
            tempo 70
            Plank = taki , taki , taki , tom , ,
            Weir = 5(2)5(2)5
            Song = Plank takadimi dhim ; takita tom Weir ; Weir ; Weir
            perform
              Song nadai 4
            """);
    assertEquals(
        List.of(
            "Song: 84 matras",
            "purvanga, 23 matras, gopuccha (long to short), steps -5, -3",
            "Plank 12 (12) line",
            "takadimi dhim ; 7 (19) pause",
            "takita tom 4 (23) section",
            "uttaranga, 61 matras, a mora of moras 5(2)5(2)5(2)5(2)5(2)5(2)5(2)5(2)5",
            "Weir ; 21 (44) statement",
            "Weir ; 21 (65) statement",
            "Weir 19 (84)",
            "inside a line, after 0: mora 2(1)2(1)2",
            "joints inside lines after 3 statement, 6 statement, 9 section, 30 statement,",
            "37 statement, 51 statement, 58 statement, 72 statement, 79 statement"),
        lines("shape", piece.toString()));
    assertJson("\"written\" : \"2(1)2(1)2\"", "shape", piece.toString());
  }

  @Test
  void linesAreProposed() {
    assertTrue(
        lines("propose", "--yati", "gopuccha", "--matras", "70")
            .contains("28 + 21 + 14 + 7 = 70: gopuccha (long to short), equal steps of 7"));
    assertTrue(
        lines("propose", "--reduce", "5").contains("5*6 5*4 5*3 5*2 30 + 20 + 15 + 10 = 75"));
    assertEquals(
        List.of(
            "Held longer from line to line:",
            "5*2 5*3 10 + 15 = 25",
            "A sollu added at the front:",
            "tom natom ginatom diginatom tadiginatom 1 + 2 + 3 + 4 + 5 = 15",
            "A sollu added at the end:",
            "ta tadi tadigi tadigina tadiginatom 1 + 2 + 3 + 4 + 5 = 15"),
        lines("propose", "--reduce", "tadiginatom", "--from", "3", "--to", "2", "--grow"));
    assertTrue(CommandLineRun.of("propose", "--reduce", "hoopla").err().contains("known sollus"));
    assertEquals(
        List.of("32 = 4 x 7 + 4: gap of 4", "16 = 2 x 7 + 2: gap of 2", "8 = 1 x 7 + 1: gap of 1"),
        lines("propose", "--turn", "32"));
    assertTrue(
        lines("propose", "--yati", "gopuccha", "--matras", "11", "--lines", "4")
            .contains("5 + 3 + 2 + 1 = 11: gopuccha (long to short), steps -2, -1, -1"));
    assertTrue(
        lines("propose", "--yati", "gopuccha", "--matras", "70..71")
            .contains("28 + 21 + 14 + 7 = 70: gopuccha (long to short), equal steps of 7"));
    CommandLineRun short6 = CommandLineRun.of("propose", "--turn", "6", "--group", "7");
    assertEquals(ExitCode.CHECK_FAILED, short6.code());
    assertEquals(
        "No group of 7 goes into a turn of 6 matras; give a longer --turn\nor a shorter --group.\n",
        short6.out());
    assertTrue(
        CommandLineRun.of("propose", "--turn", "6", "--group", "0")
            .err()
            .contains("given 6 and 0"));
    CommandLineRun none =
        CommandLineRun.of("propose", "--yati", "sama", "--matras", "31", "--lines", "4");
    assertEquals(ExitCode.CHECK_FAILED, none.code());
    assertEquals("No 4 lines of whole matras in this shape come to 31.\n", none.out());
    assertTrue(CommandLineRun.of("propose").err().contains("say --yati and --matras"));
  }

  @Test
  void aScoreIsConvertedAndWritten() throws IOException {
    List<String> versions = lines("convert", LEDGER);
    assertTrue(versions.contains("all rounds in khanda nadai (5): 48 beats, lands"));
    assertTrue(
        versions.contains(
            "the last round in tisra nadai (3): 66 2/3 beats, 8 matras (2 2/3 beats) late"));
    Path copy = folder.resolve("tisra.loom");
    CommandLineRun run =
        CommandLineRun.of("convert", LEDGER, "--nadai", "7", "--apply", "1", "-o", copy.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals(ExitCode.DONE, CommandLineRun.of("check", copy.toString()).code());
    assertTrue(Files.readString(copy).contains("Song x2  nadai 7"), Files.readString(copy));
    CommandLineRun seven = CommandLineRun.of("convert", LEDGER, "--tala", "misra chapu");
    assertTrue(seven.out().startsWith("in misra chapu (7 beats): 56 beats, lands"), seven.out());
    assertEquals(
        ExitCode.BAD_INPUT, CommandLineRun.of("convert", LEDGER, "--tala", "nowhere").code());
  }

  @Test
  void aRoundIsCutByTheBeat() {
    List<String> lines = lines("rebar", "samples-synth/gutter-song.loom", "--nadai", "5");
    assertEquals("Song in chatusra nadai (4): 60 matras, 15 beats", lines.get(0));
    assertEquals("|| 1 clap ta ki ta tom", lines.get(1));
    assertEquals("2 wave , , ta ka tom rings over the beat", lines.get(2));
    assertEquals("Song in khanda nadai (5): 60 matras, 12 beats", lines.get(17));
    assertEquals("2 wave , ta ka di mi tom rings over the beat", lines.get(19));
    assertFalse(
        CommandLineRun.of("rebar", "samples-synth/gutter-song.loom", "--round", "9")
            .err()
            .isEmpty());
  }

  /** The same answers as in words, for scripts; JSON is read here by its fields only. */
  @Test
  void everyAnswerIsWrittenAsJson() throws IOException {
    assertJson("\"written\" : \"7(4)7(4)7\"", "endings", "29", "--tempo", "80");
    assertJson("\"karvais\" : [\n        4,\n        4\n      ]", "endings", "29");
    assertJson("\"yati\" : \"gopuccha\"", "shape", "28", "21", "14", "7");
    assertJson("\"kind\" : \"mora\"", "shape", LEDGER);
    assertJson("\"steps\" : [\n        \"-2\",", "propose", "--yati", "gopuccha", "--matras", "11");
    assertJson("\"written\" : \"5*6 5*4 5*3 5*2\"", "propose", "--reduce", "5");
    assertJson("\"gapMatras\" : 4", "propose", "--turn", "32");
    assertJson("\"missBeats\" : \"8/3\"", "convert", LEDGER);
    assertJson("\"repairs\" : [", "convert", LEDGER, "--nadai", "7", "--tala", "rupaka");
    assertJson("\"marks\" : \"ta ki ta tom\"", "rebar", "samples-synth/gutter-song.loom");
  }

  private static void assertJson(String part, String... arguments) throws IOException {
    List<String> words = new ArrayList<>(List.of(arguments));
    words.add("--json");
    CommandLineRun run = CommandLineRun.of(words.toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains(part), run.out());
    int tokens = 0;
    try (JsonParser parser = new JsonFactory().createParser(run.out())) {
      while (parser.nextToken() != null) {
        tokens++;
      }
    }
    assertTrue(tokens > 5, "it is JSON");
  }

  /** Remarks never touch the marks, and no line is wider than a terminal. */
  @Test
  void remarksStandApartFromTheMarks() throws IOException {
    Path score = folder.resolve("full.loom");
    Files.writeString(
        score,
        "tala adi\nSong = dhim ; [tadiginatomtakadimitaka] , ta , dhim ta ka ta ta ta ta ta , ta\n"
            + "perform\n  Song nadai 8\n  Song nadai 9 kalam 3\n");
    int remarks = 0;
    for (String round : List.of("1", "2")) {
      CommandLineRun run = CommandLineRun.of("rebar", score.toString(), "--round", round);
      for (String line : run.out().lines().toList()) {
        assertTrue(line.length() <= 80, line);
        assertTrue(!line.contains("rings over") || line.matches(".*   \\w+ rings over .*"), line);
        remarks += line.contains("rings over") ? 1 : 0;
      }
    }
    assertTrue(remarks >= 2, "remarks: " + remarks);
  }

  private static List<String> lines(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    return run.out()
        .replaceAll("\n {40,}", " ")
        .lines()
        .map(line -> line.strip().replaceAll(" +", " "))
        .toList();
  }

  private static String lastOf(List<String> lines) {
    return lines.get(lines.size() - 1);
  }
}
