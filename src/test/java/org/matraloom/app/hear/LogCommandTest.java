package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LogOptions;

class LogCommandTest {

  @TempDir private Path folder;

  @Test
  void theTestsKeepOutOfTheUsersFolder() {
    String named = System.getenv(LogOptions.VARIABLE);
    assertTrue(named != null && named.contains("target"), "the log of the tests: " + named);
  }

  @Test
  void anEmptyLogSaysHowToBegin() {
    CommandLineRun run = log();
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("Nothing is noted yet"), run.out());
    assertFalse(Files.exists(file()), "looking makes no file");
  }

  @Test
  void cleanTempoStandsByDayAndRound() {
    add("--tempo", "60", "--clean", "--date", "2026-03-01");
    add("--tempo", "65", "--clean", "--date", "2026-03-02");
    add("--tempo", "65.5", "--clean", "--date", "2026-03-02");
    add("--tempo", "70", "--missed", "--date", "2026-03-03");
    add("--tempo", "62", "--clean", "--round", "3", "--nadai", "5", "--date", "2026-03-03");
    assertEquals(
        """
        Practice log: %s
        5 records; nothing leaves this machine.

        Gutter Song: 4 takes judged, 3 clean, 0 minutes of voice
          fastest clean take of each day, beats a minute (-: none clean)
          day              whole   round 3
                                   nadai 5
          2026-03-01          60
          2026-03-02        65.5
          2026-03-03           -        62
          next, whole: once more at 70 beats a minute,
            as there was one miss at 70; one more in a row, and it is 60

        Voice today: 0 minutes; since the last rest of 5 minutes: 0 minutes.
        """
            .formatted(file()),
        log().out());
    assertTrue(log("--clean-in-a-row", "1", "--up", "3").out().contains("next, round 3: up to 65"));
    assertTrue(log("--misses-in-a-row", "1").out().contains("whole: down to 60"));
  }

  @ParameterizedTest
  @CsvSource({
    "66! 66! 66! 69.5!, 'down to 60 beats a minute, as there were 4 misses in a row, the newest at 69.5'",
    "66, 'once more at 66 beats a minute, as there was one clean take at 66; one more in a row, and it is 71'",
    "66 67, 'up to 71 beats a minute, as there were 2 clean takes in a row at 66 or more'",
    "30! 30!, 'still at 30 beats a minute, as there were 2 misses in a row, the newest at 30'",
  })
  void theNextTempoIsGivenWithItsReason(String takes, String advice) {
    for (String take : takes.split(" ")) {
      add("--tempo", take.replace("!", ""), take.endsWith("!") ? "--missed" : "--clean");
    }
    String out = log().out().replaceAll("\\s+", " ");
    assertTrue(out.contains("next, whole: " + advice), out);
  }

  @Test
  void aLongUseOfTheVoiceIsAnsweredWithARest() {
    add("--voiced", "16");
    String out = log().out();
    assertTrue(out.contains("Voice today: 16 minutes"), out);
    assertTrue(
        out.contains("more than 15 voiced minutes: rest") && out.contains("not medical"), out);
  }

  @Test
  void theTableHasARowForEveryRecordAndRound() throws IOException {
    add("--tempo", "60", "--clean", "--remark", "wet, \"loud\"", "--date", "2026-03-01");
    add("--tempo", "62", "--missed", "--round", "3", "--nadai", "5", "--date", "2026-03-02");
    Path csv = folder.resolve("log.csv");
    assertEquals(csv + "\n", log("--csv", csv.toString()).out());
    List<String> rows = List.of(Files.readString(csv).split("\r\n"));
    assertEquals(4, rows.size());
    assertTrue(rows.get(1).contains(",note,Gutter Song,,,60.0,true,,0.0,,\"wet, \"\"loud\"\"\""));
    assertTrue(rows.get(3).contains(",note,Gutter Song,3,5,62.0,false,,,,"), rows.get(3));
    assertEquals(Files.readString(csv), log("--csv", "-").out());
  }

  @Test
  void thePictureShowsThePieceAndItsRounds() throws IOException {
    add("--tempo", "60", "--clean", "--date", "2026-03-01");
    add("--tempo", "65", "--missed", "--round", "3", "--nadai", "5", "--date", "2026-03-08");
    Path svg = folder.resolve("tempo.svg");
    assertEquals(svg + "\n", log("--picture", svg.toString()).out());
    String drawn = Files.readString(svg);
    for (String words :
        List.of("Gutter Song", "Whole piece", "Round 3, nadai 5", "1 Mar 26", "60")) {
      assertTrue(drawn.contains("<title>" + words + "</title>"), words);
    }
    Path png = folder.resolve("tempo.png");
    assertEquals(ExitCode.DONE, log("--picture", png.toString()).code());
    assertTrue(ImageIO.read(png.toFile()).getWidth() > 1000);
    CommandLineRun wrong = log("--picture", folder.resolve("tempo.gif").toString());
    assertEquals(ExitCode.BAD_INPUT, wrong.code());
    assertTrue(wrong.err().contains(".svg or .png"), wrong.err());
  }

  @Test
  void anEmptyLogCanBeDrawn() throws IOException {
    Path svg = folder.resolve("tempo.svg");
    assertEquals(ExitCode.DONE, log("--picture", svg.toString()).code());
    assertTrue(Files.readString(svg).contains("No take was judged yet."));
  }

  @Test
  void damagedLinesAreToldSkippedAndSetAside() throws IOException {
    add("--voiced", "1");
    Files.writeString(file(), "{\"when\":\"2026-03", StandardOpenOption.APPEND);
    CommandLineRun run = log();
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.err().contains(file() + ", line 2 (16 bytes) is skipped"), run.err());
    assertTrue(run.out().contains("1 record;"), run.out());
    assertTrue(run.err().contains("it is damaged or breaks off"), run.err());
    assertTrue(run.err().contains("matraloom log --mend --log-file " + file()), run.err());
    assertEquals("1 line moved to " + file() + ".damaged\n", log("--mend").out());
    assertEquals("", log().err());
  }

  @Test
  void jsonHoldsTheRecordsAndTheAdvice() throws IOException {
    add("--tempo", "60", "--clean", "--landing", "-4.5");
    add("--tempo", "60", "--clean");
    List<String> fields = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(log("--json").out())) {
      while (json.nextToken() != null) {
        if (json.currentToken().isScalarValue()) {
          fields.add(json.currentName() + "=" + json.getText());
        }
      }
    }
    assertTrue(
        fields.containsAll(List.of("tempo=65", "move=up", "landingErrorMs=-4.5")), fields + "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "--clean --missed",
        "--round 3",
        "--nadai 5 --tempo 60 --clean",
        "--tempo 0 --clean",
        "--tempo NaN --clean",
        "--voiced -1",
        "--voiced 3000",
        "--date 2026-02-30 --voiced 1",
        "--date soon --voiced 1",
        "--date 2999-01-01 --voiced 1",
        "--date 2999-01-01T10:00 --tempo 60 --clean"
      })
  void whatMakesNoSenseIsNotNoted(String options) {
    CommandLineRun run = add(options.isEmpty() ? new String[0] : options.split(" "));
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertFalse(Files.exists(file()));
  }

  @Test
  void aPieceThatIsNotThereIsExplained() {
    add("--voiced", "1");
    CommandLineRun run = log("--piece", "Puddle");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("it knows Gutter Song"), run.err());
    assertEquals(ExitCode.DONE, log("--piece", "Gutter Song").code());
  }

  @Test
  void aFolderThatCannotBeWrittenIsTheMachinesFault() throws IOException {
    Path blocked = Files.writeString(folder.resolve("file"), "");
    CommandLineRun run =
        CommandLineRun.of(
            "log", "add", "Rain", "--voiced", "1", "--log-file", blocked + "/practice.jsonl");
    assertEquals(ExitCode.MACHINE, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
  }

  @Test
  void aFolderForTheLogIsExplained() {
    for (String command : List.of("log", "log add Rain --voiced 1", "log --mend")) {
      List<String> words = new ArrayList<>(List.of(command.split(" ")));
      words.addAll(List.of("--log-file", folder.toString()));
      CommandLineRun run = CommandLineRun.of(words.toArray(String[]::new));
      assertEquals(ExitCode.BAD_INPUT, run.code(), command);
      String told = "--log-file is " + folder + ", a folder; give a file, such as " + file();
      assertTrue(run.err().contains(told), run.err());
    }
  }

  @Test
  void theFileMayBeNamedBeforeTheCommandOfTheLog() {
    CommandLineRun run =
        CommandLineRun.of("log", "--log-file", file() + "", "add", "Rain", "--voiced", "1");
    assertEquals("noted in " + file() + "\n", run.out(), run.err());
    assertTrue(Files.exists(file()));
  }

  @Test
  void aTempoWithoutAVerdictIsToldToCountForNothing() {
    String told = "With neither --clean nor --missed it counts for no suggestion";
    assertTrue(add("--tempo", "60").out().contains(told));
    assertFalse(add("--tempo", "60", "--clean").out().contains(told));
    assertFalse(log().out().contains("next, whole: up"));
  }

  @Test
  void todayWithoutATimeIsNeverStillToCome() {
    assertEquals(ExitCode.DONE, add("--voiced", "1", "--date", LocalDate.now() + "").code());
  }

  @ParameterizedTest
  @CsvSource({
    "Gutter Sonng, true",
    "gutter song, true",
    "Guter Song, true",
    "Gutter Song, false",
    "Puddle, false"
  })
  void aNewTitleCloseToAKnownOneIsAskedAboutBeforeItIsNoted(String title, boolean isAsked) {
    assertEquals("noted in " + file() + "\n", add("--voiced", "1").out());
    CommandLineRun run = run(List.of("log", "add", title), "--voiced", "1");
    String told = "\"" + title + "\" is not in the log; did you mean \"Gutter Song\"?";
    assertEquals(isAsked, run.err().contains(told), run.err());
    assertEquals(isAsked ? ExitCode.BAD_INPUT : ExitCode.DONE, run.code());
    long noted = log().out().lines().filter(line -> line.contains(title)).count();
    assertEquals(isAsked, noted == 0, log().out());
    CommandLineRun meant = run(List.of("log", "add", title, "--new"), "--voiced", "1");
    assertEquals(ExitCode.DONE, meant.code(), meant.err());
    assertTrue(log().out().contains(title), log().out());
  }

  @Test
  void remarksAndShortUsesOfTheVoiceAreShownWithinEightyColumns() {
    String words =
        "the five rushed, and then the whole gutter came down with a great splash of rain";
    add("--voiced", "0.4", "--remark", words, "--date", "2026-03-01");
    for (int round = 1; round <= 9; round++) {
      add("--round", round + "", "--nadai", "5", "--tempo", "169.5", "--clean");
      add("--round", round + "", "--nadai", "5", "--tempo", "169.5", "--clean");
    }
    String out = log().out();
    assertTrue(out.contains("0 clean, under a minute of voice"), out);
    assertTrue(out.replaceAll("\\s+", " ").contains("remarks 2026-03-01 " + words), out);
    assertTrue(out.contains("and 3 rounds not shown; all of them"), out);
    assertTrue(out.lines().filter(line -> line.startsWith("  ")).count() > 10, out);
    out.lines().skip(1).forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void theNewestRecordIsTakenBackAndStaysInTheFile() throws IOException {
    add("--tempo", "60", "--clean", "--date", "2026-03-02");
    add("--tempo", "60", "--clean", "--date", "2026-03-03T18:30");
    assertTrue(log().out().contains("next, whole: up to 65"));
    String before = Files.readString(file());
    add("--tempo", "70", "--missed", "--voiced", "5", "--date", "2026-03-01T18:30");
    String taken = "taken back: Gutter Song, 2026-03-01 18:30, 70 beats a minute, missed,";
    CommandLineRun undo = run(List.of("log", "undo"));
    assertEquals(ExitCode.DONE, undo.code(), undo.err());
    assertTrue(undo.out().startsWith(taken), undo.out());
    assertTrue(Files.readString(file()).startsWith(before), "nothing is taken out of the file");
    assertEquals(4, Files.readAllLines(file()).size());

    String out = log().out();
    assertTrue(out.contains("2 records;") && out.contains("2 takes judged, 2 clean, 0 min"), out);
    assertTrue(out.contains("  " + taken) && out.contains("next, whole: up to 65"), out);
    assertEquals(3, log("--csv", "-").out().lines().count());
    assertTrue(log("--json").out().contains("takenBack"));

    assertTrue(run(List.of("log", "undo")).out().contains("2026-03-03 18:30"));
    assertTrue(run(List.of("log", "undo")).out().contains("2026-03-02 12:00"));
    CommandLineRun none = run(List.of("log", "undo"));
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertTrue(none.err().contains("nothing to take back"), none.err());
    assertEquals(6, Files.readAllLines(file()).size());
  }

  private Path file() {
    return folder.resolve("practice.jsonl");
  }

  private CommandLineRun log(String... options) {
    return run(List.of("log"), options);
  }

  private CommandLineRun add(String... options) {
    return run(List.of("log", "add", "Gutter Song"), options);
  }

  private CommandLineRun run(List<String> command, String... options) {
    List<String> words = new ArrayList<>(command);
    words.addAll(List.of("--log-file", file().toString()));
    words.addAll(List.of(options));
    return CommandLineRun.of(words.toArray(String[]::new));
  }
}
