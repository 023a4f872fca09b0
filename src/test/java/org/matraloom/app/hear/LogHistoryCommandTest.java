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
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PlaceNote;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.ScorePlace;

class LogHistoryCommandTest {

  private static final OffsetDateTime MONDAY = OffsetDateTime.parse("2026-03-02T18:10:00+01:00");

  @TempDir private Path folder;

  /** A log with one take a day, so late into the five of round 3, and landing 10 ms late. */
  private Path log(String name, double... late) throws IOException {
    PracticeLog log = new PracticeLog(folder.resolve(name));
    for (int i = 0; i < late.length; i++) {
      log.append(
          new LogEntry(
              MONDAY.plusDays(i),
              LogEntry.Kind.TAKE,
              "Gutter Song",
              OptionalDouble.of(60 + i),
              new LogEntry.Outcome(
                  Optional.of(i % 2 == 0),
                  OptionalDouble.of(i % 2 == 0 ? 5 : -5),
                  List.of(),
                  List.of(
                      new PlaceNote(new ScorePlace(ScorePlace.Kind.INTO, 3, "4>5"), late[i]),
                      new PlaceNote(new ScorePlace(ScorePlace.Kind.SPEED, 3, "4>5"), -4))),
              30,
              Optional.empty(),
              ""));
    }
    return log.file();
  }

  private static CommandLineRun history(Object... words) {
    String[] all = new String[words.length + 2];
    all[0] = "log";
    all[1] = "history";
    for (int i = 0; i < words.length; i++) {
      all[i + 2] = words[i].toString();
    }
    return CommandLineRun.of(all);
  }

  /**
   * By hand: into the five (62 + 60 + 58 + 31 + 30 + 29) / 6 = 45.0, before (62 + 60 + 58) / 3 =
   * 60, since 30; the squares of 17, 15, 13, 14, 15 and 16 are 1360, and the root of 1360 / 5 is
   * 16.5; 6.7 standard errors, with 5 degrees of freedom a chance of 0.0011, of 0.02 by 9 looks
   * 0.0022. The landing is 5 late as often as 5 early. The six fall with one another: 2 in 720.
   */
  @Test
  void theWordsAreThoseComputedByHand() throws IOException {
    CommandLineRun run = history("--log-file", log("practice.jsonl", 62, 60, 58, 31, 30, 29));
    assertEquals("", run.err());
    assertEquals(
        """
        Gutter Song: 6 takes, 2026-03-02 to 2026-03-07
        + is late or fast, - is early or slow; spread is from take to take
        place                            takes       mean   spread   newest  habit
        Landing                              6     0.0 ms      5.5     -5.0
        Into the five, round 3               6   +45.0 ms     16.5    +29.0  yes, better
        Speed of the five, round 3           6     -4.0 %      0.0     -4.0  yes
          Into the five, round 3: 45.0 ms late in the mean of 6 takes, late in every
          one. Better since Thursday 5 March 2026: off by 60.0 ms in the mean before (3
          takes), by 30.0 ms since (3 takes).
          Speed of the five, round 3: 4.0 % slow in the mean of 6 takes, slow in every
          one. No trend can be told.
        """,
        run.out());
    assertTrue(page().contains(run.out()), "the page shows the same");
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("docs", "log.md"));
  }

  @Test
  void aHabitThatHasGoneIsToldAsSuch() throws IOException {
    String out =
        history(log("heron.jsonl", 41, 40, 39, 1, 0.5, -0.2)).out().replaceAll("\\s+", " ");
    assertTrue(
        out.contains(
            "Into the five, round 3: 40.0 ms late in the mean of the first 3 takes, late in every"
                + " one. In the 3 takes since: 0.4 ms late in the mean. Better since Thursday 5"
                + " March 2026: off by 40.0 ms in the mean before (3 takes), by 0.6 ms since"),
        out);
    out = history(log("newt.jsonl", 0.2, -0.5, 1, -39, -40, -41)).out().replaceAll("\\s+", " ");
    assertTrue(
        out.contains(
            "Into the five, round 3: 40.0 ms early in the mean of the newest 3 takes, early in"
                + " every one. Before, in 3 takes: 0.2 ms late in the mean. Worse since"),
        out);
  }

  @Test
  void aClassHasARowForEachInWhateverOrder() throws IOException {
    Path heron = log("class/heron.jsonl", 62, 60, 58, 31, 30, 29);
    Path otter = log("class/otter.jsonl", 5, -20, 12, 3);
    Path newt = log("class/newt.jsonl", 50);
    String out = history(otter, heron, newt).out();
    assertEquals(out, history(newt, otter, heron).out());
    assertEquals(out, history(folder.resolve("class")).out());
    assertEquals(out, history(folder.resolve("class"), heron).out(), "each counts once");
    assertEquals(
        """
        Gutter Song: 3 logs
        log              takes clean fastest landing ms     newest  habits, better/worse
        heron                6     3      64        0.0 2026-03-07  2, 1/0
        newt                 1     1      60       +5.0 2026-03-02  -
        otter                4     2      62        0.0 2026-03-05  1, 0/0
        fastest: the fastest clean take; landing: its mean, + is late
        """,
        String.join("\n", out.lines().toList().subList(0, 6)) + "\n");
    assertTrue(page().contains(out.substring(0, out.indexOf("  heron:"))), "so does the page");
    assertTrue(out.contains("\n  newt: A habit is told from 3 takes on.\n"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void aLogOfAnUsualNameIsCalledByItsFolder() throws IOException {
    Path one = log("heron/practice.jsonl", 1);
    Path two = log("otter/practice.jsonl", 1);
    assertTrue(history(one, two).out().contains("\nheron "), "heron is named");
    Path third = log("east/pond.jsonl", 1);
    Path fourth = log("west/pond.jsonl", 1);
    String out = history(third, fourth).out();
    assertTrue(out.contains("\neast/pond ") && out.contains("\nwest/pond "), out);
  }

  @Test
  void noHabitIsNoPraise() throws IOException {
    Path log = new PracticeLog(folder.resolve("plain.jsonl")).file();
    for (String ms : List.of("300", "-250", "20")) {
      Files.writeString(
          log,
          "{\"when\":\"2026-03-02T18:10:00Z\",\"kind\":\"take\",\"piece\":\"Rain\","
              + "\"landingErrorMs\":"
              + ms
              + "}\n",
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    }
    String out = history(log).out();
    assertTrue(out.contains("That does not say that all is"), out);
    assertTrue(out.contains("3 takes noted without changes and phrases"), out);
  }

  @Test
  void anEmptyLogAndOneTakeAreTold() throws IOException {
    CommandLineRun none = history("--log-file", folder.resolve("none.jsonl"));
    assertEquals("No take was measured yet. See: matraloom take --help\n", none.out());
    assertFalse(Files.exists(folder.resolve("none.jsonl")), "looking makes no file");
    String one = history(log("one.jsonl", 30)).out();
    assertTrue(one.startsWith("Gutter Song: 1 take, 2026-03-02\n"), one);
    assertTrue(one.contains("Into the five, round 3               1   +30.0 ms        -"), one);
    assertTrue(one.endsWith("  A habit is told from 3 takes on.\n"), one);
  }

  @Test
  void damagedLinesAreSkippedAndTold() throws IOException {
    Path log = log("heron.jsonl", 62, 60, 58, 31, 30, 29);
    String whole = history(log).out();
    Files.writeString(log, "{\"when\":\"2026-", StandardOpenOption.APPEND);
    CommandLineRun run = history(log);
    assertEquals(ExitCode.DONE, run.code());
    assertEquals(whole, run.out());
    assertTrue(run.err().contains(log + ", line 7 (14 bytes) is skipped"), run.err());
    assertTrue(run.err().contains("matraloom log --mend --log-file " + log), run.err());
  }

  @Test
  void tablesJsonAndPicturesAreWritten() throws IOException {
    Path heron = log("class/heron.jsonl", 62, 60, 58, 31, 30, 29);
    Path otter = log("class/otter.jsonl", 5, -20, 12, 3);
    List<String> rows = history(heron, otter, "--csv", "-").out().lines().toList();
    assertEquals("log,piece,when,tempo,clean,place,round,name,unit,off", rows.get(0));
    assertEquals(1 + 3 * (6 + 4), rows.size());
    assertEquals(
        "heron,Gutter Song,2026-03-02T18:10+01:00,60.0,true,into,3,4>5,ms,62.0", rows.get(2));

    int trends = 0;
    String text = history(heron, otter, "--json").out();
    try (JsonParser json = new JsonFactory().createParser(text)) {
      while (json.nextToken() != null) {
        trends += "better".equals(json.currentName()) && json.currentToken().isBoolean() ? 1 : 0;
      }
    }
    assertEquals(1, trends, text);
    assertTrue(text.contains("\"words\" : \"Into the five, round 3: 45.0 ms late"), text);

    for (Object[] logs : new Object[][] {{heron}, {heron, otter}}) {
      Path png = folder.resolve(logs.length + ".png");
      Path svg = folder.resolve(logs.length + ".svg");
      for (Path file : List.of(png, svg)) {
        Object[] words = Arrays.copyOf(logs, logs.length + 2);
        words[logs.length] = "--picture";
        words[logs.length + 1] = file;
        CommandLineRun run = history(words);
        assertEquals(file + ": Gutter Song\n", run.out(), run.err());
      }
      assertTrue(ImageIO.read(png.toFile()).getWidth() > 1000);
      assertTrue(Files.readString(svg).contains("<svg"));
    }
  }

  @Test
  void whatMakesNoSenseIsRefused() throws IOException {
    Path heron = log("heron.jsonl", 30);
    refused("give --log-file or the names of logs, not both", heron, "--log-file", heron);
    refused("there is no log " + folder.resolve("hero.jsonl"), folder.resolve("hero.jsonl"));
    Path empty = Files.createDirectory(folder.resolve("empty"));
    refused("the folder " + empty + " holds no log", empty);
    refused(
        "no take of Rain was measured; there are takes of Gutter Song", heron, "--piece", "Rain");
    refused("a picture is written as .svg or .png", heron, "--picture", folder.resolve("a.gif"));
    Path none = folder.resolve("none.jsonl");
    refused(
        "there is nothing to draw", "--log-file", none, "--picture", folder.resolve("none.png"));
    assertFalse(Files.exists(folder.resolve("none.png")), "no picture is left");
  }

  private static void refused(String reason, Object... words) {
    CommandLineRun run = history(words);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
    assertTrue(run.err().contains(reason), run.err());
  }
}
