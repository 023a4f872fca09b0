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

/** The commands that record, without any device that could. */
class RecordCommandTest {

  private static final String SONG = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  private String take() {
    return folder.resolve("take.wav").toString();
  }

  @Test
  void withoutTheDeviceThatIsAskedForItSaysSoInOneLineAndEndsWithThree() {
    CommandLineRun run =
        CommandLineRun.of("record", SONG, "-o", take(), "--plain", "--device", "no such roof");
    assertEquals(ExitCode.MACHINE, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertFalse(Files.exists(Path.of(take())), "no empty take is left");
  }

  @Test
  void anOlderTakeIsKept() throws IOException {
    Files.writeString(Path.of(take()), "monday");
    CommandLineRun run = CommandLineRun.of("record", SONG, "-o", take(), "--plain");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("never overwritten"), run.err());
    assertEquals("monday", Files.readString(Path.of(take())));
  }

  @Test
  void aFolderThatDoesNotExistIsToldBeforeAnythingIsRecorded() {
    String nowhere = folder.resolve("nowhere").resolve("take.wav").toString();
    CommandLineRun run = CommandLineRun.of("record", SONG, "-o", nowhere, "--plain");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("does not exist"), run.err());
  }

  @Test
  void calibrateExplainsAMissingDeviceAndABadRate() {
    CommandLineRun run = CommandLineRun.of("calibrate", "--device", "no such roof");
    assertEquals(ExitCode.MACHINE, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals(ExitCode.BAD_INPUT, CommandLineRun.of("calibrate", "--rate", "7").code());
  }
}
