package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class FitCommandTest {

  private static final int A_SCREENFUL = 24;

  @TempDir private Path folder;

  /** 3 + 7 matras with own words: 2 1/2 beats, and 22 more are wanted. */
  @Test
  void scoresWithSollusOfOnesOwnAreReadWithTheList() throws IOException {
    Path list = folder.resolve("own.txt");
    Files.writeString(list, "vu : vu : v u\n7 = vu , di , gi na tom\n");
    Path scores = Files.createDirectory(folder.resolve("scores"));
    Path score = scores.resolve("own.loom");
    Files.writeString(score, "tala adi\nSong = vuvuta 7\n");
    Path mended = folder.resolve("mended.loom");
    String own = list.toString();
    for (List<String> asked :
        List.of(
            List.of("fit", score.toString()),
            List.of("fit", score.toString(), "--apply", "1", "-o", mended.toString()),
            List.of("convert", score.toString(), "--nadai", "5"),
            List.of("shape", score.toString()))) {
      List<String> listed = new ArrayList<>(asked);
      assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of(listed.toArray(String[]::new)).code());
      listed.addAll(List.of("--lexicon", own));
      CommandLineRun run = CommandLineRun.of(listed.toArray(String[]::new));
      assertTrue(run.code() <= ExitCode.CHECK_FAILED, run.err());
    }
    assertEquals(
        ExitCode.DONE, CommandLineRun.of("check", mended.toString(), "--lexicon", own).code());
    String folderRow = CommandLineRun.of("check", scores.toString(), "--lexicon", own).out();
    assertTrue(folderRow.contains("0 cannot be read"), folderRow);
  }

  @Test
  void numbersGiveTheLength() {
    CommandLineRun run =
        CommandLineRun.of("fit", "--tala", "adi", "--as", "4-4-5", "--matras", "70..90");
    assertEquals(
        """
        4-4-5 in adi (8 beats), 70 to 90 matras, from samam to samam:
          80 matras: 20 + 20 + 16 = 56 beats = 7 avartanas
        """,
        run.out());
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
  }

  /** 16 + 12 + 8 and 8(2)8(2)8 are 64 matras: 16 + 16 + 12 4/5 beats, in sevens of six and rest. */
  @Test
  void aSumNamesItsTalaAndRounds() {
    String asOptions =
        CommandLineRun.of(
                "fit", "16 12 8 8(2)8(2)8", "--tala", "rupaka", "--as", "4-4-5", "--start", "+1")
            .out();
    assertTrue(asOptions.contains("64 matras"), asOptions);
    assertEquals(
        asOptions,
        CommandLineRun.of("fit", "16 12 8 + 8(2)8(2)8 in rupaka, 4-4-5, start +1").out());
    assertEquals(
        CommandLineRun.of("fit", "16 12 8", "--tala", "misra chapu").out(),
        CommandLineRun.of("fit", "16 + 12 + 8 = 36 in misra chapu").out());
    String two = CommandLineRun.of("fit", "16 in rupaka", "--tala", "adi").err();
    assertTrue(two.contains("the sum is in rupaka and --tala says adi; take one"), two);
    String unknown = CommandLineRun.of("fit", "16 in ropaka").err();
    assertTrue(unknown.contains("rupaka"), unknown);
  }

  /** The answer to a printed sum that does not land: one matra before samam, or one matra less. */
  /** 14 + 19 = 33 begun one late ends two past samam; one before samam it lands. */
  @Test
  void aSumIsReadAsItStandsOnPaper() {
    String asOption = CommandLineRun.of("fit", "14 + 5(2)5(2)5", "--start", "1 matra late").out();
    assertTrue(asOption.contains("1  start on beat 8 3/4"), asOption);
    for (String paper :
        List.of(
            "14 + 5(2)5(2)5 in 32, start one late",
            "14+5(2)5(2)5 = 33 in 32 matras, starting 1 matra after samam",
            "14 + 5(2)5(2)5 start beat 1, 2nd matra")) {
      assertEquals(asOption, CommandLineRun.of("fit", paper).out(), paper);
    }
    assertTrue(
        CommandLineRun.of("fit", "14 + 5(2)5(2)5, start one early").out().contains("It lands"));
    assertTrue(
        CommandLineRun.of("fit", "14 + 5(2)5(2)5 = 32")
            .err()
            .contains("the sum comes to 33 matras, not 32"));
    assertTrue(
        CommandLineRun.of("fit", "14 + 5(2)5(2)5 in 32", "--tala", "rupaka")
            .err()
            .contains("32 matras are not whole avartanas of chatusra rupaka, which has 24"));
  }

  /** Where the end can only fall on one place, no second one is offered. */
  @Test
  void thePlaceThatCanBeReachedIsNamedOnce() {
    CommandLineRun run = CommandLineRun.of("fit", "--as", "4-4-3", "--matras", "64");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertTrue(run.out().contains("a rest before the last round"), run.out());
    assertEquals(
        1, run.out().lines().filter(line -> line.contains("land a little")).count(), run.out());
  }

  @Test
  void aSumTypedFromPaperIsRepairedInOneCommand() {
    CommandLineRun run = CommandLineRun.of("fit", "14 + 5(2)5(2)5", "--start", "1 matra late");
    assertTrue(
        run.out()
            .startsWith(
                """
                33 matras, 8 1/4 beats in all, from beat 1 1/4; \
                adi has 8 beats (32 matras).
                It misses: it ends 1/2 beat (2 matras) after samam.
                What makes it land, the smallest change first:
                  1  start on beat 8 3/4
                """),
        run.out());
    assertTrue(run.out().contains("drop 1 matra from Sum (13 for 14) and start on samam"));
    assertEquals(ExitCode.DONE, run.code());
  }

  @Test
  void whatCannotLandIsExplained() {
    CommandLineRun run = CommandLineRun.of("fit", "--as", "4-4-5", "--eduppu", "+3/4");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertTrue(run.out().contains("impossible with whole matras"), run.out());
    assertTrue(run.out().contains("tenths of a beat"), run.out());
    assertTrue(run.out().contains("eduppu to eduppu: 80 matras in 4-4-5"), run.out());
    assertTrue(run.out().contains("another start: 35 matras"), run.out());
  }

  @Test
  void twoOpenThingsFillNoMoreThanAScreen() {
    CommandLineRun run =
        CommandLineRun.of("fit", "--as", "4-4-(?n5)-5", "--start", "?", "--matras", "1..400");
    assertTrue(run.out().lines().count() <= A_SCREENFUL, run.out());
    assertTrue(run.out().contains("more; --all lists them."), run.out());
    CommandLineRun any = CommandLineRun.of("fit", "--as", "4-4-5", "--matras", "?");
    assertTrue(any.out().contains("160 matras"), any.out());
    CommandLineRun all = CommandLineRun.of("fit", "--as", "4-4-4", "--matras", "1..640", "--all");
    assertEquals(21, all.out().lines().count(), "a heading and the multiples of 32");
  }

  @ParameterizedTest
  @ValueSource(strings = {"crooked-ladder.loom", "leaking-boat.loom"})
  void threeRepairsMakeEachMissingSampleLand(String sample) throws IOException {
    Path score = Path.of("samples-synth", sample);
    String before = Files.readString(score);
    assertEquals(ExitCode.CHECK_FAILED, CommandLineRun.of("check", score.toString()).code());
    for (int way = 1; way <= 3; way++) {
      Path mended = folder.resolve(way + sample);
      CommandLineRun run =
          CommandLineRun.of(
              "fit", score.toString(), "--apply", Integer.toString(way), "-o", mended.toString());
      assertEquals(ExitCode.DONE, run.code(), run.err());
      CommandLineRun check = CommandLineRun.of("check", mended.toString());
      assertEquals(ExitCode.DONE, check.code(), run.out() + check.out());
      List<String> left = new ArrayList<>(Files.readAllLines(mended));
      List<String> changed = before.lines().filter(line -> !left.remove(line)).toList();
      assertTrue(changed.size() <= 2, changed::toString);
      assertTrue(left.size() <= 2, left::toString);
    }
    assertEquals(before, Files.readString(score), "the score itself is never touched");
  }

  @Test
  void theCopyIsNeverTheScoreItself() throws IOException {
    Path score = Files.writeString(folder.resolve("a.loom"), "tala adi\nSong = takadimi\n");
    String same = folder.resolve(".").resolve("a.loom").toString();
    CommandLineRun run = CommandLineRun.of("fit", score.toString(), "--apply", "1", "-o", same);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("is the score itself"), run.err());
    assertTrue(
        CommandLineRun.of("fit", score.toString(), "--apply", "1").err().contains("needs -o"));
    assertTrue(
        CommandLineRun.of("fit", score.toString(), "--apply", "99", "-o", "b.loom")
            .err()
            .contains("--apply takes a way from 1 to"));
    assertTrue(CommandLineRun.of("fit", "--apply", "1").err().contains("--apply needs a score"));
  }

  @Test
  void aScoreThatLandsIsLeftAlone() {
    CommandLineRun run = CommandLineRun.of("fit", "samples-synth/monsoon-ledger.loom");
    assertTrue(run.out().endsWith("It lands as it is, on samam.\n"), run.out());
    assertEquals(ExitCode.DONE, run.code());
  }

  /** A phrase of five beats in misra chapu is led into with two takitas (Tamil lesson page). */
  @Test
  void leadInWordsAreNamedAndSpoken() throws IOException {
    CommandLineRun numbers =
        CommandLineRun.of(
            "fit", "--tala", "misra chapu", "--as", "3", "--matras", "15", "--start", "?");
    assertTrue(numbers.out().endsWith("to samam; lead in: 2 x takita\n"), numbers.out());
    write("lead.loom", "tala misra chapu\nstart beat 3\nSong = 15\nperform\n Song nadai 3\n");
    String score = folder.resolve("lead.loom").toString();
    assertTrue(
        CommandLineRun.of("fit", score).out().contains("Lead in from samam with 2 x takita."));
    String plain = CommandLineRun.of("events", score, "--csv").out();
    String led = CommandLineRun.of("events", score, "--csv", "--lead-in").out();
    List<String> spoken = new ArrayList<>(led.lines().toList());
    plain.lines().forEach(spoken::remove);
    assertEquals(
        List.of("0,ta", "1/3,ki", "2/3,ta", "1,ta", "4/3,ki", "5/3,ta"),
        spoken.stream().map(line -> line.split(",")[2] + "," + line.split(",")[5]).toList());
    long nine =
        CommandLineRun.of("events", score, "--csv", "--lead-in", "--lead-in-avartanas", "1")
                .out()
                .lines()
                .count()
            - plain.lines().count();
    assertEquals(27, nine, "with one full cycle more there are nine takitas");
  }

  @Test
  void mistakesAreExplained() {
    assertTrue(error("fit").contains("say the rounds, such as --as 4-4-5"));
    assertTrue(error("fit", "--as", "4-x-5").contains("\"x\" is not a round or a rest"));
    assertTrue(error("fit", "--as", "4", "--tala", "adl").contains("the nearest is adi"));
    assertTrue(error("fit", "--as", "4", "--start", "5").contains("write beat 5"));
    assertTrue(error("fit", "--as", "4", "--matras", "9..2").contains("given 9..2"));
    assertTrue(error("fit", "nothing-here.loom").contains("there is no such file"));
    assertEquals(
        """
        the sum: error: no sollus known for "hoopla"
        14 + hoopla
             ^~~~~~
        help: the nearest is toomla
        """,
        error("fit", " 14 + hoopla"));
    assertTrue(
        error("fit", "14 + 3x7", "--as", "5")
            .startsWith(
                "the sum: error: x after a bare number can mean a repeat or a hold\n14 + 3x"));
  }

  @Test
  void jsonGivesExactNumbers() {
    String out = CommandLineRun.of("fit", "--as", "4-4-5", "--matras", "80", "--json").out();
    assertTrue(
        out.contains("\"roundBeats\" : [\n        \"0\",\n        \"20\",\n        \"40\"\n"));
    assertTrue(out.contains("\"count\" : 1"), out);
    String repairs = CommandLineRun.of("fit", "samples-synth/leaking-boat.loom", "--json").out();
    assertTrue(repairs.contains("\"kind\" : \"wait\""), repairs);
    assertTrue(repairs.contains("\"missBeats\" : \"-16/5\""), repairs);
  }

  @Test
  void aFolderIsListedAndSearched() throws IOException {
    write("a.loom", "title One\ntala adi\nSong = 8 8 8 8\n");
    write("b.loom", "title Two\ntala rupaka\nSong = 9 7 5 4\nperform\n Song nadai 5\n");
    write("c.loom", "title Three\ntala adi\nSong = hoopla\n");
    CommandLineRun run = CommandLineRun.of("fit", folder.toString());
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    List<String> lines =
        run.out().replaceAll("\n {4}", " ").lines().map(l -> l.replaceAll(" +", " ")).toList();
    assertEquals("a.loom adi 32 4 sama lands", lines.get(1));
    assertTrue(lines.get(2).startsWith("b.loom chatusra rupaka 25 5 gopuccha"), lines.get(2));
    assertTrue(lines.get(2).contains("1 beat early; start"), lines.get(2));
    assertTrue(lines.get(3).contains("cannot be read: line 3:"), lines.get(3));
    assertEquals("3 scores: 1 land, 1 miss, 1 cannot be read.", lines.get(4));
    assertEquals(List.of("a.loom"), listed("--tala", "adi"));
    assertEquals(List.of("b.loom"), listed("--nadai", "5"));
    assertEquals(List.of("b.loom"), listed("--yati", "gopuccha"));
    assertEquals(List.of("a.loom"), listed("--matras", "30..40"));
    assertEquals(List.of(), listed("--matras", "30..40", "--nadai", "5"));
  }

  @Test
  void checkListsAFolderToo() throws IOException {
    write("a.loom", "title One\ntala adi\nSong = 8 8 8 8\n");
    write("b.loom", "title Two\ntala adi\nSong = 8 | 8 8 8 ||\n");
    CommandLineRun run = CommandLineRun.of("check", folder.toString());
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    List<String> lines =
        run.out().replaceAll("\n {4}", " ").lines().map(l -> l.replaceAll(" +", " ")).toList();
    assertEquals("a.loom adi 32 4 sama lands", lines.get(1));
    assertEquals("b.loom adi 32 4 sama lands; a bar stands wrong", lines.get(2));
    assertEquals("2 scores: 2 land, 0 miss, 0 cannot be read.", lines.get(3));
    assertEquals(
        "0 scores: 0 land, 0 miss, 0 cannot be read.",
        CommandLineRun.of("check", folder.toString(), "--tala", "rupaka")
            .out()
            .lines()
            .skip(1)
            .findFirst()
            .orElse(""));
  }

  @Test
  void aFolderWithoutScoresIsSaidSo() {
    assertTrue(error("fit", folder.toString()).contains("holds no score"));
  }

  private List<String> listed(String... options) {
    String[] arguments =
        Stream.concat(Stream.of("fit", folder.toString()), Stream.of(options))
            .toArray(String[]::new);
    return CommandLineRun.of(arguments)
        .out()
        .lines()
        .map(line -> line.split(" ")[0])
        .filter(name -> name.endsWith(".loom"))
        .toList();
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private static String error(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
    assertFalse(run.err().contains("Exception"), run.err());
    return run.err();
  }
}
