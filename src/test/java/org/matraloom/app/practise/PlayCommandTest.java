package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.sound.Passage;
import org.matraloom.time.Tempo;

/** The play command without a device: what it says, and which drills it would play. */
class PlayCommandTest {

  private static final String SONG = "samples-synth/gutter-song.loom";

  @Test
  void withoutTheDeviceThatIsAskedForItSaysSoInOneLineAndEndsWithThree() {
    CommandLineRun run = CommandLineRun.of("play", SONG, "--device", "no such roof", "--plain");
    assertEquals(ExitCode.MACHINE, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(
        run.err().contains("no sound device that can play")
            || run.err().contains("no device that can play is called no such roof"),
        run.err());
    assertEquals("", run.out());
  }

  @Test
  void theDevicesAreListedWithoutAScore() {
    CommandLineRun run = CommandLineRun.of("play", "--devices");
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().lines().count() >= 1);
  }

  @Test
  void badInputIsToldBeforeAnyDeviceIsTouched() {
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("play").code());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("play", "nowhere.loom").code());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("play", SONG, "--fade=0").code());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("play", SONG, "--rate", "1").code());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("play", "--drill", "dance").code());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "switch 4 5 --every halving",
        "nadais",
        "speeds " + SONG + " --phrase Drip",
        "loop " + SONG + " --phrase Stream",
        "join " + SONG,
        "answer " + SONG,
        "ladder \"" + SONG + "\" --from 60 --to 80",
        "clicks " + SONG,
        "fade " + SONG
      })
  void everyDrillCanBePlayed(String words) throws IOException {
    MadeDrill made = drill(words);
    assertTrue(made.passages().size() >= 1);
    assertEquals(1, made.countInAvartanas());
    assertEquals(48_000, made.format().ratePerSecond());
  }

  @Test
  void aLadderIsPlayedRungByRung() throws IOException {
    List<Passage> rungs = drill("ladder " + SONG + " --from 60 --by 10 --to 80").passages();
    assertEquals(
        List.of(Tempo.of(60), Tempo.of(70), Tempo.of(80)),
        rungs.stream().map(rung -> rung.timeline().performance().composition().tempo()).toList());
  }

  private static MadeDrill drill(String words) throws IOException {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return DrillToPlay.of(words, nowhere, nowhere);
  }
}
