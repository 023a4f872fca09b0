package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class EventsCommandTest {

  @TempDir private Path folder;

  @Test
  void printsExactBeatsSecondsAndFrames() throws IOException {
    CommandLineRun run = events("tala 2+2\ntempo 60\nSong = taka , .\n", "--count-in", "0");
    assertEquals(
        """
        kind,round,beat,seconds,frame,text
        round,1,0,0.000000,0,"Song, chatusra nadai (4)"
        clap,1,0,0.000000,0,"clap, samam"
        tick,1,0,0.000000,0,0
        sollu,1,0,0.000000,0,ta
        tick,1,1/4,0.250000,12000,1
        sollu,1,1/4,0.250000,12000,ka (rings)
        tick,1,1/2,0.500000,24000,2
        tick,1,3/4,0.750000,36000,3
        silence,1,3/4,0.750000,36000,
        hold,1,1,1.000000,48000,hold
        landing,1,1,1.000000,48000,the last matra has ended
        """,
        run.out().replace("\r\n", "\n"));
  }

  @Test
  void anEntryOffSamamIsHeardInPlace() throws IOException {
    CommandLineRun run = events("tala adi\ntempo 60\nstart beat 5\nSong = takadimi\n");
    List<String> rows = run.out().lines().toList();
    assertEquals("count-in,0,-8,0.000000,0,1 avartana", rows.get(1));
    assertTrue(rows.contains("sollu,1,4,12.000000,576000,ta"), run.out());
    assertTrue(rows.contains("clap,0,0,8.000000,384000,\"clap, samam\""), run.out());
  }

  @Test
  void writesTheSameEventsAsJson() throws IOException {
    CommandLineRun run = events("tala 1\nSong = ta\n", "--json", "--count-in", "0");
    assertTrue(run.out().startsWith("["), run.out());
    assertTrue(run.out().contains("\"kind\" : \"sollu\""), run.out());
    assertTrue(run.out().contains("\"beats\" : \"1/4\""), run.out());
  }

  @Test
  void oneRoundStaysAtItsPlaceInTheTala() throws IOException {
    CommandLineRun run =
        events(
            "tala adi\ntempo 60\nSong = (takadimi) x3\nperform\n  Song x2 nadai 4\n",
            "--rounds",
            "2");
    assertTrue(run.out().contains("sollu,2,3,11.000000,528000,ta"), run.out());
  }

  @Test
  void roundsThatAreNotThereAreRefused() throws IOException {
    CommandLineRun run = events("tala adi\nSong = ta\n", "--rounds", "2-1");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals(
        "matraloom: --rounds takes a round or a range from 1 to 1, such as 2-3; given 2-1\n",
        run.err());
  }

  private CommandLineRun events(String score, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("piece.loom"), score);
    String[] arguments = new String[options.length + 2];
    arguments[0] = "events";
    arguments[1] = file.toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return CommandLineRun.of(arguments);
  }
}
