package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class DrillCommandTest {

  private static final String SONG =
      """
      title Ferry Song
      tala  3+2+2
      tempo 120
      Drip = takita takadimi
      Song = Drip Drip
      perform
        Song x2 nadai 4
        Song    nadai 5
      """;

  @TempDir private Path folder;

  @Test
  void nadaisMayBeWrittenAsARoundPlanIs() {
    CommandLineRun apart = CommandLineRun.of("drill", "switch", "4", "5", "--every", "half");
    CommandLineRun together = CommandLineRun.of("drill", "switch", "4-5", "--every", "half");
    assertEquals(ExitCode.DONE, together.code(), together.err());
    assertEquals(apart.out(), together.out());
    String one = CommandLineRun.of("drill", "switch", "4").err();
    assertTrue(one.contains("a switch needs two nadais or more"), one);
  }

  @Test
  void printsTheScoreOfADrill() {
    CommandLineRun run =
        CommandLineRun.of("drill", "switch", "4", "5", "--every", "half", "--passes", "1");
    assertEquals("", run.err());
    assertEquals(
        """
        title   Switch 4 5
        tala    adi
        kalai   1
        tempo   60
        start   samam
        eduppu  samam

        Chatusra4 = (takadimi) x4
        Khanda4 = (takatakita) x4

        perform
          Chatusra4 nadai 4
          Khanda4 nadai 5
        """,
        run.out());
  }

  /** Three groups of two beats are two avartanas of rupaka; two would leave one open. */
  @Test
  void passesAreAddedUntilAnAvartanaIsFull() throws IOException {
    CommandLineRun run = drill("switch 4 5 --tala rupaka --every two --passes 2");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    List<String> said =
        run.out()
            .substring(run.out().indexOf("perform"))
            .lines()
            .filter(line -> line.startsWith("  "))
            .toList();
    assertEquals(3, said.stream().filter(line -> line.contains("nadai 4")).count(), run.out());
    assertEquals(3, said.stream().filter(line -> line.contains("nadai 5")).count(), run.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "switch 3 7 --every random --passes 3",
        "nadais --tala rupaka",
        "speeds FILE --phrase Drip --tisram",
        "join FILE --loops 2",
        "loop FILE --phrase Drip --loops 2",
        "answer FILE"
      })
  void everyDrillWritesAScoreThatLands(String line) throws IOException {
    Path score = folder.resolve("drill.loom");
    CommandLineRun run = drill(line + " --score " + score);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    CommandLineRun check = CommandLineRun.of("check", score.toString());
    assertEquals(ExitCode.DONE, check.code(), check.out() + check.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "switch 4 5 --every two --passes 1 --tempo 200 --drone C#",
        "ladder FILE --from 100 --to 120",
        "clicks FILE --heard 1 --silent 1",
        "fade FILE --by 6"
      })
  void drillsAreHeard(String line) throws IOException {
    Path sound = folder.resolve("drill.wav");
    CommandLineRun run = drill(line + " -o " + sound);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(Files.size(sound) > 100_000);
    if (line.startsWith("ladder")) {
      assertTrue(run.out().contains("rungs at 100, 110, 120"), run.out());
    }
  }

  /** 120 beats a minute at 16 matras a beat are 32 sollus a second. */
  @Test
  void aSpeedThatNobodySaysIsTold() throws IOException {
    String told =
        "Note: impossible to say: up to 32.0 sollus a second where a beat holds 16 matras.\n";
    assertEquals(told, drill("speeds FILE --phrase Drip").err());
    assertEquals(
        told, drill("speeds FILE --phrase Drip --score " + folder.resolve("d.loom")).err());
    assertEquals("", drill("loop FILE --phrase Drip --tempo 60").err());
  }

  @Test
  void refusalsSayWhatIsAllowed() throws IOException {
    assertEquals(
        "matraloom: a nadai is 3 to 9, given 2\n",
        CommandLineRun.of("drill", "switch", "2", "5").err());
    CommandLineRun noTala = drill("nadais --tala storm");
    assertEquals(ExitCode.BAD_INPUT, noTala.code());
    assertTrue(noTala.err().contains("tala"), noTala.err());
    CommandLineRun run = drill("loop FILE --phrase Storm");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals(
        "matraloom: the score never says Storm; its phrases are [Drip, Song]\n", run.err());
  }

  private CommandLineRun drill(String line) throws IOException {
    Path song = Files.writeString(folder.resolve("song.loom"), SONG);
    List<String> arguments = new ArrayList<>(List.of("drill"));
    for (String word : line.split(" ")) {
      arguments.add(word.equals("FILE") ? song.toString() : word);
    }
    return CommandLineRun.of(arguments.toArray(String[]::new));
  }
}
