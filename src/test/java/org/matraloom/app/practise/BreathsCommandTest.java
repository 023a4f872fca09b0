package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class BreathsCommandTest {

  private static final String FERRY =
      """
      title Ferry Song
      tala  adi
      tempo 60
      Drip = (takadimi) x7 tom , . .
      perform
        Drip x2 nadai 4
      """;

  private static final String FLOOD = "tala adi\ntempo 80\nWave = (takadimi takajunu) x12\n";

  @TempDir private Path folder;

  @Test
  void marksTheBreathsAboveTheWords() throws IOException {
    CommandLineRun run = breaths(FERRY);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("Ferry Song, 60 beats a minute: 1 breath;"), run.out());
    assertTrue(run.out().contains("  V after the tom on beat 8: 0.60 s for air,"));
  }

  @Test
  void explainsAnImpossiblePieceAndPrintsScoresThatCureIt() throws IOException {
    CommandLineRun run = breaths(FLOOD);
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    assertTrue(run.out().contains("Too long for one breath: round 1, from Wave (samam) on"));
    String from = run.out().substring(run.out().indexOf("leave out the last"));
    // Taken over as it stands, line breaks and all: indented lines go on.
    String phrase = from.substring(from.indexOf("Wave ="), from.indexOf("; the landing"));
    assertTrue(phrase.contains("\n"), "a long phrase takes two lines");
    CommandLineRun cured = breaths("tala adi\ntempo 80\n" + phrase + "\n");
    assertEquals(ExitCode.DONE, cured.code(), cured.out() + cured.err());
  }

  @Test
  void jsonGivesPlacesAsExactNumbers() throws IOException {
    CommandLineRun run = breaths(FERRY, "--json");
    assertTrue(
        run.out()
            .contains(
                """
                  "breaths" : [
                    {
                      "round" : 1,
                      "after" : "tom",
                      "afterBeat" : "7",
                      "beat" : "37/5",
                      "beats" : "3/5",
                      "seconds" : 0.6,
                      "kind" : "full",
                      "from" : "karvai",
                      "cutBeats" : "1/10",
                      "joint" : "round",
                      "endsPhrase" : true,
                      "beforeNadaiChange" : false,
                      "why" : "between rounds, air is free"
                    }
                  ],
                """),
        run.out());
    assertTrue(breaths(FLOOD, "--json").out().contains("\"kind\" : \"added silence\""));
  }

  @Test
  void everyBreathTellsWhy() throws IOException {
    String told = breaths(FERRY, "--why").out().replaceAll("\\s+", " ");
    assertTrue(told.contains("29 sollus (between rounds, air is free)"), told);
    assertFalse(breaths(FERRY).out().contains("air is free"));
    String fewest = breaths(FERRY, "--why", "--fewest").out().replaceAll("\\s+", " ");
    assertTrue(fewest.contains("0.50 s of silence"), fewest);
    assertTrue(fewest.contains("(between rounds, else 15.5 s on one breath)"), fewest);
  }

  /** The kept score is the old text with marks; at a quicker tempo it says what has no time. */
  @Test
  void aPlanIsKeptInTheScoreAndCheckedAtEveryTempo() throws IOException {
    Path kept = folder.resolve("kept.loom");
    CommandLineRun run = breaths(FERRY, "--keep", kept.toString());
    assertEquals(kept + ": 1 breath mark written.\n", run.err());
    String marked = FERRY.replace("tom , . .", "tom , . . '");
    assertEquals(marked, Files.readString(kept));
    assertEquals(
        breaths(FERRY, "--json").out(),
        breaths(marked, "--json").out().replace("the score asks for it", "air is free"));
    String quick = breaths(marked, "--tempo", "300").out().replaceAll("\\s+", " ");
    assertTrue(
        quick.contains(
            "Round 1: the score asks for a breath after the tom on beat 8, but there is no"
                + " time (0.15 s after its matra)"),
        quick);
    CommandLineRun itself = breaths(FERRY, "--keep", folder.resolve("piece.loom").toString());
    assertEquals(ExitCode.BAD_INPUT, itself.code());
  }

  @Test
  void limitsAreTheUsersOwn() throws IOException {
    assertEquals(ExitCode.CHECK_FAILED, breaths(FERRY, "--sollus", "20").code());
    assertEquals(ExitCode.DONE, breaths(FERRY, "--longest", "20", "--sollus", "80").code());
    CommandLineRun wrong = breaths(FERRY, "--shortest", "100");
    assertEquals(ExitCode.BAD_INPUT, wrong.code());
    assertEquals("matraloom: shortest breath in ms is 250 to 2000, given 100\n", wrong.err());
  }

  private CommandLineRun breaths(String score, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("piece.loom"), score);
    String[] arguments = new String[options.length + 2];
    arguments[0] = "breaths";
    arguments[1] = file.toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return CommandLineRun.of(arguments);
  }
}
