package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** The command without any device. */
class PractiseCommandTest {

  private static final String SONG = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  private CommandLineRun run(String... more) {
    String[] words = new String[more.length + 4];
    words[0] = "practise";
    words[1] = SONG;
    words[2] = "--no-log";
    words[3] = "--plain";
    System.arraycopy(more, 0, words, 4, more.length);
    return CommandLineRun.of(words);
  }

  @Test
  void withoutTheDeviceThatIsAskedForItSaysSoInOneLineAndLeavesNoFolder() {
    Path takes = folder.resolve("takes");
    CommandLineRun run = run("--device", "no such roof", "-d", takes.toString());
    assertEquals(ExitCode.MACHINE, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertFalse(Files.exists(takes));
  }

  @Test
  void numbersOutOfRangeAreRefusedWithWhatIsAllowed() {
    assertEquals(ExitCode.BAD_INPUT, run("--minutes", "0").code());
    assertTrue(run("--minutes", "0").err().contains("1 to 240"));
    assertEquals(ExitCode.BAD_INPUT, run("--to", "2").code());
    assertTrue(run("--to", "2").err().contains("5 to 600"));
    assertEquals(ExitCode.BAD_INPUT, run("--clear-at", "90").code());
    assertEquals(ExitCode.BAD_INPUT, run("--from", "0").code());
  }
}
